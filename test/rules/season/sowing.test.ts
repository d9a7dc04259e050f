import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { darkWeeks, lastSowing, pickingSizeAt } from '../../../rules/index.ts';
import { between, thisCentury } from '../sun/arbitrary-places.ts';

const DAY_MS = 86_400_000;
const maturityDays = fc.integer({ min: 20, max: 120 });
const eitherHemisphere = fc.constantFrom(1, -1);
const APRIL = new Date('2026-04-15T00:00Z');

describe('last sowing', () => {
  test('is earlier the farther from the equator', () => {
    fc.assert(
      fc.property(maturityDays, between(34, 63), between(0.5, 3), eitherHemisphere, (days, nearer, farther, sign) => {
        const near = lastSowing(days, APRIL, nearer * sign, 0);
        const far = lastSowing(days, APRIL, (nearer + farther) * sign, 0);
        expect(far?.sowBy.getTime()).toBeLessThanOrEqual(near?.sowBy.getTime() ?? 0);
      }),
    );
    expect(lastSowing(50, APRIL, 52, 0)?.sowBy.getTime()).toBeLessThan(
      lastSowing(50, APRIL, 35, 0)?.sowBy.getTime() ?? 0,
    );
  });

  test('is earlier for a slower crop', () => {
    fc.assert(
      fc.property(maturityDays, fc.integer({ min: 1, max: 60 }), between(34, 65), (days, more, latitudeDeg) => {
        const quick = lastSowing(days, APRIL, latitudeDeg, 0);
        const slow = lastSowing(days + more, APRIL, latitudeDeg, 0);
        expect(slow?.sowBy.getTime()).toBeLessThan(quick?.sowBy.getTime() ?? 0);
      }),
    );
  });

  test('is just in time: grown by the first dark day when sown then, too late a few days after', () => {
    fc.assert(
      fc.property(thisCentury, maturityDays, between(34, 65), eitherHemisphere, (at, days, distance, sign) => {
        const latitudeDeg = distance * sign;
        const sowing = lastSowing(days, at, latitudeDeg, 0);
        if (sowing === undefined) throw new Error('no sowing');
        expect(sowing.readyBy).toEqual(darkWeeks(at, latitudeDeg, 0)?.firstDay);
        const ready = pickingSizeAt(days, sowing.sowBy, latitudeDeg).getTime();
        expect(ready).toBeLessThanOrEqual(sowing.readyBy.getTime());
        expect(
          pickingSizeAt(days, new Date(sowing.sowBy.getTime() + 3 * DAY_MS), latitudeDeg).getTime(),
        ).toBeGreaterThan(sowing.readyBy.getTime());
      }),
    );
  });

  test('never takes fewer days than the packet says', () => {
    fc.assert(
      fc.property(maturityDays, between(34, 65), (days, latitudeDeg) => {
        expect(lastSowing(days, APRIL, latitudeDeg, 0)?.growingDays).toBeGreaterThan(days);
      }),
    );
  });

  test('is half a year apart on the two hemispheres', () => {
    const north = lastSowing(50, APRIL, 43, 0)?.sowBy;
    const south = lastSowing(50, APRIL, -43, 0)?.sowBy;
    const apartDays = ((north?.getTime() ?? 0) - (south?.getTime() ?? 0)) / DAY_MS;
    // April 2026 precedes both: the southern sowing of that winter lies in February, half a year before the northern one.
    expect(Math.abs(apartDays - 183)).toBeLessThan(7);
  });

  test('does not exist where no day is under ten hours', () => {
    expect(lastSowing(50, APRIL, 20, 0)).toBeUndefined();
  });

  test('refuses a crop that never grows', () => {
    expect(() => lastSowing(0, APRIL, 43, 0)).toThrow('maturityDays 0 is outside 1…270');
    expect(() => pickingSizeAt(Number.NaN, APRIL, 43)).toThrow(RangeError);
  });
});

describe('picking size', () => {
  test('comes later for a later sowing', () => {
    fc.assert(
      fc.property(thisCentury, maturityDays, between(-65, 65), (sown, days, latitudeDeg) => {
        const sooner = pickingSizeAt(days, sown, latitudeDeg).getTime();
        const later = pickingSizeAt(days, new Date(sown.getTime() + DAY_MS), latitudeDeg).getTime();
        expect(later).toBeGreaterThanOrEqual(sooner);
      }),
    );
  });
});
