import type { UnsoundOrder } from '../covers/cover-order.ts';
import { underSameSun } from '../sky/prepared-weather.ts';
import { type BedAsLaid, type BedNight, bedNight, type SharedNight, sharedNight } from './bed-night.ts';
import { type OrdinaryNightOptions, ordinaryNight } from './ordinary-night.ts';

const COLDEST_C = -40;
const WARMEST_C = 10;
/** Steps of the search: finer than the model can tell. */
const PLACES = 512;
const STEP_C = (WARMEST_C - COLDEST_C) / PLACES;
/** From then on the range is halved, so that no odd answer makes the search long. */
const MOST_GUESSES = 6;

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
    const night = ordinaryNight(lowC, { coveredForWeeks: bed.covers, ...options });
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
 * @remarks
 * Looked for on a grid of 0.1 K between −40 and +10 °C, from the margin of the night before: the lows inside fall nearly as far as the low
 * outside. Some seven nights are worked out where halving the range takes eleven; another question about the same nights meets some of
 * them again.
 */
export function coldestLowC(holds: (night: BedNight) => boolean, at: OrdinaryNightsOfBed): ColdestLow {
  const warmest = at(WARMEST_C);
  if (warmest.kind === 'unsound') return warmest;
  if (!holds(warmest)) return { kind: 'none' };
  const coldest = at(COLDEST_C);
  if (coldest.kind === 'unsound') return coldest;
  if (holds(coldest)) return { kind: 'any' };
  const { place, night } = search(holds, at, warmest, coldest);
  return { kind: 'low', lowC: lowAtC(place), night };
}

interface Found {
  readonly place: number;
  readonly night: BedNight;
}

/** Closes in on the last place of the grid that holds, between a night that does and one that does not. */
function search(
  holds: (night: BedNight) => boolean,
  at: OrdinaryNightsOfBed,
  warmest: BedNight,
  coldest: BedNight,
): Found {
  const placesPerK = PLACES / (warmest.leafLowC - coldest.leafLowC);
  let best: Found = { place: PLACES, night: warmest };
  let failing = 0;
  let guess = missingK(holds, coldest) * placesPerK;
  for (let tries = 1; best.place - failing > 1; tries += 1) {
    const wanted = tries > MOST_GUESSES ? (best.place + failing) / 2 : guess;
    const place = Math.max(failing + 1, Math.min(best.place - 1, Math.round(wanted)));
    const night = at(lowAtC(place));
    if (night.kind === 'unsound') throw new RangeError('covers that lie soundly on one night do not on another');
    if (holds(night)) {
      best = { place, night };
      guess = place - Math.max(1, spareK(holds, night) * placesPerK);
    } else {
      failing = place;
      guess = place + Math.max(1, missingK(holds, night) * placesPerK);
    }
  }
  return best;
}

function lowAtC(place: number): number {
  return COLDEST_C + place * STEP_C;
}

/** By how much leaf and soil of the night could be colder, to a step. */
function spareK(holds: (night: BedNight) => boolean, night: BedNight): number {
  return turningK((byK) => !holds(shifted(night, -byK))).lastK;
}

/** By how much they would have to be warmer. */
function missingK(holds: (night: BedNight) => boolean, night: BedNight): number {
  return turningK((byK) => holds(shifted(night, byK))).firstK;
}

/** The night with other lows inside: what it would be judged by, without working it out. */
function shifted(night: BedNight, byK: number): BedNight {
  return { ...night, leafLowC: night.leafLowC + byK, surfaceLowC: night.surfaceLowC + byK };
}

/** Doubles the distance until it turns, then halves what is left between the last where it had not and the first where it had. */
function turningK(hasTurned: (byK: number) => boolean): { readonly lastK: number; readonly firstK: number } {
  let lastK = 0;
  let firstK = STEP_C;
  while (firstK < WARMEST_C - COLDEST_C && !hasTurned(firstK)) {
    lastK = firstK;
    firstK *= 2;
  }
  while (firstK - lastK > STEP_C) {
    const middleK = (firstK + lastK) / 2;
    if (hasTurned(middleK)) firstK = middleK;
    else lastK = middleK;
  }
  return { lastK, firstK };
}
