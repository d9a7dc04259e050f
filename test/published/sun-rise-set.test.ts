import { Body, Observer, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { nightFrom, sunTimes } from '../../rules/index.ts';
import { anyLongitudeDeg, gardenLatitudeDeg, thisCentury } from '../rules/sun/arbitrary-places.ts';

const HOUR_MS = 3_600_000;

/**
 * At 65° in June the sun sets so flatly that 0.01° of declination or of the sun's radius moves it by 15 s. Astronomy Engine takes the true
 * radius of the day, we take 16′ all year. Real refraction differs from the standard by minutes, so more would be false precision.
 */
const TOLERANCE_S = 30;

// Sources: Astronomy Engine 2.1; SunCalc 2.0. Random places up to 65° and dates 2000 to 2050.
describe('sunrise and sunset', () => {
  test('agree with Astronomy Engine within half a minute', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const day = risingDay(at, latitudeDeg, longitudeDeg);
        const observer = new Observer(latitudeDeg, longitudeDeg, 0);
        const theirs = (direction: 1 | -1, near: Date) =>
          SearchRiseSet(Body.Sun, observer, direction, new Date(near.getTime() - HOUR_MS), 1)?.date;
        expect(secondsApart(day.sunrise, theirs(1, day.sunrise))).toBeLessThan(TOLERANCE_S);
        expect(secondsApart(day.sunset, theirs(-1, day.sunset))).toBeLessThan(TOLERANCE_S);
      }),
    );
  });

  test('agree with SunCalc within half a minute, and so does the length of the day', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const day = risingDay(at, latitudeDeg, longitudeDeg);
        const noon = new Date((day.sunrise.getTime() + day.sunset.getTime()) / 2);
        const theirs = getTimes(noon, latitudeDeg, longitudeDeg);
        expect(secondsApart(day.sunrise, theirs.sunrise)).toBeLessThan(TOLERANCE_S);
        expect(secondsApart(day.sunset, theirs.sunset)).toBeLessThan(TOLERANCE_S);
        const theirLengthH = ((theirs.sunset?.getTime() ?? 0) - (theirs.sunrise?.getTime() ?? 0)) / HOUR_MS;
        expect(Math.abs(day.dayLengthH - theirLengthH) * 3600).toBeLessThan(2 * TOLERANCE_S);
      }),
    );
  });

  test('bound a night that Astronomy Engine bounds alike', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const night = nightFrom(at, latitudeDeg, longitudeDeg);
        const observer = new Observer(latitudeDeg, longitudeDeg, 0);
        const nextRise = SearchRiseSet(Body.Sun, observer, 1, at, 2)?.date;
        const marginMs = Math.abs((nextRise?.getTime() ?? 0) - at.getTime());
        // An instant within the tolerance of sunrise may belong to either night.
        fc.pre(marginMs > TOLERANCE_S * 1000 && marginMs < 24 * HOUR_MS - TOLERANCE_S * 1000);
        expect(secondsApart(night?.sunrise, nextRise)).toBeLessThan(TOLERANCE_S);
      }),
    );
  });

  test('fail to happen on the days that SunCalc names polar, but for the days at their ends', () => {
    for (let dayOfYear = 0; dayOfYear < 365; dayOfYear += 1) {
      const noon = new Date(Date.UTC(2025, 0, 1, 12) + dayOfYear * 24 * HOUR_MS);
      const theirs = getTimes(noon, 72, 0);
      const before = getTimes(new Date(noon.getTime() - 48 * HOUR_MS), 72, 0);
      const after = getTimes(new Date(noon.getTime() + 48 * HOUR_MS), 72, 0);
      const kindOf = (times: typeof theirs) =>
        times.alwaysUp === true ? 'polar-day' : times.alwaysDown === true ? 'polar-night' : 'rises';
      const settled = kindOf(theirs) === kindOf(before) && kindOf(theirs) === kindOf(after);
      if (settled) expect(sunTimes(noon, 72, 0).kind).toBe(kindOf(theirs));
    }
  });
});

function risingDay(at: Date, latitudeDeg: number, longitudeDeg: number) {
  const day = sunTimes(at, latitudeDeg, longitudeDeg);
  if (day.kind !== 'rises') throw new Error(`${day.kind} at ${latitudeDeg}`);
  return day;
}

function secondsApart(ours: Date | undefined, theirs: Date | null | undefined): number {
  if (ours === undefined || theirs === null || theirs === undefined) return Number.POSITIVE_INFINITY;
  return Math.abs(ours.getTime() - theirs.getTime()) / 1000;
}
