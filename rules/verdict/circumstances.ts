import type { Crop, Tolerance } from '../crops/crop.ts';

/** What makes a planting fare worse or better than the table tonight. Absent means no, or not known. */
export interface Circumstances {
  readonly leafTouchesCover?: boolean;
  /** Leaves wet from rain, melt or watering when they freeze. */
  readonly wetThenFrozen?: boolean;
  /** Wind above about 5 m s⁻¹ on uncovered leaves. */
  readonly windyBare?: boolean;
  /** Nights with frozen leaves one after the other, this one included. [0…] */
  readonly nightsInARow?: number;
  /** A big head ready to cut. */
  readonly matureHead?: boolean;
  readonly smallRosette?: boolean;
}

export type Adjustment =
  | 'leaf-touches-cover'
  | 'wet-then-frozen'
  | 'windy-bare'
  | 'third-freeze'
  | 'mature-head'
  | 'small-rosette';

/** Middle of the 1 to 2 K that growers report for each (`circumstance-steps`). [K] */
const STEP_K = 1.5;
/** They are not independent: together they count for two (judgement). [K] */
const MOST_SHIFT_K = 3;
const THIRD_NIGHT = 3;
/** Ice is needed for a mark; a limit is not raised above this. [°C] */
const FREEZING_C = 0;

/**
 * Which circumstances count for a crop tonight.
 *
 * @param crop - A root or crown in the soil does not touch a cover or flap in the wind.
 * @returns The adjustments, none twice.
 * @see circumstance-steps
 */
export function adjustments(crop: Crop, circumstances: Circumstances): readonly Adjustment[] {
  const { nightsInARow = 0 } = circumstances;
  if (!(nightsInARow >= 0)) throw new RangeError(`nightsInARow ${nightsInARow} must be 0 or more`);
  const inTheAir = crop.judgedBy === 'leaf';
  const counts: readonly [Adjustment, boolean][] = [
    ['leaf-touches-cover', inTheAir && circumstances.leafTouchesCover === true],
    ['wet-then-frozen', inTheAir && circumstances.wetThenFrozen === true],
    ['windy-bare', inTheAir && circumstances.windyBare === true],
    ['third-freeze', nightsInARow >= THIRD_NIGHT],
    ['mature-head', inTheAir && circumstances.matureHead === true],
    ['small-rosette', inTheAir && circumstances.smallRosette === true],
  ];
  return counts.filter(([, isTrue]) => isTrue).map(([adjustment]) => adjustment);
}

/**
 * A tolerance moved by tonight's circumstances: 1.5 K for each, warmer for all but the small rosette, at most 3 K in all.
 *
 * @remarks Limits are not raised above freezing, where there is no ice to do harm.
 * @see circumstance-steps
 */
export function adjusted(tolerance: Tolerance, by: readonly Adjustment[]): Tolerance {
  const wantedK = STEP_K * by.reduce((sum, adjustment) => sum + (adjustment === 'small-rosette' ? -1 : 1), 0);
  const roomK = Math.max(0, FREEZING_C - tolerance.firstMarkC);
  const warmerK = Math.max(-MOST_SHIFT_K, Math.min(wantedK, MOST_SHIFT_K, roomK));
  return {
    firstMarkC: tolerance.firstMarkC + warmerK,
    lt50C: tolerance.lt50C + warmerK,
    killC: tolerance.killC + warmerK,
    sdK: tolerance.sdK,
  };
}
