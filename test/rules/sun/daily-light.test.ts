import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { extraterrestrialMJPerM2, sunsetHourAngleRad } from '../../../rules/index.ts';
import { almanacSun } from '../../../rules/sun/almanac-sun.ts';
import { anyLatitudeDeg, between, thisCentury } from './arbitrary-places.ts';

describe('daily light above the air', () => {
  test('is never negative nor more than the longest polar day brings', () => {
    fc.assert(
      fc.property(thisCentury, anyLatitudeDeg, (at, latitudeDeg) => {
        const light = extraterrestrialMJPerM2(latitudeDeg, almanacSun(at));
        expect(light).toBeGreaterThanOrEqual(0);
        expect(light).toBeLessThan(50);
      }),
    );
  });

  test('equals the sum of the sun over a whole turn of the earth, minute by minute', () => {
    fc.assert(
      fc.property(thisCentury, anyLatitudeDeg, (at, latitudeDeg) => {
        const sun = almanacSun(at);
        const { declinationRad, eccentricity } = sun;
        const latitudeRad = (latitudeDeg * Math.PI) / 180;
        let sumJPerM2 = 0;
        for (let minute = 0; minute < 1440; minute += 1) {
          const cosZenith =
            Math.sin(latitudeRad) * Math.sin(declinationRad) +
            Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.cos((minute / 720) * Math.PI);
          sumJPerM2 += 1367 * eccentricity * Math.max(0, cosZenith) * 60;
        }
        expect(extraterrestrialMJPerM2(latitudeDeg, sun)).toBeCloseTo(sumJPerM2 / 1e6, 2);
      }),
    );
  });

  test('turns through half a circle at most between noon and sunset', () => {
    fc.assert(
      fc.property(anyLatitudeDeg, between(-0.41, 0.41), (latitudeDeg, declinationRad) => {
        const angle = sunsetHourAngleRad(latitudeDeg, declinationRad);
        expect(angle).toBeGreaterThanOrEqual(0);
        expect(angle).toBeLessThanOrEqual(Math.PI);
      }),
    );
  });

  test('refuses a latitude off the globe', () => {
    expect(() => extraterrestrialMJPerM2(100, almanacSun(new Date(0)))).toThrow('latitudeDeg 100 is outside −90…90');
  });
});
