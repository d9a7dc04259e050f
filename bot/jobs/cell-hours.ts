import { dewPointFromHumidityC, MS_PER_H } from '../../rules/index.ts';
import type { ForecastColumns, HourlyForecast } from '../forecast/forecast.ts';
import { withPast } from '../forecast/past.ts';
import type { CellHour } from '../store/port/weather.ts';

const DAY_H = 24;
/** So few hours of the last day may be missing that its warmth in the soil is still known (judgement). */
const MISSED_MOST_H = 4;

/** The forecast's hours between two instants, as they are kept. */
export function hoursBetween(forecast: HourlyForecast, from: Date, before: Date): CellHour[] {
  const hours: CellHour[] = [];
  for (let i = 0; i < forecast.hours; i += 1) {
    const at = new Date(forecast.first.getTime() + i * MS_PER_H);
    const airC = forecast.columns.screenC?.[i];
    if (airC === undefined || at < from || at >= before) continue;
    hours.push({
      at,
      airC,
      dewPointC: dewPointC(forecast.columns, i, airC),
      cloudFraction: forecast.columns.cloudFraction?.[i],
      wind10MPerS: forecast.columns.wind10MPerS?.[i],
      globalWPerM2: forecast.columns.globalWPerM2?.[i],
    });
  }
  return hours;
}

function dewPointC(columns: ForecastColumns, i: number, airC: number): number | undefined {
  const given = columns.dewPointC?.[i];
  const humidity = columns.humidityFraction?.[i];
  if (given !== undefined || humidity === undefined || !(humidity > 0)) return given;
  return dewPointFromHumidityC(airC, Math.min(1, humidity));
}

/** Do the kept hours tell of the day before `now`? */
export function tellOfYesterday(kept: readonly CellHour[], now: Date): boolean {
  const since = now.getTime() - DAY_H * MS_PER_H;
  const known = kept.filter(({ at }) => at.getTime() > since && at <= now).length;
  return known >= DAY_H - MISSED_MOST_H;
}

/** The forecast with kept hours before its first one. */
export function withKeptPast(forecast: HourlyForecast, kept: readonly CellHour[]): HourlyForecast {
  const past = forecastFromHours(kept.filter(({ at }) => at < forecast.first));
  if (past === undefined) return forecast;
  const hours = Math.round((forecast.first.getTime() - past.first.getTime()) / MS_PER_H);
  return withPast(forecast, { ...past, service: forecast.service, hours, columns: longer(past.columns, hours) });
}

function longer(columns: ForecastColumns, hours: number): ForecastColumns {
  const entries = Object.entries(columns).map(([name, column]) => [
    name,
    Array.from({ length: hours }, (_, i) => column[i]),
  ]);
  return Object.fromEntries(entries) as ForecastColumns;
}

/** Kept hours in the form of a forecast; undefined where there are none. Hours that are missing stay missing. */
export function forecastFromHours(kept: readonly CellHour[]): HourlyForecast | undefined {
  const first = kept[0]?.at;
  const last = kept.at(-1)?.at;
  if (first === undefined || last === undefined) return undefined;
  const hourOf = (at: Date) => Math.round((at.getTime() - first.getTime()) / MS_PER_H);
  const hours = hourOf(last) + 1;
  const byHour = new Map(kept.map((hour) => [hourOf(hour.at), hour]));
  const column = (value: (hour: CellHour) => number | undefined) =>
    Array.from({ length: hours }, (_, i) => {
      const hour = byHour.get(i);
      return hour === undefined ? undefined : value(hour);
    });
  return {
    service: 'openmeteo',
    ...{ updatedAt: last, fetchedAt: last, first, hours },
    columns: {
      screenC: column(({ airC }) => airC),
      dewPointC: column((hour) => hour.dewPointC),
      cloudFraction: column(({ cloudFraction }) => cloudFraction),
      wind10MPerS: column(({ wind10MPerS }) => wind10MPerS),
      globalWPerM2: column(({ globalWPerM2 }) => globalWPerM2),
    },
    ...{ lowWindows: [], credits: [], notes: [] },
  };
}
