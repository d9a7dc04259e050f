import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { horizonAtDeg, isBehindHorizon, preparedWeather, solarPosition } from '../../../rules/index.ts';
import { anyLatitudeDeg, anyLongitudeDeg, between, thisCentury } from './arbitrary-places.ts';

const heights = fc.array(between(0, 90), { minLength: 1, maxLength: 16 });

describe('horizon', () => {
  test('is as given in the directions given: north, east, south and west', () => {
    const round = [5, 10, 20, 40];
    expect([0, 90, 180, 270].map((azimuthDeg) => horizonAtDeg(round, azimuthDeg))).toEqual(round);
    expect(horizonAtDeg(round, 45)).toBeCloseTo(7.5, 9);
    expect(horizonAtDeg(round, 315)).toBeCloseTo(22.5, 9);
  });

  test('is open where nothing is given, and the same all round for one height', () => {
    expect(horizonAtDeg([], 123)).toBe(0);
    fc.assert(
      fc.property(between(-720, 720), (azimuthDeg) => {
        expect(horizonAtDeg([12], azimuthDeg)).toBe(12);
      }),
    );
  });

  test('lies between its lowest and its highest, in every direction and turn of the compass', () => {
    fc.assert(
      fc.property(heights, between(-720, 720), (round, azimuthDeg) => {
        const heightDeg = horizonAtDeg(round, azimuthDeg);
        expect(heightDeg).toBeGreaterThanOrEqual(Math.min(...round) - 1e-9);
        expect(heightDeg).toBeLessThanOrEqual(Math.max(...round) + 1e-9);
        expect(horizonAtDeg(round, azimuthDeg + 360)).toBeCloseTo(heightDeg, 6);
      }),
    );
  });

  test('a higher one hides the sun whenever a lower one does', () => {
    fc.assert(
      fc.property(
        thisCentury,
        anyLatitudeDeg,
        anyLongitudeDeg,
        heights,
        between(0, 20),
        (at, lat, lon, round, more) => {
          const sun = solarPosition(at, lat, lon);
          const higher = round.map((heightDeg) => Math.min(90, heightDeg + more));
          if (isBehindHorizon(sun, round)) expect(isBehindHorizon(sun, higher)).toBe(true);
        },
      ),
    );
  });

  test('a wall in the south-west takes the afternoon, not the morning', () => {
    const place = { latitudeDeg: 43, longitudeDeg: 0, horizonDeg: [0, 0, 0, 0, 0, 50, 50, 0] };
    const first = new Date('2026-02-01T00:00:00Z');
    const hours = Array.from({ length: 25 }, () => 0);
    const series = { first, stepH: 1, screenC: hours, dewPointC: hours, cloudFraction: hours, wind10MPerS: hours };
    const end = new Date('2026-02-02T00:00:00Z');
    const open = preparedWeather({ latitudeDeg: 43, longitudeDeg: 0 }, series, first, end, 30);
    const shaded = preparedWeather(place, series, first, end, 30);
    const sunAt = (weather: typeof open, hour: number) => weather.instants[hour * 2]?.globalWPerM2 ?? 0;
    expect(sunAt(shaded, 10)).toBe(sunAt(open, 10));
    expect(sunAt(shaded, 15)).toBeGreaterThan(0);
    expect(sunAt(shaded, 15)).toBeLessThan(0.4 * sunAt(open, 15));
  });
});
