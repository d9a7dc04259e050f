import { MS_PER_H } from '../../rules/index.ts';
import { bridged } from './bridged.ts';
import type { ForecastNight, HourlyForecast, LowWindow } from './forecast.ts';

/** The services' longest step between two temperatures. */
export const LONGEST_STEP_H = 6;

/** Where the night's low is sought: from one hour before sunset to one hour after sunrise. */
export function lowSpanMs(night: ForecastNight): { readonly fromMs: number; readonly toMs: number } {
  return { fromMs: night.sunset.getTime() - MS_PER_H, toMs: night.sunrise.getTime() + MS_PER_H };
}

/**
 * The lowest temperature that the service itself names for the night, beside its hours.
 *
 * A window counts when at least half of it lies in the night's span, or when it holds the whole span. A window that only
 * touches the night would bring in the cold of the day before or after.
 */
export function serviceLowC(windows: readonly LowWindow[], night: ForecastNight): number | undefined {
  const { fromMs, toMs } = lowSpanMs(night);
  const lows = windows.flatMap(({ from, to, lowC }) => {
    const sharedMs = Math.min(to.getTime(), toMs) - Math.max(from.getTime(), fromMs);
    const counts = sharedMs >= (to.getTime() - from.getTime()) / 2 || sharedMs >= toMs - fromMs;
    return counts ? [lowC] : [];
  });
  return lows.length > 0 ? Math.min(...lows) : undefined;
}

/** The night's low: the lowest hour or the service's own low, whichever is colder; `undefined` when the night is not covered. */
export function nightLowC(forecast: HourlyForecast, night: ForecastNight): number | undefined {
  if (!reaches(forecast, night.sunrise)) return undefined;
  const { values } = bridged(forecast.columns.screenC ?? [], LONGEST_STEP_H);
  const { fromMs, toMs } = lowSpanMs(night);
  const firstMs = forecast.first.getTime();
  const hours = values.filter((value, i): value is number => {
    const atMs = firstMs + i * MS_PER_H;
    return value !== undefined && atMs >= fromMs && atMs <= toMs;
  });
  const named = serviceLowC(forecast.lowWindows, night);
  if (hours.length === 0) return undefined;
  return named === undefined ? Math.min(...hours) : Math.min(named, ...hours);
}

/** Do the temperatures go on until that instant? */
export function reaches(forecast: HourlyForecast, at: Date): boolean {
  const last = (forecast.columns.screenC ?? []).findLastIndex((value) => value !== undefined);
  return last >= 0 && forecast.first.getTime() + last * MS_PER_H >= at.getTime();
}
