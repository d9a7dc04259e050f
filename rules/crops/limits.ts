import type { SourceKey } from '../sources.ts';
import type { Tolerance } from './crop.ts';
import { CROP_NAMES, type CropId } from './crop-names-table.ts';
import { fitLimits, type LimitFit, strength, type Told } from './limit-fit.ts';
import { GARDEN_SD_K, LEAST_GAP_K, LEAST_SD_K, MOST_SD_K, VARIETY_SD_K } from './limit-priors-table.ts';
import { spacing } from './spacing.ts';
import { STARTING_PAIRS, type StartingPair } from './starting-pairs-table.ts';
import { statementsOn } from './statements.ts';
import { type Subject, subjectsOf } from './subjects.ts';

/** Limits of one organ in both states; the same in both for what cold does not harden. */
export interface LimitPair {
  readonly unhardened: Tolerance;
  readonly hardened: Tolerance;
}

/** Every organ of the table with all that the sources say of it. Runs the night model some hundred times. */
export function allTold(): readonly Told[] {
  return CROP_NAMES.flatMap(({ id }: { readonly id: CropId }) => subjectsOf(id)).map((subject) => ({
    subject,
    statements: statementsOn(subject),
  }));
}

/** The same, as if a source had never been read. */
export function toldWithout(told: readonly Told[], source: SourceKey): readonly Told[] {
  return told.map(({ subject, statements }) => ({
    subject,
    statements: statements.filter((statement) => statement.source !== source),
  }));
}

/**
 * The limits of an organ from a fit.
 *
 * @returns First mark, half lost and killed in both states. The spread is that of the fit with that of variety and of the
 * asker's own garden. Hardening never makes more tender, and half lost lies at least 1 K below the first mark, the width of
 * its kind where that is less.
 */
export function limitsOf(fit: LimitFit, subject: Subject): LimitPair {
  const { unhardened, hardened = unhardened }: StartingPair = STARTING_PAIRS[subject.pair];
  const cold = limitsIn(fit, subject, 1, hardened);
  if (!subject.hardens) return { unhardened: cold, hardened: cold };
  const warm = limitsIn(fit, subject, 0, unhardened);
  return {
    unhardened: warm,
    hardened: {
      firstMarkC: Math.min(cold.firstMarkC, warm.firstMarkC),
      lt50C: Math.min(cold.lt50C, warm.lt50C),
      killC: Math.min(cold.killC, warm.killC),
      sdK: cold.sdK,
    },
  };
}

function limitsIn(fit: LimitFit, subject: Subject, index: number, pair: StartingPair['unhardened']): Tolerance {
  const { firstK, killK } = spacing(pair);
  const kind = strength(subject);
  const mark = fit.limit(subject, 'mark', index);
  const loss = fit.limit(subject, 'loss', index);
  const lt50C = Math.min(loss.meanC, mark.meanC - Math.min(LEAST_GAP_K, firstK));
  const sdK = Math.hypot(mark.sdK, VARIETY_SD_K[kind], GARDEN_SD_K[kind]);
  return {
    firstMarkC: mark.meanC,
    lt50C,
    killC: lt50C - killK,
    sdK: Math.min(MOST_SD_K, Math.max(LEAST_SD_K[kind], sdK)),
  };
}

let known: { readonly told: readonly Told[]; readonly fit: LimitFit } | undefined;

/** The fit to everything, worked out once and only where somebody wants to see how a limit came about. */
export function wholeFit(): { readonly told: readonly Told[]; readonly fit: LimitFit } {
  if (known === undefined) {
    const told = allTold();
    known = { told, fit: fitLimits(told) };
  }
  return known;
}
