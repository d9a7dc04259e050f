/** First damage lies this far above the median lethal temperature of a hardy leaf, 2 to 4 measured (`tamura-2000`). [K] */
const FIRST_DAMAGE_ABOVE_K = 3;
/** Kill lies this far below it (`limit-statements`). [K] */
const KILL_BELOW_K = 1;

/** How far the limits of one organ in one state lie apart. */
export interface Spacing {
  /** First mark above the median lethal temperature. [K] */
  readonly firstK: number;
  /** Kill below the median lethal temperature. [K] */
  readonly killK: number;
}

/**
 * Spacing of the three limits: 3 K and 1 K, but never wider in all than the starting pair of the kind of crop.
 *
 * @param pair - First damage and kill of the starting pair. [°C]
 *
 * @remarks
 * A tomato leaf or a curd has no 4 K between its first mark and its end: ice spoils it at once.
 *
 * @see tamura-2000; limit-statements, starting-pairs (judgement)
 */
export function spacing(pair: readonly [firstDamageC: number, killC: number]): Spacing {
  const width = Math.min(1, (pair[0] - pair[1]) / (FIRST_DAMAGE_ABOVE_K + KILL_BELOW_K));
  return { firstK: FIRST_DAMAGE_ABOVE_K * width, killK: KILL_BELOW_K * width };
}

/** Median lethal temperature that a starting pair implies, seen from its two ends alike. [°C] */
export function startingLt50C(pair: readonly [firstDamageC: number, killC: number]): number {
  const { firstK, killK } = spacing(pair);
  return (pair[0] - firstK + pair[1] + killK) / 2;
}
