import { Body, Observer, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { nightFrom, sunTimes } from '../../rules/index.ts';
import { anyLongitudeDeg, gardenLatitudeDeg, thisCentury } from '../rules/sun/arbitrary-places.ts';
import { engineRiseSetOff, RISE_SET_S, suncalcRiseSetOff } from './accuracy/sun.ts';

const HOUR_MS = 3_600_000;

const inGardens = fc.tuple(thisCentury, gardenLatitudeDeg, anyLongitudeDeg);

// Sources: Astronomy Engine 2.1; SunCalc 2.0. Random places up to 65° and dates 2000 to 2050.
describe('sunrise and sunset', () => {
  test('agree with Astronomy Engine within half a minute', () => {
    fc.assert(
      fc.property(inGardens, (place) => {
        const { sunriseS, sunsetS } = engineRiseSetOff(place);
        expect(Math.abs(sunriseS)).toBeLessThan(RISE_SET_S);
        expect(Math.abs(sunsetS)).toBeLessThan(RISE_SET_S);
      }),
    );
  });

  test('agree with SunCalc within half a minute, and so does the length of the day', () => {
    fc.assert(
      fc.property(inGardens, (place) => {
        const { sunriseS, sunsetS, dayLengthS } = suncalcRiseSetOff(place);
        expect(Math.abs(sunriseS)).toBeLessThan(RISE_SET_S);
        expect(Math.abs(sunsetS)).toBeLessThan(RISE_SET_S);
        expect(Math.abs(dayLengthS)).toBeLessThan(2 * RISE_SET_S);
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
        fc.pre(marginMs > RISE_SET_S * 1000 && marginMs < 24 * HOUR_MS - RISE_SET_S * 1000);
        expect(secondsApart(night?.sunrise, nextRise)).toBeLessThan(RISE_SET_S);
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

function secondsApart(ours: Date | undefined, theirs: Date | null | undefined): number {
  if (ours === undefined || theirs === null || theirs === undefined) return Number.POSITIVE_INFINITY;
  return Math.abs(ours.getTime() - theirs.getTime()) / 1000;
}
