import type { CoverKey } from '../covers/cover-key.ts';
import { STRUCTURES } from './structure-table.ts';

const AIR_KG_PER_M3 = 1.25;
const GRAVITY_M_PER_S2 = 9.81;
/** Suction on a low flat lid as a share of the wind's pressure; edges feel more (judgement, from roofs). */
const SUCTION_FRACTION = 1;
/** A gust a foot above open ground as a share of the one at 10 m (judgement: gusts reach down further than the mean wind). */
const GUST_AT_LID_FRACTION = 0.75;
/** To be sure of it. */
const SAFETY_FACTOR = 1.5;

/** What the strongest gust does to the outermost cover. */
export interface WindHarm {
  readonly kind: 'wind';
  readonly cover: CoverKey;
  readonly gustMPerS: number;
  /** `weigh-down` a lid, `anchor` film, fabric or cloth, `take-down` light film, `shut` the doors of a high tunnel. */
  readonly advice: 'weigh-down' | 'anchor' | 'take-down' | 'shut';
  /** Where this begins. [m s⁻¹] */
  readonly fromMPerS: number;
  /** What to lay on a lid. [kg m⁻²] */
  readonly ballastKgPerM2?: number;
}

/**
 * What a gust does to a cover.
 *
 * @param cover - The outermost cover.
 * @param gustMPerS - Strongest gust at 10 m. [m s⁻¹, ≥ 0]
 * @param shelterFraction - Wind at the bed as a share of the open-field wind. [0…1]
 * @returns What to do; `undefined` when the gust does nothing to it.
 * @throws RangeError when the gust is negative.
 * @see Weight of the lid against suction; thresholds of film and fabric: wind-anchor
 */
export function windHarm(cover: CoverKey, gustMPerS: number, shelterFraction: number): WindHarm | undefined {
  if (!(gustMPerS >= 0)) throw new RangeError(`gustMPerS ${gustMPerS} is below 0`);
  const facts = STRUCTURES[cover];
  if (facts === undefined) return undefined;
  const common = { kind: 'wind', cover, gustMPerS } as const;
  const { lidKgPerM2, anchorFromMPerS, takeDownFromMPerS, bearsKgPerM2 } = facts;
  if (lidKgPerM2 !== undefined) {
    const fromMPerS = liftOffGustMPerS(lidKgPerM2, shelterFraction);
    if (gustMPerS < fromMPerS) return undefined;
    const ballastKgPerM2 = ballastFor(gustMPerS, lidKgPerM2, shelterFraction);
    return { ...common, advice: 'weigh-down', fromMPerS, ballastKgPerM2 };
  }
  if (takeDownFromMPerS !== undefined && gustMPerS >= takeDownFromMPerS) {
    return { ...common, advice: 'take-down', fromMPerS: takeDownFromMPerS };
  }
  if (anchorFromMPerS === undefined || gustMPerS < anchorFromMPerS) return undefined;
  const isHigh = takeDownFromMPerS === undefined && bearsKgPerM2 !== undefined;
  return { ...common, advice: isHigh ? 'shut' : 'anchor', fromMPerS: anchorFromMPerS };
}

/**
 * Gust that lifts a lid which only its weight holds.
 *
 * @param lidKgPerM2 - Weight of the lid. [kg m⁻², > 0]
 * @param shelterFraction - Wind at the bed as a share of the open-field wind. [0…1]
 * @returns Gust at 10 m. [m s⁻¹]
 */
export function liftOffGustMPerS(lidKgPerM2: number, shelterFraction: number): number {
  const atLid = Math.sqrt((2 * lidKgPerM2 * GRAVITY_M_PER_S2) / (AIR_KG_PER_M3 * SUCTION_FRACTION));
  return atLid / (GUST_AT_LID_FRACTION * shelterFraction);
}

/**
 * Whether a gust lifts a lid that is propped open: it presses from below as much as it sucks from above.
 *
 * @param cover - The cover that is opened.
 * @param gustMPerS - Strongest gust at 10 m. [m s⁻¹]
 * @param shelterFraction - Wind at the bed as a share of the open-field wind. [0…1]
 * @returns False for what is no lid.
 * @see `liftOffGustMPerS`; the pressure from below is judgement
 */
export function liftsPropped(cover: CoverKey, gustMPerS: number, shelterFraction: number): boolean {
  const lidKgPerM2 = STRUCTURES[cover]?.lidKgPerM2;
  return lidKgPerM2 !== undefined && gustMPerS >= liftOffGustMPerS(lidKgPerM2, shelterFraction) / Math.SQRT2;
}

/** What is missing to the weight of the lid, with something to spare. [kg m⁻²] */
function ballastFor(gustMPerS: number, lidKgPerM2: number, shelterFraction: number): number {
  const atLid = gustMPerS * GUST_AT_LID_FRACTION * shelterFraction;
  const suctionKgPerM2 = (0.5 * AIR_KG_PER_M3 * SUCTION_FRACTION * atLid ** 2) / GRAVITY_M_PER_S2;
  return SAFETY_FACTOR * suctionKgPerM2 - lidKgPerM2;
}
