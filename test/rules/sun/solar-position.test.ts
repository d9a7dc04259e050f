import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solarPosition } from '../../../rules/index.ts';
import { anyLatitudeDeg, anyLongitudeDeg, between, gardenLatitudeDeg, thisCentury } from './arbitrary-places.ts';

describe('solarPosition', () => {
  test('points with a vector of length one at every place and instant', () => {
    fc.assert(
      fc.property(thisCentury, anyLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const sun = solarPosition(at, latitudeDeg, longitudeDeg);
        expect(Math.hypot(sun.cosZenith, sun.east, sun.north)).toBeCloseTo(1, 9);
        expect(Math.sin((sun.elevationDeg * Math.PI) / 180)).toBeCloseTo(sun.cosZenith, 9);
      }),
    );
  });

  test('keeps declination, equation of time and distance within what the year allows', () => {
    fc.assert(
      fc.property(thisCentury, (at) => {
        const sun = solarPosition(at, 0, 0);
        expect(Math.abs(sun.declinationRad)).toBeLessThan(0.411);
        expect(Math.abs(sun.equationOfTimeMin)).toBeLessThan(17);
        expect(Math.abs(sun.eccentricity - 1)).toBeLessThan(0.036);
      }),
    );
  });

  test('sees the sun in the east before solar noon and in the west after it', () => {
    fc.assert(
      fc.property(
        thisCentury,
        gardenLatitudeDeg,
        anyLongitudeDeg,
        between(0.1, 11.9),
        (day, latitudeDeg, lon, hours) => {
          const noonMs = solarNoonMs(day, lon);
          expect(solarPosition(new Date(noonMs - hours * 3_600_000), latitudeDeg, lon).east).toBeGreaterThan(0);
          expect(solarPosition(new Date(noonMs + hours * 3_600_000), latitudeDeg, lon).east).toBeLessThan(0);
        },
      ),
    );
  });

  test('is the same on both sides of the date line', () => {
    fc.assert(
      fc.property(thisCentury, anyLatitudeDeg, (at, latitudeDeg) => {
        const west = solarPosition(at, latitudeDeg, -180);
        const east = solarPosition(at, latitudeDeg, 180);
        expect(west.cosZenith).toBeCloseTo(east.cosZenith, 9);
      }),
    );
  });

  test('refuses a place off the globe and an instant that is none', () => {
    const at = new Date('2025-12-01T12:00:00Z');
    expect(() => solarPosition(at, 91, 0)).toThrow('latitudeDeg 91 is outside −90…90');
    expect(() => solarPosition(at, 0, -181)).toThrow('longitudeDeg -181 is outside −180…180');
    expect(() => solarPosition(at, Number.NaN, 0)).toThrow(RangeError);
    expect(() => solarPosition(new Date(Number.NaN), 0, 0)).toThrow('at is not a valid instant');
  });
});

/** Noon by the sun on the UTC day of `day`, from the position's own equation of time. */
function solarNoonMs(day: Date, longitudeDeg: number): number {
  const meanNoonMs = Date.UTC(day.getUTCFullYear(), day.getUTCMonth(), day.getUTCDate(), 12) - longitudeDeg * 240_000;
  return meanNoonMs - solarPosition(new Date(meanNoonMs), 0, 0).equationOfTimeMin * 60_000;
}
