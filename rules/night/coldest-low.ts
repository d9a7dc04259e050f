import type { UnsoundOrder } from '../covers/cover-order.ts';
import { underSameSun } from '../sky/prepared-weather.ts';
import { type BedAsLaid, type BedNight, bedNight, type SharedNight, sharedNight } from './bed-night.ts';
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

/** The ordinary night of a bed for any outside low. [°C, −45…25] */
export type OrdinaryNightsOfBed = (lowC: number) => BedNight | UnsoundOrder;

/**
 * The ordinary nights of one bed, each worked out when it is first asked for. They end with their window, so that no thaw is told.
 *
 * @param bed - The bed.
 * @param options - Sky, wind, place and season of the nights.
 * @returns The night for a low.
 */
export function ordinaryNights(bed: BedAsLaid, options: OrdinaryNightOptions = {}): OrdinaryNightsOfBed {
  const known = new Map<number, BedNight | UnsoundOrder>();
  let hours: SharedNight | undefined;
  return (lowC) => {
    const before = known.get(lowC);
    if (before !== undefined) return before;
    const night = ordinaryNight(lowC, options);
    // Only the weather hangs on the low: hours and sun are those of the first night.
    hours ??= sharedNight(night.site, night.weather, night.window, 0);
    const prepared = underSameSun(hours.prepared, night.weather);
    const found = bedNight({ ...night, bed }, { ...hours, prepared });
    known.set(lowC, found);
    return found;
  };
}

/**
 * How cold an ordinary night may get outside before something about a bed no longer holds.
 *
 * @param holds - What must hold, such as odds of a crop's survival from leaf minimum and spread; once false, false for every colder night.
 * @param at - The nights of the bed, from {@link ordinaryNights}.
 * @returns The coldest outside low, to 0.1 K on the side where it holds.
 *
 * @remarks The leaf minimum rises with the outside low (slope at most about 1), so halving the range is safe. Eleven nights are looked at;
 * another question about the same nights meets some of them again.
 */
export function coldestLowC(holds: (night: BedNight) => boolean, at: OrdinaryNightsOfBed): ColdestLow {
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
