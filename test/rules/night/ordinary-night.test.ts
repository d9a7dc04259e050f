import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NIGHT_SKIES, NIGHT_WINDS, ordinaryNight, sunTimes } from '../../../rules/index.ts';

const anyLow = fc.double({ min: -45, max: 25, noNaN: true });
const anyOptions = fc.record({
  sky: fc.constantFrom(...NIGHT_SKIES),
  wind: fc.constantFrom(...NIGHT_WINDS),
  snowLying: fc.boolean(),
  site: fc.record({
    latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
    longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  }),
  date: fc.date({ min: new Date('1990-01-01Z'), max: new Date('2045-01-01Z'), noInvalidDate: true }),
});

describe('the ordinary night of a low', () => {
  test('is clear with 2 m/s and a dew point 3 K below, on the first of December at 40° N', () => {
    const { weather, site, assumed } = ordinaryNight(-10);
    expect(site).toMatchObject({ latitudeDeg: 40, shelterFraction: 0.8, inversionK: 3 });
    expect(assumed).toMatchObject({ sky: 'clear', wind: 'light', dayRangeK: 12, windMPerS: 2, seasonGiven: false });
    expect(assumed.night.toISOString().slice(0, 10)).toBe('2025-12-01');
    expect(Math.min(...weather.screenC)).toBe(-10);
    expect(Math.max(...weather.screenC)).toBeCloseTo(2, 0);
    expect(new Set(weather.dewPointC)).toEqual(new Set([-13]));
    expect(new Set(weather.cloudFraction)).toEqual(new Set([0]));
    expect(new Set(weather.wind10MPerS)).toEqual(new Set([2]));
  });

  test.each([
    [-4, 6],
    [-1, 8],
    [-10, 3],
    [-12, 4],
  ])('with a low of %d °C has soil within 1.3 K of the %d °C that the model’s own cases take', (lowC, soilC) => {
    expect(Math.abs(ordinaryNight(lowC).soil.soil10CmC - soilC)).toBeLessThanOrEqual(1.3);
  });

  test('has warmer soil in October than in December, and never colder for a warmer low', () => {
    const october = { date: new Date('2025-10-20T12:00Z') };
    expect(ordinaryNight(-2, october).soil.soil10CmC).toBeGreaterThan(ordinaryNight(-2).soil.soil10CmC + 2);
    fc.assert(
      fc.property(anyLow, anyLow, (one, other) => {
        const soilC = (lowC: number) => ordinaryNight(lowC).soil.soil10CmC;
        expect(soilC(Math.min(one, other))).toBeLessThanOrEqual(soilC(Math.max(one, other)));
      }),
    );
  });

  test('asked about in July means a night of winter; in the south, the first of June', () => {
    const july = new Date('2026-07-15T12:00Z');
    expect(ordinaryNight(-10, { date: july }).assumed).toMatchObject({ seasonGiven: false });
    const south = ordinaryNight(-5, { date: new Date('2026-01-15T12:00Z'), site: { latitudeDeg: -40 } });
    expect(south.assumed.night.toISOString().slice(0, 10)).toBe('2025-06-01');
    expect(ordinaryNight(-5, { date: july, site: { latitudeDeg: -40 } }).assumed.seasonGiven).toBe(true);
  });

  test('with snow lying has soil near freezing and colder air at the ground', () => {
    const { soil, site } = ordinaryNight(-3, { snowLying: true });
    expect(soil.soil10CmC).toBeLessThanOrEqual(1.5);
    expect(site.inversionK).toBe(5);
  });

  test('takes a measured soil as it is', () => {
    expect(ordinaryNight(-3, { measured10CmC: 9 }).soil).toMatchObject({ soil10CmC: 9, measured: true });
  });

  test('spans from one sunrise over the named low to well after the next, whatever the place and day', () => {
    fc.assert(
      fc.property(anyLow, anyOptions, (lowC, options) => {
        const { weather, window, site } = ordinaryNight(lowC, options);
        const hours = weather.screenC.length - 1;
        const endMs = weather.first.getTime() + hours * 3_600_000;
        expect(Math.min(...weather.screenC)).toBeCloseTo(lowC, 9);
        expect(weather.screenC[0]).toBeCloseTo(lowC, 9);
        expect(weather.screenC[24]).toBeCloseTo(lowC, 9);
        const sun = sunTimes(weather.first, site.latitudeDeg, site.longitudeDeg);
        expect(sun.kind).toBe('rises');
        expect(window.from.getTime()).toBeGreaterThan(weather.first.getTime());
        expect(window.to.getTime()).toBeGreaterThan(window.from.getTime());
        expect(endMs - window.to.getTime()).toBeGreaterThanOrEqual(7 * 3_600_000);
      }),
    );
  });

  test('of no sensible low is refused by name', () => {
    expect(() => ordinaryNight(Number.NaN)).toThrow('lowC NaN is outside −45…25');
    expect(() => ordinaryNight(30)).toThrow('lowC 30');
  });
});
