import { MS_PER_H } from '../../rules/index.ts';
import { SERVICE_TITLES } from './credits.ts';
import type { ForecastNote, HourlyForecast } from './forecast.ts';
import { ForecastServiceError } from './forecast-error.ts';

const WARN_ABOVE_H = 12;
const REFUSE_ABOVE_H = 18;
/** Clocks of two machines differ by so much at most. */
const CLOCK_MARGIN_MS = 60_000;

/** Hours since the service last changed the forecast; never negative, since some services date ahead. */
function ageH(forecast: HourlyForecast, now: Date): number {
  return Math.max(0, (now.getTime() - forecast.updatedAt.getTime()) / MS_PER_H);
}

/** Fetched later than now: the clock ran ahead and was put right, so that nobody knows how old it is. */
export function isFromTheFuture({ fetchedAt }: HourlyForecast, now: Date): boolean {
  return fetchedAt.getTime() > now.getTime() + CLOCK_MARGIN_MS;
}

/** Too old to plan a night by. */
export function isStale(forecast: HourlyForecast, now: Date): boolean {
  return isFromTheFuture(forecast, now) || ageH(forecast, now) > REFUSE_ABOVE_H;
}

/** Old enough that its reader must be told. */
export function isOld(forecast: HourlyForecast, now: Date): boolean {
  return ageH(forecast, now) > WARN_ABOVE_H;
}

/** The forecast's notes with what is true of its age now. */
export function notesWithAge(forecast: HourlyForecast, now: Date): readonly ForecastNote[] {
  const others = forecast.notes.filter((note) => note.code !== 'old-forecast');
  return isOld(forecast, now) ? [...others, { code: 'old-forecast', ageH: ageH(forecast, now) }] : others;
}

/** The forecast with its age noted. @throws ForecastServiceError when it is too old to use: one office once sent the same for days. */
export function accepted(forecast: HourlyForecast, now: Date): HourlyForecast {
  if (!isStale(forecast, now)) return { ...forecast, notes: notesWithAge(forecast, now) };
  const title = SERVICE_TITLES[forecast.service];
  throw new ForecastServiceError(
    forecast.service,
    'stale',
    `The forecast of ${title} is more than ${REFUSE_ABOVE_H} hours old.`,
  );
}
