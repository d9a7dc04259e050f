import type { BedNight, NightRun } from '../../rules/index.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { BoundedMap } from '../ground/bounded-map.ts';

/** A night without its hours holds some 2 kB, with them 15 kB more. */
const KEPT_NIGHTS = 25_000;
const KEPT_WHOLE_NIGHTS = 500;
/** Of each place, exposure, night and forecast. */
const KEPT_BENCHES = 200;

/**
 * What has been worked out already, so that gardens of one place, exposure and forecast, and beds that lie alike, are
 * worked out once. The one used least recently is forgotten first.
 */
export class SharedNights<Bench> {
  readonly #numbers = new WeakMap<HourlyForecast, number>();
  readonly #benches = new BoundedMap<string, Bench>(KEPT_BENCHES);
  readonly #nights = new BoundedMap<string, Kept>(KEPT_NIGHTS);
  readonly #wholeNights = new BoundedMap<string, Kept>(KEPT_WHOLE_NIGHTS);
  readonly #keepsHours: boolean;
  #lastNumber = 0;

  /** @param keepsHours - False where only lows and spreads are told, for thousands of gardens: a night's hours are let go. */
  constructor(keepsHours = true) {
    this.#keepsHours = keepsHours;
  }

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

  /** @param isWhole - Its hours are needed, wherever else they are let go. */
  night(key: string, isWhole: boolean, work: () => BedNight | undefined): BedNight | undefined {
    const whole = isWhole || this.#keepsHours;
    const nights = whole ? this.#wholeNights : this.#nights;
    const known = nights.get(key);
    if (known !== undefined) return known.night;
    const made = work();
    const night = whole || made === undefined ? made : { ...made, run: NO_HOURS };
    nights.set(key, { night });
    return night;
  }
}

interface Kept {
  readonly night: BedNight | undefined;
}

const NONE = new Float64Array(0);
const NO_HOURS: NightRun = {
  ...{ timesMs: NONE, leafC: NONE, airC: NONE, thermometerC: NONE, soilSurfaceC: NONE, soil10CmC: NONE },
  ...{ coverC: NONE, screenC: NONE, cropLevelAirC: NONE, coverCount: new Uint8Array(0), end: { soilC: [] } },
};
