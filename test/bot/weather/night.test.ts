import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bridged } from '../../../bot/forecast/bridged.ts';
import type { ForecastColumns } from '../../../bot/forecast/forecast.ts';
import { NightForecastError } from '../../../bot/forecast/forecast-error.ts';
import { nightLowC, serviceLowC } from '../../../bot/forecast/night-low.ts';
import { nightWeather } from '../../../bot/weather/night.ts';
import { preparedWeather } from '../../../rules/index.ts';
import { FIXTURE_NIGHT, FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { coolingNight, even, forecastOf, hourOf } from '../forecast/forecasts.ts';

const FULL: ForecastColumns = {
  screenC: coolingNight(),
  dewPointC: even(40, -8),
  cloudFraction: even(40, 0.3),
  wind10MPerS: even(40, 2),
};
const window = (from: string, to: string, lowC: number) => ({ from: new Date(from), to: new Date(to), lowC });
const codeOf = (error: unknown) => (error instanceof NightForecastError ? error.code : error);
function refusal(...ask: Parameters<typeof nightWeather>): unknown {
  try {
    nightWeather(...ask);
    return undefined;
  } catch (error) {
    return codeOf(error);
  }
}

it('hands on what the service told, from its first hour to six hours after sunrise, with nothing assumed', () => {
  const { series, notes, spinUpH } = nightWeather(forecastOf(FULL), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(series.first).toEqual(new Date('2026-01-20T12:00:00Z'));
  expect(series.screenC).toEqual(FULL.screenC?.slice(0, 33));
  expect(series.cloudFraction).toHaveLength(33);
  expect(notes).toEqual([]);
  expect(spinUpH).toBeCloseTo(11.42, 2);
});

it('says what the night brings', () => {
  const rain = even(40, 0).map((_, i) => (i >= 7 && i <= 8 ? 2 : 0));
  const columns = {
    ...FULL,
    gustMPerS: even(40, 5).map((v, i) => (i === 20 ? 14 : v)),
    precipitationMm: rain,
    newSnowM: even(40, 0.001),
    snowDepthM: even(40, 0.05),
  };
  const { summary } = nightWeather(forecastOf(columns), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(summary).toMatchObject({
    lowC: -6,
    lowAt: new Date('2026-01-21T13:00:00Z'),
    wind10MPerS: 2,
    gustMaxMPerS: 14,
    precipitationMm: 0,
    rainBeforeFreezeMm: 4,
    snowDepthM: 0.05,
  });
  expect(summary.cloudFraction).toBeCloseTo(0.3, 9);
  expect(summary.newSnowM).toBeCloseTo(0.016, 9);
});

it('says nothing of what the service did not tell', () => {
  const { summary } = nightWeather(forecastOf(FULL), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(Object.keys(summary).sort()).toEqual(['cloudFraction', 'lowAt', 'lowC', 'wind10MPerS']);
});

it('takes the cold side where the service is silent, and says for how many hours', () => {
  const { series, notes } = nightWeather(forecastOf({ screenC: coolingNight() }), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(notes).toEqual([
    { code: 'dew-point-assumed', hours: 33 },
    { code: 'cloud-assumed-clear', hours: 33 },
    { code: 'wind-assumed-calm', hours: 33 },
  ]);
  expect(series.dewPointC[4]).toBeCloseTo((series.screenC[4] ?? 0) - 3, 9);
  expect(series.cloudFraction).toEqual(even(33, 0));
  expect(series.wind10MPerS).toEqual(even(33, 1));
  expect('globalWPerM2' in series).toBe(false);
});

it('finds the dew point from humidity, and says so', () => {
  const { dewPointC: _, ...dry } = FULL;
  const { series, notes } = nightWeather(
    forecastOf({ ...dry, humidityFraction: even(40, 1) }),
    FIXTURE_NIGHT,
    FIXTURE_NOW,
  );
  expect(notes).toEqual([{ code: 'dew-point-from-humidity', hours: 33 }]);
  expect(series.dewPointC[10]).toBeCloseTo(series.screenC[10] ?? 0, 6);
});

it('draws straight lines over small gaps and counts the hours', () => {
  const cloudFraction = even(40, 0.2).map((value, i) => (i === 10 || i === 11 ? undefined : i > 11 ? 0.8 : value));
  const { series, notes } = nightWeather(forecastOf({ ...FULL, cloudFraction }), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(series.cloudFraction.slice(9, 13).map((value) => Number(value.toFixed(2)))).toEqual([0.2, 0.4, 0.6, 0.8]);
  expect(notes).toEqual([{ code: 'gaps-filled', hours: 2 }]);
});

it('takes a long silence about cloud as a clear sky, not as the cloud before and after', () => {
  const cloudFraction = even(40, 1).map((value, i) => (i > 10 && i < 20 ? undefined : value));
  const { series, notes } = nightWeather(forecastOf({ ...FULL, cloudFraction }), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(series.cloudFraction.slice(11, 20)).toEqual(even(9, 0));
  expect(notes).toEqual([{ code: 'cloud-assumed-clear', hours: 9 }]);
});

it('uses radiation only where it covers all hours', () => {
  const whole = nightWeather(forecastOf({ ...FULL, globalWPerM2: even(40, 10) }), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(whole.series.globalWPerM2).toEqual(even(33, 10));
  const part = even(40, 10).map((value, i) => (i > 15 && i < 20 ? undefined : value));
  expect(
    nightWeather(forecastOf({ ...FULL, globalWPerM2: part }), FIXTURE_NIGHT, FIXTURE_NOW).series.globalWPerM2,
  ).toBeUndefined();
});

it("lowers the night to the service's own low, fading in the evening and out in the morning", () => {
  const lowWindows = [window('2026-01-21T01:00:00Z', '2026-01-21T15:00:00Z', -8)];
  const plain = nightWeather(forecastOf(FULL), FIXTURE_NIGHT, FIXTURE_NOW).series.screenC;
  const { series, summary, notes } = nightWeather(
    forecastOf(FULL, undefined, { lowWindows }),
    FIXTURE_NIGHT,
    FIXTURE_NOW,
  );
  expect(notes).toEqual([{ code: 'lowered-to-service-low', byK: 2 }]);
  expect(summary).toMatchObject({ lowC: -8, lowAt: new Date('2026-01-21T13:00:00Z') });
  const shift = series.screenC.map((value, i) => (plain[i] ?? 0) - value);
  expect(shift.slice(0, hourOf(series, '2026-01-20T23:00:00Z'))).toEqual(even(11, 0));
  for (let i = 11; i < 13; i += 1) expect(shift[i]).toBeLessThan(shift[i + 1] ?? 0);
  expect(shift[hourOf(series, '2026-01-21T06:00:00Z')]).toBe(2);
  expect(shift[hourOf(series, '2026-01-21T15:00:00Z')]).toBeGreaterThan(0);
  expect(shift[hourOf(series, '2026-01-21T18:00:00Z')]).toBe(0);
});

it('keeps its hours where the service names a milder low', () => {
  const lowWindows = [window('2026-01-21T01:00:00Z', '2026-01-21T15:00:00Z', -4)];
  expect(nightWeather(forecastOf(FULL, undefined, { lowWindows }), FIXTURE_NIGHT, FIXTURE_NOW).notes).toEqual([]);
});

it('counts a window that lies mostly in the night or holds all of it, and no other', () => {
  const low = (from: string, to: string) => serviceLowC([window(from, to, -9)], FIXTURE_NIGHT);
  expect(low('2026-01-21T01:00:00Z', '2026-01-21T15:00:00Z')).toBe(-9);
  expect(low('2026-01-20T12:00:00Z', '2026-01-22T12:00:00Z')).toBe(-9);
  expect(low('2026-01-20T13:00:00Z', '2026-01-20T18:00:00Z')).toBeUndefined();
  expect(low('2026-01-20T18:00:00Z', '2026-01-21T00:00:00Z')).toBeUndefined();
  expect(low('2026-01-21T12:00:00Z', '2026-01-21T18:00:00Z')).toBeUndefined();
  expect(low('2026-01-21T18:00:00Z', '2026-01-22T00:00:00Z')).toBeUndefined();
});

it('finds the dawn low that six-hourly steps miss in the window beside them', () => {
  const screenC = even(43, 0).map((_, i) => (i % 6 === 0 ? [2, -2, -5, -4, 3, 1, -3, -2][i / 6] : undefined));
  const lowWindows = [window('2026-01-21T06:00:00Z', '2026-01-21T12:00:00Z', -8.5)];
  const { summary, notes } = nightWeather(
    forecastOf({ ...FULL, screenC }, undefined, { lowWindows }),
    FIXTURE_NIGHT,
    FIXTURE_NOW,
  );
  expect(summary.lowC).toBe(-8.5);
  expect(notes.map(({ code }) => code)).toEqual(['six-hourly-steps', 'lowered-to-service-low']);
});

it('agrees with the low that is used to compare services', () => {
  const lowWindows = [window('2026-01-21T01:00:00Z', '2026-01-21T15:00:00Z', -7)];
  const forecast = forecastOf(FULL, undefined, { lowWindows });
  expect(nightLowC(forecast, FIXTURE_NIGHT)).toBe(nightWeather(forecast, FIXTURE_NIGHT, FIXTURE_NOW).summary.lowC);
  expect(nightLowC(forecastOf({ screenC: coolingNight(20) }), FIXTURE_NIGHT)).toBeUndefined();
});

it('refuses a forecast that ends before sunrise, and says when it ends', () => {
  const short = forecastOf({ screenC: coolingNight(20) });
  expect(() => nightWeather(short, FIXTURE_NIGHT, FIXTURE_NOW)).toThrow(
    'The forecast ends at 2026-01-21 07:00 UTC, before sunrise at 2026-01-21 13:45 UTC; ask for an earlier night.',
  );
  expect(refusal(short, FIXTURE_NIGHT, FIXTURE_NOW)).toBe('ends-before-sunrise');
});

it('carries on when it ends between sunrise and the wanted end, and says how much is missing', () => {
  const { series, notes } = nightWeather(
    forecastOf({ ...FULL, screenC: coolingNight(27) }),
    FIXTURE_NIGHT,
    FIXTURE_NOW,
  );
  expect(series.screenC).toHaveLength(27);
  expect(notes).toEqual([{ code: 'ends-early', missingH: 6 }]);
});

it('refuses a forecast more than 18 hours old and warns above 12', () => {
  const at = (hours: number) => new Date(FIXTURE_NOW.getTime() - hours * 3_600_000);
  expect(refusal(forecastOf(FULL, undefined, { updatedAt: at(18.1) }), FIXTURE_NIGHT, FIXTURE_NOW)).toBe('stale');
  expect(nightWeather(forecastOf(FULL, undefined, { updatedAt: at(13) }), FIXTURE_NIGHT, FIXTURE_NOW).notes).toEqual([
    { code: 'old-forecast', ageH: 13 },
  ]);
});

it('refuses a gap too long to bridge in the night itself', () => {
  const screenC = coolingNight().map((value, i) => (i > 14 && i < 24 ? undefined : value));
  expect(refusal(forecastOf({ screenC }), FIXTURE_NIGHT, FIXTURE_NOW)).toBe('gap');
});

it('starts after a gap that lies before the night', () => {
  const screenC = coolingNight().map((value, i) => (i > 0 && i < 8 ? undefined : value));
  const { series, spinUpH } = nightWeather(forecastOf({ ...FULL, screenC }), FIXTURE_NIGHT, FIXTURE_NOW);
  expect(series.first).toEqual(new Date('2026-01-20T20:00:00Z'));
  expect(spinUpH).toBeCloseTo(3.42, 2);
});

it('works in the middle of the night with the hours still to come, but not for a night that began unseen', () => {
  const late = forecastOf({ screenC: coolingNight(40).slice(16) }, '2026-01-21T04:00:00Z');
  const { series, spinUpH } = nightWeather(late, FIXTURE_NIGHT, new Date('2026-01-21T04:10:00Z'));
  expect(series.first).toEqual(new Date('2026-01-21T04:00:00Z'));
  expect(spinUpH).toBe(0);
  expect(refusal(late, FIXTURE_NIGHT, FIXTURE_NOW)).toBe('begins-after-sunset');
});

it('refuses an empty forecast, and a night the wrong way round', () => {
  expect(refusal(forecastOf({ screenC: even(40, 0).map(() => undefined) }), FIXTURE_NIGHT, FIXTURE_NOW)).toBe(
    'no-temperature',
  );
  const backwards = { sunset: FIXTURE_NIGHT.sunrise, sunrise: FIXTURE_NIGHT.sunset };
  expect(() => nightWeather(forecastOf(FULL), backwards, FIXTURE_NOW)).toThrow(RangeError);
});

const cell = (low: number, high: number) =>
  fc.oneof(
    { weight: 5, arbitrary: fc.double({ min: low, max: high, noNaN: true }) },
    { weight: 1, arbitrary: fc.constant(undefined) },
  );
const column = (low: number, high: number) => fc.array(cell(low, high), { minLength: 48, maxLength: 48 });

it('bridges within the bounds of the neighbours and never touches what was told', () => {
  fc.assert(
    fc.property(fc.array(cell(-30, 30), { maxLength: 60 }), fc.integer({ min: 1, max: 8 }), (values, longestH) => {
      const { values: filled, bridgedH } = bridged(values, longestH);
      for (const [i, value] of filled.entries()) {
        if (values[i] !== undefined) expect(value).toBe(values[i]);
        else if (value !== undefined) {
          const left = values.slice(0, i).findLast((one) => one !== undefined) ?? Number.NaN;
          const right = values.slice(i).find((one) => one !== undefined) ?? Number.NaN;
          expect(value).toBeGreaterThanOrEqual(Math.min(left, right) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(left, right) + 1e-9);
          expect(bridgedH[i]).toBeLessThanOrEqual(longestH);
        }
      }
    }),
  );
});

it('gives the model complete weather that it accepts, or refuses the night, whatever the service sent', () => {
  const columns = fc.record({
    screenC: column(-70, 60),
    dewPointC: fc.option(column(-70, 60), { nil: undefined }),
    humidityFraction: fc.option(column(0.01, 1), { nil: undefined }),
    cloudFraction: fc.option(column(0, 1), { nil: undefined }),
    wind10MPerS: fc.option(column(0, 75), { nil: undefined }),
    globalWPerM2: fc.option(column(0, 1500), { nil: undefined }),
  });
  const windows = fc.array(
    fc.tuple(
      fc.integer({ min: -5, max: 40 }),
      fc.integer({ min: 1, max: 20 }),
      fc.double({ min: -70, max: 60, noNaN: true }),
    ),
    { maxLength: 4 },
  );
  fc.assert(
    fc.property(columns, windows, (sent, lows) => {
      const told = Object.fromEntries(
        Object.entries(sent).filter(([, values]) => values !== undefined),
      ) as ForecastColumns;
      const startMs = Date.parse('2026-01-20T12:00:00Z');
      const lowWindows = lows.map(([from, length, lowC]) => ({
        from: new Date(startMs + from * 3_600_000),
        to: new Date(startMs + (from + length) * 3_600_000),
        lowC,
      }));
      const forecast = forecastOf(told, undefined, { lowWindows });
      try {
        const { series, summary } = nightWeather(forecast, FIXTURE_NIGHT, FIXTURE_NOW);
        const end = new Date(series.first.getTime() + (series.screenC.length - 1) * 3_600_000);
        expect(() => preparedWeather({ latitudeDeg: 41, longitudeDeg: -96 }, series, series.first, end)).not.toThrow();
        expect(summary.lowC).toBe(nightLowC(forecast, FIXTURE_NIGHT));
        for (const [i, dew] of series.dewPointC.entries())
          expect(dew).toBeLessThanOrEqual(series.screenC[i] ?? Number.NaN);
      } catch (error) {
        if (!(error instanceof NightForecastError)) throw error;
      }
    }),
  );
});
