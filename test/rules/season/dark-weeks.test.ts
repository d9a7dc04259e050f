import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { darkWeeks, sunTimes } from '../../../rules/index.ts';
import { anyLongitudeDeg, between, thisCentury } from '../sun/arbitrary-places.ts';

const DAY_MS = 86_400_000;
const eitherHemisphere = fc.constantFrom(1, -1);

describe('dark weeks', () => {
  test('hold exactly the days under ten hours: the days just outside are longer', () => {
    fc.assert(
      fc.property(thisCentury, between(34, 65), eitherHemisphere, anyLongitudeDeg, (at, distance, sign, lon) => {
        const latitudeDeg = distance * sign;
        const weeks = darkWeeks(at, latitudeDeg, lon);
        if (weeks === undefined) throw new Error(`no dark weeks at ${latitudeDeg}`);
        const lengthH = (dayMs: number) => {
          const day = sunTimes(new Date(dayMs), latitudeDeg, lon);
          return day.kind === 'rises' ? day.dayLengthH : Number.NaN;
        };
        expect(lengthH(weeks.firstDay.getTime())).toBeLessThan(10);
        expect(lengthH(weeks.lastDay.getTime())).toBeLessThan(10);
        expect(lengthH(weeks.firstDay.getTime() - DAY_MS)).toBeGreaterThanOrEqual(10);
        expect(lengthH(weeks.lastDay.getTime() + DAY_MS)).toBeGreaterThanOrEqual(10);
        expect(weeks.dayCount).toBe((weeks.lastDay.getTime() - weeks.firstDay.getTime()) / DAY_MS + 1);
      }),
    );
  });

  test('are those around the instant or the next to come', () => {
    fc.assert(
      fc.property(thisCentury, between(34, 65), eitherHemisphere, anyLongitudeDeg, (at, distance, sign, lon) => {
        const weeks = darkWeeks(at, distance * sign, lon);
        if (weeks === undefined) throw new Error('no dark weeks');
        expect(weeks.lastDay.getTime() + DAY_MS / 2).toBeGreaterThan(at.getTime());
        expect(weeks.firstDay.getTime() - at.getTime()).toBeLessThan(366 * DAY_MS);
        expect(darkWeeks(weeks.firstDay, distance * sign, lon)).toEqual(weeks);
        expect(darkWeeks(weeks.lastDay, distance * sign, lon)).toEqual(weeks);
      }),
    );
  });

  test('begin earlier and last longer the farther from the equator', () => {
    fc.assert(
      fc.property(between(33.5, 80), between(1, 3), eitherHemisphere, (nearer, farther, sign) => {
        const near = darkWeeks(new Date('2026-04-15T00:00Z'), nearer * sign, 0);
        const far = darkWeeks(new Date('2026-04-15T00:00Z'), (nearer + farther) * sign, 0);
        expect(far?.firstDay.getTime()).toBeLessThanOrEqual(near?.firstDay.getTime() ?? 0);
        expect(far?.dayCount).toBeGreaterThanOrEqual(near?.dayCount ?? Number.POSITIVE_INFINITY);
      }),
    );
  });

  test('last more than twice as long at 52° as at 36°', () => {
    const days = (latitudeDeg: number) => darkWeeks(new Date('2026-04-15T00:00Z'), latitudeDeg, 0)?.dayCount ?? 0;
    expect(days(52)).toBeGreaterThan(2 * days(36));
  });

  test('lie around June south of the equator', () => {
    const weeks = darkWeeks(new Date('2026-01-15T00:00Z'), -43, 172);
    expect(weeks?.firstDay.getUTCMonth()).toBe(4);
    expect(weeks?.lastDay.getUTCMonth()).toBe(7);
  });

  test('do not exist within 32° of the equator', () => {
    fc.assert(
      fc.property(thisCentury, between(-32, 32), anyLongitudeDeg, (at, latitudeDeg, lon) => {
        expect(darkWeeks(at, latitudeDeg, lon)).toBeUndefined();
      }),
    );
  });
});
