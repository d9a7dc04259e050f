import { Body, Observer, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { darkWeeks } from '../../rules/index.ts';
import { between } from '../rules/sun/arbitrary-places.ts';
import { PUBLISHED_DARK_WEEKS } from './accuracy/ten-hour-days.ts';
import { daysApart } from './worked-values.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

describe('first and last day under ten hours', () => {
  // The rows themselves are held against the almanac with all others, in accuracy.test.ts.
  test('every published row is checked or excused', () => {
    const excused = PUBLISHED_DARK_WEEKS.filter(({ exception }) => exception !== undefined);
    expect(PUBLISHED_DARK_WEEKS.length - excused.length).toBe(3);
    expect(excused.map(({ row }) => row)).toEqual(['R016', 'R019']);
  });

  test('the excused latitude fits its dates where the reason says', () => {
    const weeks = darkWeeks(new Date('2020-10-01T12:00:00Z'), 35.5, -75);
    expect(daysApart(weeks?.firstDay, '2020-11-28')).toBeLessThanOrEqual(1);
    expect(daysApart(weeks?.lastDay, '2021-01-14')).toBeLessThanOrEqual(1);
  });

  // R021, computed from memory: at or below about 32.5° there are none or almost none.
  test('hardly exist at 32.5°', () => {
    expect(darkWeeks(new Date('2025-08-01T00:00:00Z'), 32.5, 0)?.dayCount ?? 0).toBeLessThanOrEqual(5);
  });

  // Sources: SunCalc 2.0 and Astronomy Engine 2.1; a day's length changes by a minute or more at these dates, both agree within one.
  test('are the days that two astronomy libraries find, within one day, in both hemispheres', () => {
    fc.assert(
      fc.property(
        between(34, 64),
        fc.constantFrom(1, -1),
        between(-180, 180),
        fc.integer({ min: 2000, max: 2049 }),
        (distance, sign, longitudeDeg, year) => {
          const latitudeDeg = distance * sign;
          const weeks = darkWeeks(new Date(Date.UTC(year, 3, 1)), latitudeDeg, longitudeDeg);
          if (weeks === undefined) throw new Error(`none at ${latitudeDeg}`);
          for (const lengthH of [suncalcDayH, engineDayH]) {
            const days = (from: Date, count: number) =>
              lengthH(new Date(from.getTime() + count * DAY_MS), latitudeDeg, longitudeDeg);
            expect(days(weeks.firstDay, 1)).toBeLessThan(10);
            expect(days(weeks.firstDay, -2)).toBeGreaterThan(10);
            expect(days(weeks.lastDay, -1)).toBeLessThan(10);
            expect(days(weeks.lastDay, 2)).toBeGreaterThan(10);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

function suncalcDayH(noon: Date, latitudeDeg: number, longitudeDeg: number): number {
  const { sunrise, sunset } = getTimes(noon, latitudeDeg, longitudeDeg);
  return ((sunset?.getTime() ?? Number.NaN) - (sunrise?.getTime() ?? Number.NaN)) / HOUR_MS;
}

function engineDayH(noon: Date, latitudeDeg: number, longitudeDeg: number): number {
  const observer = new Observer(latitudeDeg, longitudeDeg, 0);
  const midnight = new Date(noon.getTime() - 12 * HOUR_MS);
  const rise = SearchRiseSet(Body.Sun, observer, 1, midnight, 1)?.date;
  const set = rise === undefined ? undefined : SearchRiseSet(Body.Sun, observer, -1, rise, 1)?.date;
  return ((set?.getTime() ?? Number.NaN) - (rise?.getTime() ?? Number.NaN)) / HOUR_MS;
}
