import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearDayLightMJPerM2 } from '../../../rules/index.ts';
import { between } from '../sun/arbitrary-places.ts';

const LEVEL = { kind: 'flat', tiltDeg: 0, azimuthDeg: 0 } as const;
const tilt = (tiltDeg: number, azimuthDeg: number) => ({ kind: 'tilt', tiltDeg, azimuthDeg }) as const;
const MIDWINTER = new Date('2025-12-21T12:00:00Z');

describe('light of a clear day on a cover', () => {
  // Check value printed with the physics page, section 3: 8.7 MJ on 21 December at 40° N, on level ground.
  test('on level ground is the day sum of the specification', () => {
    expect(clearDayLightMJPerM2({ latitudeDeg: 40, longitudeDeg: 0 }, LEVEL, MIDWINTER)).toBeCloseTo(8.7, 0);
  });

  test('is more on a light that leans to the winter sun, the steeper the more, and less on one that leans away', () => {
    fc.assert(
      fc.property(between(30, 50), between(3, 25), between(2, 20), (latitudeDeg, tiltDeg, more) => {
        const site = { latitudeDeg, longitudeDeg: 0 };
        const on = (deg: number, facing: number) => clearDayLightMJPerM2(site, tilt(deg, facing), MIDWINTER);
        expect(on(tiltDeg + more, 180)).toBeGreaterThan(on(tiltDeg, 180));
        expect(on(tiltDeg, 0)).toBeLessThan(clearDayLightMJPerM2(site, LEVEL, MIDWINTER));
      }),
      { numRuns: 30 },
    );
  });

  test('is less behind an obstacle', () => {
    const on = (horizonDeg: readonly number[]) =>
      clearDayLightMJPerM2({ latitudeDeg: 43, longitudeDeg: 0, horizonDeg }, tilt(5, 180), MIDWINTER);
    expect(on([30])).toBeLessThan(on([10]));
    expect(on([10])).toBeLessThan(on([]));
  });
});
