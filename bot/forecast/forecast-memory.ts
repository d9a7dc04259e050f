import { BoundedMap } from '../ground/bounded-map.ts';
import { placeKey } from './asked-place.ts';
import type { ForecastPlace, ForecastService, HourlyForecast } from './forecast.ts';
import { withPast } from './past.ts';

/** The last good answer for each place and service: the refuge when nothing answers, and the memory of hours gone by. */
export class ForecastMemory {
  readonly #kept: BoundedMap<string, HourlyForecast>;

  constructor(limit = 500) {
    this.#kept = new BoundedMap(limit);
  }

  /** Keeps an answer and returns it with the hours that earlier answers held before it. */
  kept(place: ForecastPlace, forecast: HourlyForecast): HourlyForecast {
    const key = `${forecast.service} ${placeKey(place)}`;
    const earlier = this.#kept.get(key);
    const whole = earlier === undefined ? forecast : withPast(forecast, earlier);
    this.#kept.set(key, whole);
    return whole;
  }

  last(place: ForecastPlace, service: ForecastService): HourlyForecast | undefined {
    return this.#kept.get(`${service} ${placeKey(place)}`);
  }
}
