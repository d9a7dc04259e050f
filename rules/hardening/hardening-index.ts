/** One day under the cover (or in the open, for a bare bed). */
export interface HardeningDay {
  /** Lowest air of the night. [°C] */
  readonly lowC: number;
  /** Mean air of the whole day and night, at least `lowC`. [°C] */
  readonly meanC: number;
}

const DAYS_REMEMBERED = 7;
/** Share of the way to full hardness gained by each cold day: half in 3 days, 96 % in 14 (`fennell-li-abstract`). */
const GAIN_PER_DAY = 1 - 0.5 ** (1 / 3);
/** Mean of the week's lows at and below which plants harden at that pace (`tamura-2002`). [°C] */
const FULL_GAIN_BELOW_C = 2;
/** There is little gain up to here and none above (`tamura-2002`). [°C] */
const NO_GAIN_ABOVE_C = 8;
/** What is left of the pace just above the lower limit, so that the step is not a cliff (judgement). */
const SLOW_GAIN_SHARE = 0.25;
const SLOW_GAIN_FROM_C = 3;
/** A day's mean at and above which nothing is gained (`fennell-li-abstract`; "no day above 15 °C", judgement). [°C] */
const TOO_WARM_TO_GAIN_C = 15;
/** A day's mean up to which nothing is lost (judgement). [°C] */
const NO_LOSS_BELOW_C = 10;
/** Mean of a 20/17 °C day, on which hardened spinach loses 4 K of some 10 K, cabbage nearly all (`fennell-li-abstract`, `sasaki-1996`). [°C] */
const FULL_LOSS_FROM_C = 18.5;
/** Kept after such a day, between those two crops (judgement). */
const KEPT_AFTER_WARM_DAY = 0.4;

/**
 * How hard plants have become, from the days they have had under their cover.
 *
 * @param days - In order, the last one last; at least one. Temperatures under the cover, not outside: a warm tunnel softens.
 * @param startIndex - Index before the first day; if absent, that of plants long used to such nights. [0…1]
 * @returns 0 grown warm … 1 fully hardened.
 * @throws RangeError when there is no day, a day's mean is below its low, or `startIndex` is out of range.
 *
 * @remarks
 * Gain follows the mean of the last seven lows: quick below 2 °C, slow to 8 °C. Loss follows the warmth of the single day.
 * Measured on spinach, komatsuna and cabbage; other crops are taken to follow them. Light, drought and the calendar are left
 * out: plants of late winter lose hardness somewhat faster than this says.
 *
 * @see fennell-li-abstract, tamura-2002, sasaki-1996
 */
export function hardeningIndex(days: readonly HardeningDay[], startIndex?: number): number {
  if (days.length === 0) throw new RangeError('days is empty: at least one day is needed');
  const lowsC = days.map((day) => day.lowC);
  let index = startIndex ?? settledHardeningIndex(days.slice(0, DAYS_REMEMBERED));
  if (!(index >= 0 && index <= 1)) throw new RangeError(`startIndex ${index} is outside 0…1`);
  for (const [day, { lowC, meanC }] of days.entries()) {
    if (!(meanC >= lowC)) throw new RangeError(`meanC ${meanC} is below lowC ${lowC}`);
    const weekLowC = meanOf(lowsC.slice(Math.max(0, day + 1 - DAYS_REMEMBERED), day + 1));
    const kept = index * keptHardnessFraction(meanC);
    index = kept + (1 - kept) * GAIN_PER_DAY * paceOf(weekLowC) * coolShare(meanC);
  }
  return index;
}

/**
 * Index of plants that have long had such nights.
 *
 * @param days - At least one; their lows count by the mean.
 * @returns 1 up to 2 °C, 0 from 8 °C on. [0…1]
 * @see tamura-2002
 */
export function settledHardeningIndex(days: readonly HardeningDay[]): number {
  return between(meanOf(days.map(({ lowC }) => lowC)), [FULL_GAIN_BELOW_C, 1], [NO_GAIN_ABOVE_C, 0]);
}

function paceOf(weekLowC: number): number {
  if (weekLowC <= SLOW_GAIN_FROM_C) {
    return between(weekLowC, [FULL_GAIN_BELOW_C, 1], [SLOW_GAIN_FROM_C, SLOW_GAIN_SHARE]);
  }
  return between(weekLowC, [SLOW_GAIN_FROM_C, SLOW_GAIN_SHARE], [NO_GAIN_ABOVE_C, 0]);
}

function coolShare(meanC: number): number {
  return between(meanC, [NO_LOSS_BELOW_C, 1], [TOO_WARM_TO_GAIN_C, 0]);
}

/**
 * Share of their hardness that plants keep through one day.
 *
 * @param meanC - Mean air of the whole day and night under the cover. [°C]
 * @returns 1 up to 10 °C, falling to 0.4 at 18.5 °C and above. [0…1]
 * @see fennell-li-abstract, sasaki-1996
 */
export function keptHardnessFraction(meanC: number): number {
  return between(meanC, [NO_LOSS_BELOW_C, 1], [FULL_LOSS_FROM_C, KEPT_AFTER_WARM_DAY]);
}

/** Straight line between two points, level beyond them. */
function between(x: number, from: readonly [number, number], to: readonly [number, number]): number {
  const share = Math.max(0, Math.min(1, (x - from[0]) / (to[0] - from[0])));
  return from[1] + share * (to[1] - from[1]);
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
