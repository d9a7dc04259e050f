import type { ForecastNote, HourlyForecast } from './forecast.ts';
import { MS_PER_H } from './hour-grid.ts';

const WARN_ABOVE_H = 12;
const REFUSE_ABOVE_H = 18;

/** Hours since the service last changed the forecast; never negative, since some services date ahead. */
export function ageH(forecast: HourlyForecast, now: Date): number {
  return Math.max(0, (now.getTime() - forecast.updatedAt.getTime()) / MS_PER_H);
}

/** Too old to plan a night by. */
export function isStale(forecast: HourlyForecast, now: Date): boolean {
  return ageH(forecast, now) > REFUSE_ABOVE_H;
}

/** The forecast's notes with what is true of its age now. */
export function notesWithAge(forecast: HourlyForecast, now: Date): readonly ForecastNote[] {
  const others = forecast.notes.filter((note) => note.code !== 'old-forecast');
  const hours = ageH(forecast, now);
  return hours > WARN_ABOVE_H ? [...others, { code: 'old-forecast', ageH: hours }] : others;
}
