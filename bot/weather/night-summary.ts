import { MS_PER_H, type WeatherSeries } from '../../rules/index.ts';
import type { ForecastNight, HourlyColumn, HourlyForecast } from '../forecast/forecast.ts';
import { lowSpanMs } from '../forecast/night-low.ts';
import type { NightSummary } from './night-weather.ts';

const FREEZING_C = 0;
/** Rain of the late afternoon still wets the leaves and covers when it freezes. */
const RAIN_FROM_BEFORE_SUNSET_H = 6;

/** What a sentence about the night needs. The series has been completed and lowered already. */
export function nightSummary(forecast: HourlyForecast, series: WeatherSeries, night: ForecastNight): NightSummary {
  const firstMs = series.first.getTime();
  const { fromMs, toMs } = lowSpanMs(night);
  const from = Math.max(0, Math.ceil((fromMs - firstMs) / MS_PER_H));
  const to = Math.min(series.screenC.length - 1, Math.floor((toMs - firstMs) / MS_PER_H));
  const lowC = Math.min(...series.screenC.slice(from, to + 1));
  const low = series.screenC.indexOf(lowC, from);
  const told = (column: HourlyColumn | undefined) =>
    heard(column, forecast, firstMs + from * MS_PER_H, firstMs + to * MS_PER_H);
  const { gustMPerS, precipitationMm, newSnowM, snowDepthM } = forecast.columns;
  return {
    lowC,
    lowAt: new Date(firstMs + low * MS_PER_H),
    cloudFraction: meanAround(series.cloudFraction, low),
    wind10MPerS: meanAround(series.wind10MPerS, low),
    ...present('gustMaxMPerS', largest(told(gustMPerS))),
    ...present('precipitationMm', sum(told(precipitationMm))),
    ...present('rainBeforeFreezeMm', rainBeforeFreezeMm(forecast, series, night, to)),
    ...present('newSnowM', sum(told(newSnowM))),
    ...present('snowDepthM', largest(told(snowDepthM))),
    ...present('leastSnowDepthM', smallest(told(snowDepthM))),
  };
}

function rainBeforeFreezeMm(
  forecast: HourlyForecast,
  series: WeatherSeries,
  night: ForecastNight,
  to: number,
): number | undefined {
  const firstMs = series.first.getTime();
  const earliestMs = night.sunset.getTime() - RAIN_FROM_BEFORE_SUNSET_H * MS_PER_H;
  const earliest = Math.max(0, Math.ceil((earliestMs - firstMs) / MS_PER_H));
  const frost = series.screenC.findIndex((value, i) => i >= earliest && i <= to && value <= FREEZING_C);
  if (frost < 0) return undefined;
  const before = heard(
    forecast.columns.precipitationMm,
    forecast,
    firstMs + earliest * MS_PER_H,
    firstMs + (frost - 1) * MS_PER_H,
  );
  return frost === earliest ? 0 : sum(before);
}

/** What was told for the hours from one instant to another, both included. */
function heard(column: HourlyColumn | undefined, forecast: HourlyForecast, fromMs: number, toMs: number): number[] {
  const first = forecast.first.getTime();
  const from = Math.round((fromMs - first) / MS_PER_H);
  const to = Math.round((toMs - first) / MS_PER_H);
  return (column ?? []).slice(from, to + 1).filter((value) => value !== undefined);
}

function meanAround(values: readonly number[], at: number): number {
  const near = values.slice(Math.max(0, at - 1), at + 2);
  return near.reduce((total, value) => total + value, 0) / near.length;
}

function sum(values: readonly number[]): number | undefined {
  return values.length > 0 ? values.reduce((total, value) => total + value, 0) : undefined;
}

function largest(values: readonly number[]): number | undefined {
  return values.length > 0 ? Math.max(...values) : undefined;
}

function smallest(values: readonly number[]): number | undefined {
  return values.length > 0 ? Math.min(...values) : undefined;
}

function present<Name extends string>(name: Name, value: number | undefined): { readonly [name in Name]?: number } {
  return value === undefined ? {} : ({ [name]: value } as { readonly [name in Name]?: number });
}
