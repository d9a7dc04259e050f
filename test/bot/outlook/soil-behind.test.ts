import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gardenSite } from '../../../bot/outlook/night-outlook.ts';
import { soilBehind } from '../../../bot/outlook/soil-behind.ts';
import { assumedClimate, MS_PER_H, usualWeekC, type WeatherSeries } from '../../../rules/index.ts';
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

const WISH = { runFrom: NOW, at: NOW, now: NOW, cloudKnown: false } as const;
/** From the week's mean alone, as where the clouds are not told. */
const soilC = (series: WeatherSeries) => soilBehind(SITE, series, WISH).under({ covers: [] }).soil10CmC;

describe('the soil behind a night', () => {
  test('is a degree above the mean air of the week, as the model has it', () => {
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
    const sdK = (pastH: number) => soilBehind(SITE, behind(pastH, 4), WISH).under({ covers: [] }).sdK;
    expect(sdK(23)).toBeGreaterThan(sdK(24));
    expect(sdK(24)).toBe(sdK(168));
  });

  test('is warmer under film that has lain in the sun', () => {
    const { under } = soilBehind(SITE, behind(200, 4), WISH);
    expect(under({ covers: ['low-tunnel'] }).soil10CmC).toBeGreaterThan(under({ covers: [] }).soil10CmC);
  });

  test('counts sunless days back from now', () => {
    const { sunlessDays } = soilBehind(SITE, behind(120, 4, 1), WISH);
    expect(sunlessDays).toBeGreaterThanOrEqual(4);
    expect(soilBehind(SITE, behind(120, 4, 0), WISH).sunlessDays).toBe(0);
  });

  test('is that of the days themselves where they and their clouds are known, and surer', () => {
    const wish = { ...WISH, cloudKnown: true };
    const under = (cloudFraction: number) =>
      soilBehind(SITE, behind(200, 4, cloudFraction), wish).under({ covers: ['cold-frame'] });
    expect(under(0).soil10CmC).toBeGreaterThan(under(1).soil10CmC + 2);
    expect(under(0).sdK).toBeLessThan(soilBehind(SITE, behind(200, 4), WISH).under({ covers: ['cold-frame'] }).sdK);
    expect(under(0).profile.length).toBeGreaterThan(10);
  });

  test('is worked out once for beds that lie alike', () => {
    const { under } = soilBehind(SITE, behind(200, 4), { ...WISH, cloudKnown: true });
    expect(under({ covers: ['low-tunnel'] })).toBe(under({ covers: ['low-tunnel'] }));
    expect(under({ covers: ['low-tunnel'] })).not.toBe(under({ covers: ['low-tunnel'], soilKind: 'sandy' }));
  });

  test('is not followed through less than two days', () => {
    const wish = { ...WISH, cloudKnown: true };
    expect(soilBehind(SITE, behind(47, 4), wish).under({ covers: [] }).sdK).toBe(1.5);
    expect(soilBehind(SITE, behind(48, 4), wish).under({ covers: [] }).sdK).toBeLessThan(1.5);
  });

  test('takes the hours that are not known as usual before such a night: as a question that names only the low', () => {
    const night = { ...WISH, at: new Date(NOW.getTime() + 7 * MS_PER_H) };
    const usual = usualWeekC(-9, night.at, assumedClimate(SITE.latitudeDeg, SITE.elevationM));
    expect(soilBehind(SITE, behind(0, -9), night).under({ covers: [] }).soil10CmC).toBeCloseTo(usual + 1, 6);
  });
});
