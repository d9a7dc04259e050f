import type { Crop } from '../../../rules/crops/crop.ts';
import { CROPS } from '../../../rules/crops/crops.ts';
import { fitLimits, type LimitFit } from '../../../rules/crops/limit-fit.ts';
import { limitsOf, toldWithout, wholeFit } from '../../../rules/crops/limits.ts';
import { organNight } from '../../../rules/crops/organ-night.ts';
import { OUTCOME_ROWS } from '../../../rules/crops/outcome-list.ts';
import type { OutcomeRow } from '../../../rules/crops/outcome-row.ts';
import { isClass } from '../../../rules/crops/statements.ts';
import { subjectsOf } from '../../../rules/crops/subjects.ts';
import type { SourceKey } from '../../../rules/sources.ts';
import { nightVerdict, type Verdict } from '../../../rules/verdict/night-verdict.ts';

/** What the verdict says where somebody knows what came of it. */
export interface JudgedOutcome {
  readonly row: OutcomeRow;
  readonly crop: Crop;
  readonly verdict: Verdict;
}

/** How the verdicts fared on some outcomes. */
export interface OutcomeTally {
  /** No harm was seen or is said of the class. */
  readonly harmless: number;
  /** Of these: leaf burn or winterkill. */
  readonly falseAlarms: number;
  /** Of the harmless, those that somebody watched, and the false alarms among them. */
  readonly observed: number;
  readonly observedFalseAlarms: number;
  /** Of the harmless: on the edge. */
  readonly onTheEdge: number;
  readonly harmed: number;
  /** Of these: holds. */
  readonly misses: number;
  /** The plant lived, harmed or not, and of these: winterkill. */
  readonly alive: number;
  readonly calledLost: number;
}

/** A plant whose state is not told is asked about as hardened: the season of frost. */
function indexOf(row: OutcomeRow): number {
  return row.state === 'unhardened' ? 0 : 1;
}

/** The crop that a question in the source's words is answered about. */
export function askedCrop(row: OutcomeRow): Crop {
  const speaks = (crop: Crop, parts: readonly ('eaten' | 'other')[]) =>
    subjectsOf(crop.id).some(
      ({ part, rows, plants }) =>
        parts.includes(part) &&
        (row.part === 'plant'
          ? plants.includes(row.crop)
          : rows.some(([name, named]) => name === row.crop && named === row.part)),
    );
  const found = CROPS.find((crop) => speaks(crop, ['eaten'])) ?? CROPS.find((crop) => speaks(crop, ['other']));
  if (found === undefined) throw new Error(`${row.id}: no crop of the table is called ${row.crop}`);
  return found;
}

/** Each outcome judged by the table, which was fitted with it. */
export function inSample(): readonly JudgedOutcome[] {
  return OUTCOME_ROWS.map((row) => judged(row, askedCrop(row)));
}

/** Each outcome judged by limits that were fitted without its source. */
export function outOfSample(): readonly JudgedOutcome[] {
  const { told } = wholeFit();
  const fits = new Map<SourceKey, LimitFit>();
  return OUTCOME_ROWS.map((row) => {
    const fit = fits.get(row.source) ?? fitLimits(toldWithout(told, row.source));
    fits.set(row.source, fit);
    const crop = askedCrop(row);
    const [eaten] = subjectsOf(crop.id);
    if (eaten === undefined) throw new Error(`${crop.id} has no part that is eaten`);
    return judged(row, { ...crop, ...limitsOf(fit, eaten) });
  });
}

function judged(row: OutcomeRow, crop: Crop): JudgedOutcome {
  const { leafLowC, surfaceLowC, sdK } = organNight(row.lowC, row.covers ?? []);
  const { verdict } = nightVerdict({
    crop,
    hardeningIndex: crop.hardens ? indexOf(row) : 0,
    leafLowC,
    surfaceLowC,
    sdK,
  });
  return { row, crop, verdict };
}

export function tally(all: readonly JudgedOutcome[]): OutcomeTally {
  const isAlarm = ({ verdict }: JudgedOutcome) => verdict === 'leaf burn' || verdict === 'winterkill';
  const seen = (...kinds: readonly OutcomeRow['seen'][]) => all.filter(({ row }) => kinds.includes(row.seen));
  const harmless = seen('unmarked');
  const observed = harmless.filter(({ row }) => !isClass(row));
  const harmed = seen('marked', 'lost');
  const alive = seen('alive');
  return {
    harmless: harmless.length,
    falseAlarms: harmless.filter(isAlarm).length,
    observed: observed.length,
    observedFalseAlarms: observed.filter(isAlarm).length,
    onTheEdge: harmless.filter(({ verdict }) => verdict === 'on the edge').length,
    harmed: harmed.length,
    misses: harmed.filter(({ verdict }) => verdict === 'holds').length,
    alive: alive.length,
    calledLost: alive.filter(({ verdict }) => verdict === 'winterkill').length,
  };
}

/** Outside lows, from the mildest. [°C] */
const BANDS = [
  { name: 'down to -2 °C (28 °F)', fromC: -2.3 },
  { name: '-2 to -4 °C (28 to 25 °F)', fromC: -4 },
  { name: '-4 to -7 °C (25 to 19 °F)', fromC: -7 },
  { name: '-7 to -12 °C (19 to 10 °F)', fromC: -12 },
  { name: 'colder', fromC: Number.NEGATIVE_INFINITY },
] as const;

export function bandOf({ row }: JudgedOutcome): string {
  return BANDS.find(({ fromC }) => row.lowC >= fromC)?.name ?? 'colder';
}

export function groupOf({ crop }: JudgedOutcome): string {
  if (!crop.hardens) return 'tender crops, curds, flowers and spears';
  if (crop.judgedBy === 'surface') return 'roots in the soil';
  if (crop.name.botanical.startsWith('Brassica')) return 'cabbages and their kin';
  if (crop.name.botanical.startsWith('Allium')) return 'onions and their kin';
  return crop.name.botanical.startsWith('Lactuca') || crop.name.botanical.startsWith('Cichorium')
    ? 'lettuce and chicory'
    : 'other greens, herbs and beans';
}

/** Tallies by a name given to each, in the order in which the names come up. */
export function talliesBy(
  all: readonly JudgedOutcome[],
  nameOf: (one: JudgedOutcome) => string,
): readonly (readonly [name: string, tally: OutcomeTally])[] {
  const names = [...new Set(all.map(nameOf))].sort();
  return names.map((name) => [name, tally(all.filter((one) => nameOf(one) === name))] as const);
}
