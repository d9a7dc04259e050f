import { type DaySpan, MS_PER_H, type WeatherSeries } from '../../rules/index.ts';
import { bridged } from '../forecast/bridged.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { NightForecastError } from '../forecast/forecast-error.ts';
import { isStale, notesWithAge } from '../forecast/freshness.ts';
import { LONGEST_STEP_H } from '../forecast/night-low.ts';
import { completeColumns } from './night-columns.ts';
import type { NightNote } from './night-weather.ts';

/** Weather of a day, hour by hour, as far back as the forecast goes. */
export interface DayWeather {
  readonly series: WeatherSeries;
  readonly notes: readonly NightNote[];
}

/**
 * The weather of a day and of what lies before it.
 *
 * @param now - What time it is; for a saved forecast its own `fetchedAt`.
 * @throws NightForecastError when the forecast is more than 18 h old or does not cover what is left of the day.
 */
export function dayWeather(forecast: HourlyForecast, day: DaySpan, now: Date): DayWeather {
  if (isStale(forecast, now)) {
    throw new NightForecastError('stale', 'The forecast is more than 18 hours old; a newer one is needed.');
  }
  const air = bridged(forecast.columns.screenC ?? [], LONGEST_STEP_H);
  const indexAt = (at: Date) => Math.ceil((at.getTime() - forecast.first.getTime()) / MS_PER_H);
  const known = (index: number) => air.values[index] !== undefined;
  const end = indexAt(day.sunset);
  if (!known(end)) {
    throw new NightForecastError('ends-before-sunset', 'The forecast does not reach that day; ask for an earlier one.');
  }
  let start = end;
  while (known(start - 1)) start -= 1;
  if (start > Math.max(indexAt(day.sunrise), indexAt(now) + 1)) {
    throw new NightForecastError('gap', 'The forecast has a gap in that day, so I cannot tell when to open.');
  }
  const { notes, ...columns } = completeColumns(forecast.columns, air, { start, end });
  const first = new Date(forecast.first.getTime() + start * MS_PER_H);
  return { series: { first, stepH: 1, ...columns }, notes: [...notesWithAge(forecast, now), ...notes] };
}
