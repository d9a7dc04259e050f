import type { UnsoundOrder } from '../covers/cover-order.ts';
import { type BedAsLaid, type BedNight, bedNight } from './bed-night.ts';
import { type OrdinaryNightOptions, ordinaryNight } from './ordinary-night.ts';

const COLDEST_C = -40;
const WARMEST_C = 10;
/** Finer than the model can tell. */
const STEP_C = 0.1;

/** How cold the outside may get. */
export type ColdestLow =
  /** The coldest outside low at which it still holds, and the night that goes with it. [°C] */
  | { readonly kind: 'low'; readonly lowC: number; readonly night: BedNight }
  /** It holds even at −40 °C. */
  | { readonly kind: 'any' }
  /** It does not hold even at +10 °C. */
  | { readonly kind: 'none' }
  | UnsoundOrder;

/**
 * How cold an ordinary night may get outside before something about a bed no longer holds.
 *
 * @param holds - What must hold, such as odds of a crop's survival from leaf minimum and spread; once false, false for every colder night.
 * @param bed - The bed.
 * @param options - Sky, wind and place of the night.
 * @returns The coldest outside low, to 0.1 K on the side where it holds.
 *
 * @remarks The leaf minimum rises with the outside low (slope at most about 1), so halving the range is safe. Ten nights are computed.
 */
export function coldestLowC(
  holds: (night: BedNight) => boolean,
  bed: BedAsLaid,
  options: OrdinaryNightOptions = {},
): ColdestLow {
  const at = (lowC: number) => bedNight({ ...ordinaryNight(lowC, options), bed });
  const warmest = at(WARMEST_C);
  if (warmest.kind === 'unsound') return warmest;
  if (!holds(warmest)) return { kind: 'none' };
  let best = { lowC: WARMEST_C, night: warmest };
  let failsC = COLDEST_C;
  const coldest = at(COLDEST_C);
  if (coldest.kind === 'night' && holds(coldest)) return { kind: 'any' };
  while (best.lowC - failsC > STEP_C) {
    const lowC = (best.lowC + failsC) / 2;
    const night = at(lowC);
    if (night.kind === 'night' && holds(night)) best = { lowC, night };
    else failsC = lowC;
  }
  return { kind: 'low', ...best };
}
