import { MS_PER_H } from '../../rules/index.ts';
import type { Credit, ForecastColumnName, ForecastColumns, HourlyColumn, HourlyForecast } from './forecast.ts';

/** A week tells the soil's warmth; more is not used. */
const LONGEST_PAST_H = 7 * 24;

/** The credits of both, each once. */
export function allCredits(one: HourlyForecast, other: HourlyForecast): readonly Credit[] {
  const added = other.credits.filter(({ text }) => !one.credits.some((credit) => credit.text === text));
  return [...one.credits, ...added];
}

/**
 * The forecast with hours before its first one taken from another: an earlier answer of the same service, or one that reaches
 * further back. Hours that the forecast has itself are never touched.
 */
export function withPast(forecast: HourlyForecast, other: HourlyForecast): HourlyForecast {
  const before = (forecast.first.getTime() - other.first.getTime()) / MS_PER_H;
  const hours = Math.min(before, LONGEST_PAST_H);
  if (!Number.isInteger(before) || hours < 1 || other.hours < before) return forecast;
  const first = new Date(forecast.first.getTime() - hours * MS_PER_H);
  const foreign = other.service !== forecast.service;
  const past = other.lowWindows.filter(({ from, to }) => from >= first && to <= forecast.first);
  return {
    ...forecast,
    first,
    hours: forecast.hours + hours,
    columns: joined(forecast, other, before - hours, before),
    lowWindows: [...past, ...forecast.lowWindows],
    credits: allCredits(forecast, other),
    notes: foreign
      ? [...forecast.notes, { code: 'past-from-other-service', service: other.service, hours }]
      : forecast.notes,
  };
}

function joined(forecast: HourlyForecast, other: HourlyForecast, from: number, to: number): ForecastColumns {
  const names = new Set([...Object.keys(forecast.columns), ...Object.keys(other.columns)]) as Set<ForecastColumnName>;
  const columns: Partial<Record<ForecastColumnName, HourlyColumn>> = {};
  for (const name of names) {
    const earlier = other.columns[name]?.slice(from, to) ?? nothing(to - from);
    columns[name] = [...earlier, ...(forecast.columns[name] ?? nothing(forecast.hours))];
  }
  return columns;
}

function nothing(hours: number): undefined[] {
  return new Array<undefined>(hours).fill(undefined);
}
