import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assumedClimate, climateGroundC } from '../../../rules/index.ts';

const anyDay = fc.date({ min: new Date('1990-01-01Z'), max: new Date('2050-01-01Z'), noInvalidDate: true });
const anyLatitude = fc.double({ min: -70, max: 70, noNaN: true });

describe('the ground of a climate', () => {
  test('at 0.8 m and 40° N is the reference night’s 9 °C on the first of December', () => {
    expect(climateGroundC(assumedClimate(40, 0), new Date('2025-12-01T12:00Z'), 0.8)).toBeCloseTo(9, 0);
  });

  test('is warmest three weeks after the air at 0.8 m', () => {
    const climate = assumedClimate(45, 0);
    const day = (number: number) => new Date(Date.UTC(2025, 0, number));
    const warmest = (depthM: number) =>
      Array.from({ length: 365 }, (_, index) => index + 1).reduce((best, number) =>
        climateGroundC(climate, day(number), depthM) > climateGroundC(climate, day(best), depthM) ? number : best,
      );
    expect(warmest(0)).toBe(201);
    expect(warmest(0.8) - warmest(0)).toBeGreaterThanOrEqual(20);
    expect(warmest(0.8) - warmest(0)).toBeLessThanOrEqual(22);
  });

  test('has the same seasons half a year later in the south', () => {
    const north = climateGroundC(assumedClimate(40, 0), new Date('2025-01-15T12:00Z'), 0.1);
    const south = climateGroundC(assumedClimate(-40, 0), new Date('2025-07-16T12:00Z'), 0.1);
    expect(south).toBeCloseTo(north, 0);
  });

  test('varies less the deeper it lies, and stays within the year’s range', () => {
    fc.assert(
      fc.property(anyLatitude, anyDay, fc.double({ min: 0, max: 10, noNaN: true }), (latitudeDeg, at, depthM) => {
        const climate = assumedClimate(latitudeDeg, 0);
        const reachK = climate.halfRangeK * Math.exp(-depthM / 2.2);
        expect(Math.abs(climateGroundC(climate, at, depthM) - climate.meanC)).toBeLessThanOrEqual(reachK + 1e-9);
      }),
    );
  });
});
