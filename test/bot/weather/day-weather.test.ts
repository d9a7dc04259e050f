import { describe, expect, test } from 'vitest';
import { dayWeather } from '../../../bot/weather/day-weather.ts';
import { dayFrom } from '../../../rules/index.ts';
import { even, forecastOf } from '../forecast/forecasts.ts';

const NOW = new Date('2026-01-20T20:00:00Z');
/** 20 January at 43° N, 76° W: from 12:26 to 22:02 UTC. */
const found = dayFrom(new Date('2026-01-20T15:00:00Z'), 43, -76);
if (found === undefined) throw new Error('the sun rises there');
const DAY = found;

describe('the weather of a day', () => {
  test('goes back as far as the forecast does, and on to sunset', () => {
    const { series } = dayWeather(forecastOf({ screenC: even(60, 1) }, '2026-01-19T00:00:00Z'), DAY, NOW);
    expect(series.first.toISOString()).toBe('2026-01-19T00:00:00.000Z');
    const last = series.first.getTime() + (series.screenC.length - 1) * 3_600_000;
    expect(last).toBeGreaterThanOrEqual(DAY.sunset.getTime());
    expect(last).toBeLessThan(DAY.sunset.getTime() + 3_600_000);
  });

  test('may begin now, with nothing known of the night', () => {
    const { series } = dayWeather(forecastOf({ screenC: even(24, 1) }, '2026-01-20T20:00:00Z'), DAY, NOW);
    expect(series.first).toEqual(NOW);
  });

  test('names what had to be assumed', () => {
    const { notes } = dayWeather(forecastOf({ screenC: even(60, 1) }, '2026-01-19T00:00:00Z'), DAY, NOW);
    expect(notes.map(({ code }) => code)).toContain('cloud-assumed-clear');
  });

  test('a forecast that ends before sunset cannot carry it', () => {
    const forecast = forecastOf({ screenC: even(30, 1) }, '2026-01-19T12:00:00Z');
    expect(() => dayWeather(forecast, DAY, NOW)).toThrow('does not reach that day');
  });

  test('nor can one with a gap of more than six hours in that day', () => {
    const screenC = [...even(37, 1), ...new Array<undefined>(9).fill(undefined), ...even(10, 1)];
    const tomorrow = dayFrom(new Date('2026-01-21T15:00:00Z'), 43, -76);
    expect(() => dayWeather(forecastOf({ screenC }, '2026-01-20T00:00:00Z'), tomorrow ?? DAY, NOW)).toThrow('gap');
  });

  test('an old forecast is refused', () => {
    const later = new Date(NOW.getTime() + 20 * 3_600_000);
    expect(() => dayWeather(forecastOf({ screenC: even(60, 1) }, '2026-01-19T00:00:00Z'), DAY, later)).toThrow(
      /18 hours/,
    );
  });
});
