import { MS_PER_H, MS_PER_MIN } from '../../rules/index.ts';
import { type Bridged, bridged } from '../forecast/bridged.ts';
import type { ForecastNight, HourlyForecast } from '../forecast/forecast.ts';
import { NightForecastError } from '../forecast/forecast-error.ts';
import { isStale, notesWithAge } from '../forecast/freshness.ts';
import { LONGEST_STEP_H, lowSpanMs, serviceLowC } from '../forecast/night-low.ts';
import { completeColumns, type HourRange } from './night-columns.ts';
import { nightSummary } from './night-summary.ts';
import type { NightNote, NightWeather } from './night-weather.ts';

/** Enough morning for the thaw and the opening of the covers. */
const HOURS_AFTER_SUNRISE = 6;

/**
 * One night's weather for the energy balance, on whole steps of an hour from the forecast's first usable hour on.
 *
 * The night's low is the lowest hour from one hour before sunset to one hour after sunrise, or the service's own low for the
 * night where that is colder; the night's curve is then lowered to meet it, fading in over the evening and out over the
 * morning. Where the service is silent the cold side is taken, and the notes say for how many hours.
 *
 * @param night - Sunset and the sunrise after it.
 * @param now - What time it is; for a saved forecast its own `fetchedAt`.
 * @param until - Last instant that is wanted; six hours after sunrise unless told.
 * @throws NightForecastError when the forecast is more than 18 h old or does not cover the night.
 */
export function nightWeather(
  forecast: HourlyForecast,
  night: ForecastNight,
  now: Date,
  until = new Date(night.sunrise.getTime() + HOURS_AFTER_SUNRISE * MS_PER_H),
): NightWeather {
  if (isStale(forecast, now)) {
    throw new NightForecastError(
      'stale',
      'The forecast is more than 18 hours old, too old to plan a night by; a newer one is needed.',
    );
  }
  const air = bridged(forecast.columns.screenC ?? [], LONGEST_STEP_H);
  const range = usableRange(forecast, air, night, now, until);
  const columns = completeColumns(forecast.columns, air, range);
  const firstMs = forecast.first.getTime() + range.start * MS_PER_H;
  const lowered = loweredToService(columns.screenC, firstMs, night, serviceLowC(forecast.lowWindows, night));
  const { notes: assumed, ...complete } = columns;
  const series = {
    first: new Date(firstMs),
    stepH: 1,
    ...complete,
    screenC: lowered.screenC,
    dewPointC: complete.dewPointC.map((value, i) => Math.min(value, lowered.screenC[i] ?? value)),
  };
  const missingH = Math.ceil((until.getTime() - firstMs) / MS_PER_H) - (series.screenC.length - 1);
  const notes: NightNote[] = [...notesWithAge(forecast, now), ...assumed];
  if (inLongSteps(forecast, air, night)) notes.push({ code: 'six-hourly-steps' });
  if (lowered.byK > 0) notes.push({ code: 'lowered-to-service-low', byK: lowered.byK });
  if (missingH > 0) notes.push({ code: 'ends-early', missingH });
  return {
    series,
    summary: nightSummary(forecast, series, night),
    notes,
    spinUpH: Math.max(0, (night.sunset.getTime() - firstMs) / MS_PER_H),
  };
}

/** The unbroken hours around the night, as early as the forecast begins and as late as wanted. */
function usableRange(forecast: HourlyForecast, air: Bridged, night: ForecastNight, now: Date, until: Date): HourRange {
  if (!(night.sunset < night.sunrise)) throw new RangeError('night.sunset is not before night.sunrise');
  const indexAt = (at: Date) => Math.ceil((at.getTime() - forecast.first.getTime()) / MS_PER_H);
  const known = (index: number) => air.values[index] !== undefined;
  const sunrise = indexAt(night.sunrise);
  const last = air.values.findLastIndex((value) => value !== undefined);
  if (last < 0) throw new NightForecastError('no-temperature', 'The forecast holds no temperatures.');
  if (last < sunrise) {
    const end = new Date(forecast.first.getTime() + last * MS_PER_H);
    throw new NightForecastError(
      'ends-before-sunrise',
      `The forecast ends at ${utc(end)}, before sunrise at ${utc(night.sunrise)}; ask for an earlier night.`,
    );
  }
  if (!known(sunrise))
    throw brokenNight(sunrise < 0 || !air.values.slice(0, sunrise).some((value) => value !== undefined));
  let start = sunrise;
  while (known(start - 1)) start -= 1;
  const latestStart = Math.max(indexAt(night.sunset), indexAt(now) + 1);
  if (start > latestStart) throw brokenNight(!air.values.slice(0, start).some((value) => value !== undefined));
  const wanted = Math.max(sunrise, indexAt(until));
  let end = sunrise;
  while (end < wanted && known(end + 1)) end += 1;
  return { start, end };
}

function brokenNight(beginsLate: boolean): NightForecastError {
  return beginsLate
    ? new NightForecastError(
        'begins-after-sunset',
        'The forecast begins after that night has begun; a night still to come is needed.',
      )
    : new NightForecastError(
        'gap',
        'The forecast has a gap of more than six hours in that night, so its low is not known.',
      );
}

/**
 * Lowers the night so that its minimum equals the service's own low. The shift grows from nothing before the span to its full
 * size two hours after sunset, or at the low if that comes earlier, and dies out over four hours after sunrise or the low.
 */
function loweredToService(
  screenC: readonly number[],
  firstMs: number,
  night: ForecastNight,
  namedC: number | undefined,
): { screenC: readonly number[]; byK: number } {
  const { fromMs, toMs } = lowSpanMs(night);
  const indexAt = (atMs: number) => (atMs - firstMs) / MS_PER_H;
  const from = Math.max(0, Math.ceil(indexAt(fromMs)));
  const span = screenC.slice(from, Math.floor(indexAt(toMs)) + 1);
  const lowest = Math.min(...span);
  const byK = namedC === undefined ? 0 : lowest - namedC;
  if (!(byK > 0)) return { screenC, byK: 0 };
  const lowAt = from + span.indexOf(lowest);
  const fullFrom = Math.min(lowAt, indexAt(night.sunset.getTime()) + 2);
  const fullTo = Math.max(lowAt, indexAt(night.sunrise.getTime()));
  const share = (i: number) => {
    if (i < fullFrom) return Math.max(0, (i - (from - 1)) / (fullFrom - (from - 1)));
    return i <= fullTo ? 1 : Math.max(0, 1 - (i - fullTo) / 4);
  };
  const floorC = (value: number) => Math.min(value, lowest - byK);
  return { screenC: screenC.map((value, i) => Math.max(floorC(value), value - byK * share(i))), byK };
}

/** Does the night lie where the service gives a value only every six hours? */
function inLongSteps(forecast: HourlyForecast, air: Bridged, night: ForecastNight): boolean {
  const { fromMs, toMs } = lowSpanMs(night);
  return air.bridgedH.some((distanceH, i) => {
    const atMs = forecast.first.getTime() + i * MS_PER_H;
    return distanceH >= LONGEST_STEP_H && atMs >= fromMs && atMs <= toMs;
  });
}

function utc(at: Date): string {
  const minute = new Date(Math.round(at.getTime() / MS_PER_MIN) * MS_PER_MIN);
  return `${minute.toISOString().slice(0, 16).replace('T', ' ')} UTC`;
}
