import { VERDICTS } from '../../rules/index.ts';
import { stepKey } from '../learning/told-night.ts';
import type { BedOutlook } from '../outlook/night-outlook.ts';
import type { Prediction } from '../store/port/readings.ts';

/** So much colder at the leaf is news wherever leaves freeze (judgement). */
const MATERIAL_FALL_K = 1.5;
/** The model is no finer: by less, a bed that passes into the next word with the same advice is no news (judgement). */
const LEAST_FALL_K = 0.5;
/** The same forecast worked out anew differs by less; by more, other advice is news (judgement). */
const NOTICEABLE_FALL_K = 0.2;
const FREEZING_C = 0;

/** Has a bed's night become so much worse than what its grower was told that they must hear of it? */
export function hasWorsened(told: Prediction | undefined, bed: BedOutlook): boolean {
  const { night, worst } = bed.verdict;
  const rank = rankOf(worst.verdict);
  if (told === undefined) return rank > rankOf('holds');
  const fallK = told.leafLowC - night.leafLowC;
  if (fallK >= MATERIAL_FALL_K && night.leafLowC < FREEZING_C) return true;
  const step = stepKey(bed.step);
  // What a version kept that did not note its advice is taken as the same.
  const isOtherStep = told.step !== undefined && told.step !== step && bed.step.kind === 'add';
  if (isOtherStep && fallK >= NOTICEABLE_FALL_K) return true;
  const words = rank - rankOf(told.verdict);
  return words > 1 || (words === 1 && fallK >= LEAST_FALL_K);
}

/** A word that this version does not know counts as the mildest. */
function rankOf(verdict: string): number {
  const words: readonly string[] = VERDICTS;
  return words.indexOf(verdict);
}
