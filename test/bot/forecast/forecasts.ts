import type { ForecastColumns, HourlyForecast } from '../../../bot/forecast/forecast.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';

const H = 3_600_000;

/** A forecast of our own: one hour after another from `first` on. */
export function forecastOf(
  columns: ForecastColumns,
  first = '2026-01-20T12:00:00Z',
  more: Partial<HourlyForecast> = {},
): HourlyForecast {
  return {
    service: 'nws',
    updatedAt: FIXTURE_NOW,
    fetchedAt: FIXTURE_NOW,
    first: new Date(first),
    hours: columns.screenC?.length ?? 0,
    columns,
    lowWindows: [],
    credits: [{ text: 'Invented', url: 'https://example.org/' }],
    notes: [],
    ...more,
  };
}

/** Hours of one value. */
export function even(hours: number, value: number): number[] {
  return new Array<number>(hours).fill(value);
}

/** An afternoon, a night and a morning: falls evenly from 5 °C at 12 UTC to −6 °C at 13 UTC next day, then rises. */
export function coolingNight(hours = 40): number[] {
  return Array.from({ length: hours }, (_, i) => (i <= 25 ? 5 - (11 * i) / 25 : -6 + (i - 25)));
}

export function hourOf(series: { readonly first: Date }, at: string): number {
  return (Date.parse(at) - series.first.getTime()) / H;
}
