import { describe, expect, test } from 'vitest';
import { harmfulHours } from '../../../bot/weather/harmful-weather.ts';
import { even, forecastOf } from '../forecast/forecasts.ts';

const FIRST = '2026-01-20T12:00:00Z';
const at = (hour: number) => new Date(Date.parse(FIRST) + hour * 3_600_000);
const hoursOf = (columns: Parameters<typeof forecastOf>[0], from = 0, to = 23) =>
  harmfulHours(forecastOf(columns, FIRST), at(from), at(to));
/** A value in some hours, another in the rest. */
const within = (from: number, to: number, value: number, rest = 0) =>
  even(24, rest).map((each, i) => (i >= from && i < to ? value : each));

describe('harmful hours', () => {
  test('hold the strongest gust of the hours asked for, and when it is', () => {
    const gustMPerS = even(24, 5).map((each, i) => (i === 7 ? 21 : i === 20 ? 30 : each));
    expect(hoursOf({ screenC: even(24, 2), gustMPerS }, 0, 12)).toMatchObject({ gustMPerS: 21, gustAt: at(7) });
    expect(hoursOf({ screenC: even(24, 2), gustMPerS })).toMatchObject({ gustMPerS: 30, gustAt: at(20) });
  });

  test('weigh the snow by the water that is told with it', () => {
    const { snowfall } = hoursOf({
      screenC: even(24, -3),
      newSnowM: within(4, 8, 0.02),
      precipitationMm: within(4, 8, 1.5),
    });
    expect(snowfall?.depthM).toBeCloseTo(0.08, 9);
    expect(snowfall?.waterKgPerM2).toBeCloseTo(6, 9);
    expect(snowfall?.airC).toBeCloseTo(-3, 9);
  });

  test('take what falls in frost for snow where the service says nothing of snow', () => {
    const { snowfall, freezingRainMm } = hoursOf({ screenC: even(24, -3), precipitationMm: within(4, 8, 1) });
    expect(snowfall?.depthM).toBeCloseTo(0.04, 9);
    expect(freezingRainMm).toBeUndefined();
  });

  test('know freezing rain only where the service says that it is no snow', () => {
    const told = hoursOf({ screenC: even(24, -2), precipitationMm: within(4, 8, 1), newSnowM: even(24, 0) });
    expect(told).toMatchObject({ freezingRainMm: 4, iceAt: at(4) });
    expect(told.snowfall).toBeUndefined();
  });

  test('count the rain of the six hours before the first frost', () => {
    const screenC = even(24, 3).map((each, i) => (i < 12 ? each : -2));
    const { rainBeforeFreezeMm } = hoursOf({ screenC, precipitationMm: within(0, 12, 1), newSnowM: even(24, 0) });
    expect(rainBeforeFreezeMm).toBe(6);
  });

  test('hold nothing where nothing is told: nothing told is never none', () => {
    expect(hoursOf({ screenC: even(24, -5) })).toEqual({});
  });
});
