import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nightFrom, solarPosition, sunTimes } from '../../../rules/index.ts';
import { anyLatitudeDeg, anyLongitudeDeg, gardenLatitudeDeg, thisCentury } from './arbitrary-places.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

describe('sunTimes', () => {
  test('puts sunrise before and sunset after the highest sun, within the solar day of the instant', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const day = sunTimes(at, latitudeDeg, longitudeDeg);
        if (day.kind !== 'rises') throw new Error(`${day.kind} at ${latitudeDeg}`);
        const noonMs = (day.sunrise.getTime() + day.sunset.getTime()) / 2;
        expect(Math.abs(at.getTime() - noonMs)).toBeLessThan(12.5 * HOUR_MS);
        expect(solarPosition(new Date(noonMs), latitudeDeg, longitudeDeg).cosZenith).toBeGreaterThan(0);
        expect(day.dayLengthH).toBeCloseTo((day.sunset.getTime() - day.sunrise.getTime()) / HOUR_MS, 9);
      }),
    );
  });

  test('gives one answer for every instant between sunrise and sunset', () => {
    fc.assert(
      fc.property(
        thisCentury,
        gardenLatitudeDeg,
        anyLongitudeDeg,
        fc.integer({ min: 0, max: 100 }),
        (at, lat, lon, part) => {
          const day = sunTimes(at, lat, lon);
          if (day.kind !== 'rises') throw new Error(`${day.kind} at ${lat}`);
          const within = new Date(day.sunrise.getTime() + (part / 100) * day.dayLengthH * HOUR_MS);
          expect(sunTimes(within, lat, lon)).toEqual(day);
        },
      ),
    );
  });

  test('makes summer days longer and winter days shorter the farther from the equator', () => {
    const lengthH = (at: string, latitudeDeg: number) => {
      const day = sunTimes(new Date(at), latitudeDeg, 0);
      return day.kind === 'rises' ? day.dayLengthH : Number.NaN;
    };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 63 }), (latitudeDeg) => {
        expect(lengthH('2025-06-21T12:00Z', latitudeDeg + 1)).toBeGreaterThan(
          lengthH('2025-06-21T12:00Z', latitudeDeg),
        );
        expect(lengthH('2025-12-21T12:00Z', latitudeDeg + 1)).toBeLessThan(lengthH('2025-12-21T12:00Z', latitudeDeg));
        expect(lengthH('2025-06-21T12:00Z', -latitudeDeg - 1)).toBeLessThan(lengthH('2025-06-21T12:00Z', -latitudeDeg));
      }),
    );
  });

  test('knows polar night and polar day in both hemispheres', () => {
    expect(sunTimes(new Date('2025-12-21T12:00Z'), 70, 20).kind).toBe('polar-night');
    expect(sunTimes(new Date('2025-06-21T12:00Z'), 70, 20).kind).toBe('polar-day');
    expect(sunTimes(new Date('2025-06-21T12:00Z'), -70, 20).kind).toBe('polar-night');
    expect(sunTimes(new Date('2025-12-21T12:00Z'), -90, 0).kind).toBe('polar-day');
  });

  test('refuses a place off the globe', () => {
    expect(() => sunTimes(new Date(0), -90.5, 0)).toThrow('latitudeDeg -90.5 is outside −90…90');
    expect(() => nightFrom(new Date(0), 0, 200)).toThrow('longitudeDeg 200 is outside −180…180');
  });
});

describe('nightFrom', () => {
  test('is the night around the instant or the next one, at every longitude', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const night = nightFrom(at, latitudeDeg, longitudeDeg);
        if (night === undefined) throw new Error(`no night at ${latitudeDeg}`);
        expect(night.sunset.getTime()).toBeLessThan(night.sunrise.getTime());
        expect(night.sunrise.getTime()).toBeGreaterThan(at.getTime());
        expect(night.sunrise.getTime() - at.getTime()).toBeLessThan(1.01 * DAY_MS);
      }),
    );
  });

  test('gives one answer from the morning before until the sun is up again', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const night = nightFrom(at, latitudeDeg, longitudeDeg);
        if (night === undefined) throw new Error(`no night at ${latitudeDeg}`);
        for (const instantMs of [
          night.sunset.getTime() - HOUR_MS / 2,
          night.sunset.getTime(),
          night.sunrise.getTime() - 1,
        ]) {
          expect(nightFrom(new Date(instantMs), latitudeDeg, longitudeDeg)).toEqual(night);
        }
        const next = nightFrom(night.sunrise, latitudeDeg, longitudeDeg);
        expect(next?.sunset.getTime()).toBeGreaterThan(night.sunrise.getTime());
      }),
    );
  });

  test('shuts two hours before sunset, but never before noon', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const night = nightFrom(at, latitudeDeg, longitudeDeg);
        if (night === undefined) throw new Error(`no night at ${latitudeDeg}`);
        const aheadH = (night.sunset.getTime() - night.shutBy.getTime()) / HOUR_MS;
        expect(aheadH).toBeLessThanOrEqual(2);
        if (Math.abs(latitudeDeg) < 60) expect(aheadH).toBe(2);
      }),
    );
  });

  test('runs from noon to noon while the sun stays down, and does not exist while it stays up', () => {
    const polarNight = nightFrom(new Date('2025-12-21T15:00Z'), 70, 20);
    expect(polarNight).toBeDefined();
    const lengthH = ((polarNight?.sunrise.getTime() ?? 0) - (polarNight?.sunset.getTime() ?? 0)) / HOUR_MS;
    expect(lengthH).toBeCloseTo(24, 1);
    expect(polarNight?.shutBy).toEqual(polarNight?.sunset);
    expect(nightFrom(new Date('2025-06-21T15:00Z'), 70, 20)).toBeUndefined();
  });

  test('gives a night, or none, without failing anywhere on the globe', () => {
    fc.assert(
      fc.property(thisCentury, anyLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const night = nightFrom(at, latitudeDeg, longitudeDeg);
        if (night !== undefined) expect(night.sunrise.getTime()).toBeGreaterThan(at.getTime());
      }),
    );
  });
});
