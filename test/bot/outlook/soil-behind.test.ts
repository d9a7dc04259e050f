import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gardenSite } from '../../../bot/outlook/night-outlook.ts';
import { soilBehind } from '../../../bot/outlook/soil-behind.ts';
import { MS_PER_H, type WeatherSeries } from '../../../rules/index.ts';
import { PLAIN_GARDEN } from './day-garden.ts';

const NOW = new Date('2026-01-20T15:00:00Z');
const SITE = gardenSite(PLAIN_GARDEN, 100);

/** Hours of one weather behind now, and two days of it ahead. */
function behind(pastH: number, screenC: number, cloudFraction = 0): WeatherSeries {
  const hours = pastH + 48;
  const even = (value: number) => new Array<number>(hours).fill(value);
  return {
    first: new Date(NOW.getTime() - pastH * MS_PER_H),
    stepH: 1,
    screenC: even(screenC),
    dewPointC: even(screenC - 3),
    cloudFraction: even(cloudFraction),
    wind10MPerS: even(2),
  };
}

const soilC = (series: WeatherSeries) => soilBehind(SITE, series, NOW, NOW).under([]).soil10CmC;

describe('the soil behind a night', () => {
  test('is a degree above the mean air of the week, as the model has it', () => {
    // Section 11 of the model specification: a bare bed without its own surplus.
    expect(soilC(behind(200, 4))).toBeCloseTo(5, 6);
  });

  test('remembers seven days and no more', () => {
    const series = behind(240, 4);
    const screenC = series.screenC.map((value, hour) => (hour < 72 ? value - 15 : value));
    expect(soilC({ ...series, screenC })).toBeCloseTo(soilC(series), 6);
  });

  test('is never colder for a warmer week', () => {
    const degrees = fc.double({ min: -15, max: 15, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200 }),
        degrees,
        fc.double({ min: 0, max: 8, noNaN: true }),
        (pastH, airC, byK) => {
          expect(soilC(behind(pastH, airC + byK))).toBeGreaterThanOrEqual(soilC(behind(pastH, airC)) - 1e-9);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('is owned to be a guess with less than a day of weather behind it', () => {
    const sdK = (pastH: number) => soilBehind(SITE, behind(pastH, 4), NOW, NOW).under([]).sdK;
    expect(sdK(23)).toBeGreaterThan(sdK(24));
    expect(sdK(24)).toBe(sdK(168));
  });

  test('is warmer under film that has lain in the sun', () => {
    const { under } = soilBehind(SITE, behind(200, 4), NOW, NOW);
    expect(under(['low-tunnel']).soil10CmC).toBeGreaterThan(under([]).soil10CmC);
  });

  test('counts sunless days back from now', () => {
    const { sunlessDays } = soilBehind(SITE, behind(120, 4, 1), NOW, NOW);
    expect(sunlessDays).toBeGreaterThanOrEqual(4);
    expect(soilBehind(SITE, behind(120, 4, 0), NOW, NOW).sunlessDays).toBe(0);
  });
});
