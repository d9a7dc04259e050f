import type { BedNight } from '../../rules/index.ts';
import { BoundedMap } from '../forecast/bounded-map.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';

/** A night of one bed holds some 15 kB of temperatures. */
const KEPT_NIGHTS = 1500;
/** Of each place, exposure, night and forecast. */
const KEPT_BENCHES = 200;

/**
 * What has been worked out already, so that gardens of one place, exposure and forecast, and beds that lie alike, are
 * worked out once. The one used least recently is forgotten first.
 */
export class SharedNights<Bench> {
  readonly #numbers = new WeakMap<HourlyForecast, number>();
  readonly #benches = new BoundedMap<string, Bench>(KEPT_BENCHES);
  readonly #nights = new BoundedMap<string, { readonly night: BedNight | undefined }>(KEPT_NIGHTS);
  #lastNumber = 0;

  /** Tells forecasts apart: the same object is the same forecast. */
  numberOf(forecast: HourlyForecast): number {
    const known = this.#numbers.get(forecast);
    if (known !== undefined) return known;
    this.#lastNumber += 1;
    this.#numbers.set(forecast, this.#lastNumber);
    return this.#lastNumber;
  }

  bench(key: string, work: () => Bench): Bench {
    const known = this.#benches.get(key);
    if (known !== undefined) return known;
    const made = work();
    this.#benches.set(key, made);
    return made;
  }

  night(key: string, work: () => BedNight | undefined): BedNight | undefined {
    const known = this.#nights.get(key);
    if (known !== undefined) return known.night;
    const night = work();
    this.#nights.set(key, { night });
    return night;
  }
}
