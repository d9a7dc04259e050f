import { MS_PER_H } from '../durations.ts';
import type { WeatherSeries } from '../site-and-weather.ts';

/** Values that no forecast on earth should hold (`judgement`); the model was tried within −35…40 °C and 0…20 m s⁻¹. */
const LIMITS = {
  screenC: [-70, 60],
  dewPointC: [-90, 60],
  cloudFraction: [0, 1],
  wind10MPerS: [0, 80],
  globalWPerM2: [0, 1600],
} as const;

/**
 * Refuses a forecast that the model cannot use.
 *
 * @param series - The forecast.
 * @param start - First instant that is wanted.
 * @param end - Last instant that is wanted.
 * @throws RangeError naming the parameter, its value and the limit.
 */
export function checkedWeather(series: WeatherSeries, start: Date, end: Date): void {
  if (!(series.stepH > 0)) throw new RangeError(`weather.stepH ${series.stepH} is not above 0`);
  const count = series.screenC.length;
  if (count === 0) throw new RangeError('weather.screenC is empty, at least 1 value is needed');
  for (const [name, [low, high]] of Object.entries(LIMITS)) {
    const values = series[name as keyof typeof LIMITS];
    if (values !== undefined) refuseBadColumn(`weather.${name}`, values, count, low, high);
  }
  const firstMs = series.first.getTime();
  const lastMs = firstMs + (count - 1) * series.stepH * MS_PER_H;
  if (!(start.getTime() >= firstMs))
    throw new RangeError(`start ${words(start)} is before weather.first ${words(series.first)}`);
  if (!(end.getTime() <= lastMs))
    throw new RangeError(`end ${words(end)} is after the last weather value ${words(new Date(lastMs))}`);
}

function refuseBadColumn(name: string, values: readonly number[], count: number, low: number, high: number): void {
  if (values.length !== count)
    throw new RangeError(`${name} has ${values.length} values, weather.screenC has ${count}`);
  for (const [i, value] of values.entries()) {
    if (!(value >= low && value <= high)) throw new RangeError(`${name}[${i}] ${value} is outside ${low}…${high}`);
  }
}

function words(at: Date): string {
  return Number.isNaN(at.getTime()) ? 'that is no instant' : at.toISOString();
}
