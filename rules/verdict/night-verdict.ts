import type { Crop, Tolerance } from '../crops/crop.ts';
import { toleranceAt } from '../hardening/tolerance-at.ts';
import type { HardinessBelief } from '../learning/crop-learning.ts';
import { type Adjustment, adjusted, adjustments, type Circumstances } from './circumstances.ts';
import { normalFraction } from './normal-fraction.ts';

export const VERDICTS = ['holds', 'on the edge', 'leaf burn', 'winterkill'] as const;

export type Verdict = (typeof VERDICTS)[number];

export interface VerdictInput {
  readonly crop: Crop;
  /** 0 grown warm … 1 fully hardened. */
  readonly hardeningIndex: number;
  /** Coldest exposed leaf of the night. [°C] */
  readonly leafLowC: number;
  /** Coldest soil surface of the night. [°C] */
  readonly surfaceLowC: number;
  /** Standard deviation of those lows, forecast and model together. [K, ≥ 0] */
  readonly sdK: number;
  readonly circumstances?: Circumstances;
  /** What this garden's own outcomes have taught about the crop; its spread then takes the place of the table's. */
  readonly learned?: HardinessBelief;
}

/** Odds of the three ends of a night; they add up to 1. [0…1] */
export interface Odds {
  readonly noMark: number;
  readonly leafBurn: number;
  readonly winterkill: number;
}

export interface NightVerdict {
  readonly verdict: Verdict;
  readonly odds: Odds;
  /** Limits at tonight's hardening and circumstances. */
  readonly tolerance: Tolerance;
  readonly adjustments: readonly Adjustment[];
  /** The low that was held against them: of the leaf, or of the soil surface for what grows in it. [°C] */
  readonly organLowC: number;
  /** Lows and limits together. [K] */
  readonly sdTotalK: number;
}

/** A crop holds while a mark is less likely than this (judgement). */
const HOLDS_BELOW = 0.2;
const EVEN = 0.5;
/** Error of the normal share: so near to even counts as even. */
const ROUNDING_CHANCE = 1e-6;

/**
 * What a night comes to for one crop.
 *
 * @param input - The crop, its state and the computed lows.
 * @returns Odds, the verdict word, and what they rest on.
 * @throws RangeError when a low is not finite, `sdK` is negative, or `hardeningIndex` is outside 0…1.
 *
 * @remarks
 * Errors of the low and of the crop's limits are taken as normal and independent, so they combine in quadrature. A mark is
 * a low below the first-mark limit, a loss one below the median lethal temperature. Duration is not counted: limits come
 * from ordinary nights and hour-long laboratory freezes.
 *
 * @see limit-statements, two-thermometers (judgement)
 */
export function nightVerdict(input: VerdictInput): NightVerdict {
  const { crop, leafLowC, surfaceLowC, sdK, circumstances = {} } = input;
  const organLowC = crop.judgedBy === 'surface' ? surfaceLowC : leafLowC;
  if (!Number.isFinite(organLowC)) throw new RangeError(`the low ${organLowC} is not a temperature`);
  if (!(sdK >= 0)) throw new RangeError(`sdK ${sdK} is below 0`);
  const by = adjustments(crop, circumstances);
  const tolerance = adjusted(taught(toleranceAt(crop, input.hardeningIndex), input.learned), by);
  const sdTotalK = Math.hypot(sdK, tolerance.sdK);
  const marked = normalFraction((tolerance.firstMarkC - organLowC) / sdTotalK);
  const winterkill = normalFraction((tolerance.lt50C - organLowC) / sdTotalK);
  const odds = { noMark: 1 - marked, leafBurn: marked - winterkill, winterkill };
  return { verdict: verdictOf(odds), odds, tolerance, adjustments: by, organLowC, sdTotalK };
}

/**
 * What the same night comes to for the part of the plant that is not eaten.
 *
 * @returns `undefined` for a crop that is kept as one.
 */
export function otherPartVerdict(input: VerdictInput): NightVerdict | undefined {
  const { crop } = input;
  if (crop.other === undefined) return undefined;
  const { other, ...eaten } = crop;
  const hardeningIndex = other.hardens ? input.hardeningIndex : 0;
  return nightVerdict({ ...input, hardeningIndex, crop: { ...eaten, ...other, name: eaten.name } });
}

/** The table's limits with what the garden itself has shown. */
function taught(table: Tolerance, learned: HardinessBelief | undefined): Tolerance {
  if (learned === undefined) return table;
  return {
    firstMarkC: table.firstMarkC - learned.hardierK,
    lt50C: table.lt50C - learned.hardierK,
    killC: table.killC - learned.hardierK,
    sdK: Math.sqrt(learned.varianceK2),
  };
}

/**
 * The verdict word for odds.
 *
 * @remarks A crop holds up to odds of a mark of 1 in 5, is on the edge up to even; past even it burns or dies.
 * @see judgement
 */
export function verdictOf(odds: Odds): Verdict {
  if (odds.winterkill > EVEN + ROUNDING_CHANCE) return 'winterkill';
  const marked = odds.leafBurn + odds.winterkill;
  if (marked > EVEN + ROUNDING_CHANCE) return 'leaf burn';
  return marked > HOLDS_BELOW ? 'on the edge' : 'holds';
}
