import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CoverKey, coveredSurplusK, soilProfile, soilStart } from '../../../rules/index.ts';

const SITE = { latitudeDeg: 40, elevationM: 0 };
const AT = new Date('2025-12-01T22:00Z');

describe('soil to begin a night with', () => {
  test('is the week’s mean air and one kelvin, off by 1.5 K', () => {
    expect(soilStart({ site: SITE, at: AT, weekMeanC: 5 })).toMatchObject({ soil10CmC: 6, sdK: 1.5, measured: false });
  });

  test('is what the thermometer says where there is one, and surer', () => {
    const start = soilStart({ site: SITE, at: AT, weekMeanC: 5, measured10CmC: 9 });
    expect(start).toMatchObject({ soil10CmC: 9, measured: true });
    expect(start.sdK).toBeLessThan(1.5);
  });

  test.each<[CoverKey[], number]>([
    [[], -2],
    [['hoops', 'jugs'], -2],
    [['row-cover-heavy', 'hoops'], -1],
    [['straw'], -1],
    [['low-tunnel'], 0],
    [['cold-frame'], 0],
    [['high-tunnel'], 0],
    [['row-cover-light', 'row-cover-light', 'hoops'], 0],
    [['blanket', 'cold-frame'], 0],
  ])('under %j is not guessed below %d °C, at 10 cm and further down', (coveredForWeeks, coldestC) => {
    const { soil10CmC, deepC } = soilStart({
      site: { latitudeDeg: 60, elevationM: 900 },
      at: AT,
      weekMeanC: -30,
      coveredForWeeks,
    });
    expect(soil10CmC).toBe(coldestC);
    expect(deepC).toBeGreaterThanOrEqual(coldestC);
  });

  test.each<[CoverKey[], number]>([
    [[], 0],
    [['row-cover', 'hoops'], 1],
    [['low-tunnel-perforated'], 2.5],
    [['low-tunnel-perforated', 'low-tunnel-perforated'], 4.5],
    [['low-tunnel'], 4],
    [['cold-frame-twin-wall'], 4],
    [['high-tunnel'], 4],
    [['high-tunnel', 'row-cover', 'hoops'], 5],
    [['blanket'], 0],
    [['straw'], 0],
  ])('weeks of full sun under %j add %d K', (keys, surplusK) => {
    expect(coveredSurplusK(keys)).toBe(surplusK);
  });

  test('little sun brings little surplus, and more than 15 MJ no more than all of it', () => {
    const under = (dailySunMJPerM2: number) =>
      soilStart({ site: SITE, at: AT, weekMeanC: 5, coveredForWeeks: ['low-tunnel'], dailySunMJPerM2 }).soil10CmC;
    expect(under(0)).toBe(6);
    expect(under(7.5)).toBe(8);
    expect(under(30)).toBe(10);
  });

  test('where nobody measured the sun, December brings half of the surplus and March most of it', () => {
    const surplusK = (at: string) =>
      soilStart({ site: SITE, at: new Date(at), weekMeanC: 5, coveredForWeeks: ['low-tunnel'] }).soil10CmC - 6;
    expect(surplusK('2025-12-15T22:00Z')).toBeGreaterThan(1.5);
    expect(surplusK('2025-12-15T22:00Z')).toBeLessThan(2.5);
    expect(surplusK('2026-03-21T22:00Z')).toBeGreaterThan(3);
  });

  test('runs evenly from 10 cm to the deep value at 0.8 m', () => {
    expect(soilProfile(6, 9)).toEqual([
      { depthM: 0, soilC: 6 },
      { depthM: 0.1, soilC: 6 },
      { depthM: 0.8, soilC: 9 },
    ]);
  });

  test('never falls with the air of the week', () => {
    const week = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(week, week, (one, other) => {
        const [cold, warm] = [Math.min(one, other), Math.max(one, other)];
        const soilC = (weekMeanC: number) => soilStart({ site: SITE, at: AT, weekMeanC }).soil10CmC;
        expect(soilC(cold)).toBeLessThanOrEqual(soilC(warm));
      }),
    );
  });
});
