/** A low as it was foretold and as it came. */
export interface ToldAndMeasured {
  /** [°C] */
  readonly toldLowC: number;
  /** Standard deviation stated at the time. [K, > 0] */
  readonly toldSdK: number;
  /** [°C] */
  readonly measuredLowC: number;
}

/** How well lows were foretold. */
export interface TrackRecord {
  readonly nights: number;
  /** Measured minus told: above zero the nights were milder than told. [K] */
  readonly meanErrorK: number;
  readonly meanAbsoluteErrorK: number;
  /** Share of nights inside the range that should hold four nights in five. [0…1] */
  readonly insideFraction: number;
}

/** Standard normal deviate that encloses 80 %, the range that answers state. */
export const EIGHTY_PERCENT_SDS = 1.2816;

/**
 * How well past lows were foretold.
 *
 * @param nights - At least one.
 * @returns `undefined` when there is no night.
 * @throws RangeError when a number is not finite or a spread not above 0.
 */
export function trackRecord(nights: readonly ToldAndMeasured[]): TrackRecord | undefined {
  if (nights.length === 0) return undefined;
  let sumK = 0;
  let absoluteSumK = 0;
  let inside = 0;
  for (const night of nights) {
    const errorK = night.measuredLowC - night.toldLowC;
    if (!Number.isFinite(errorK)) throw new RangeError(`low ${night.measuredLowC} or ${night.toldLowC} is no number`);
    sumK += errorK;
    absoluteSumK += Math.abs(errorK);
    if (isInside(night)) inside += 1;
  }
  return {
    nights: nights.length,
    meanErrorK: sumK / nights.length,
    meanAbsoluteErrorK: absoluteSumK / nights.length,
    insideFraction: inside / nights.length,
  };
}

/**
 * Did the low fall inside the range that was told?
 *
 * @throws RangeError when the spread is not above 0.
 */
export function isInside({ toldLowC, toldSdK, measuredLowC }: ToldAndMeasured): boolean {
  if (!(toldSdK > 0)) throw new RangeError(`toldSdK ${toldSdK} must be above 0`);
  return Math.abs(measuredLowC - toldLowC) <= EIGHTY_PERCENT_SDS * toldSdK;
}
