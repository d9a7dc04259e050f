import { Body, Observer, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { darkWeeks } from '../../rules/index.ts';
import { between } from '../rules/sun/arbitrary-places.ts';
import { daysApart } from './worked-values.ts';

/** Published first and last days under ten hours. `exception`: the row is listed, but not met within two days, for this reason. */
interface PublishedDarkWeeks {
  readonly row: string;
  readonly source: string;
  readonly latitudeDeg: number;
  /** The latitude as printed is rounded: it means this much either way. [°] */
  readonly roundedDeg: number;
  readonly first: string;
  readonly last: string;
  readonly exception?: string;
}

const PUBLISHED: readonly PublishedDarkWeeks[] = [
  {
    row: 'R015',
    source: 'Boston-area garden weblog 2015, read',
    latitudeDeg: 42.4,
    roundedDeg: 0.05,
    first: '2015-11-10',
    last: '2016-02-02',
  },
  {
    row: 'R016',
    source: 'same weblog 2016, read',
    latitudeDeg: 42.4,
    roundedDeg: 0.05,
    first: '2016-11-10',
    last: '2017-02-10',
    exception: 'its last day is eight days after the one in its own 2015 edition; both libraries side with 2015',
  },
  {
    row: 'R017',
    source: 'Utah garden weblog, read',
    latitudeDeg: 41,
    roundedDeg: 0.5,
    first: '2020-11-10',
    last: '2021-01-31',
  },
  {
    row: 'R018',
    source: 'Kansas weblog 2022, read',
    latitudeDeg: 38,
    roundedDeg: 0.5,
    first: '2022-11-21',
    last: '2023-01-21',
  },
  {
    row: 'R019',
    source: 'Farm weblog, read; latitude inferred from its shortest day of 9 h 44 min',
    latitudeDeg: 34.5,
    roundedDeg: 0.05,
    first: '2020-11-28',
    last: '2021-01-14',
    exception: 'its dates belong to 35.5°, its shortest day to 34.6°; the latitude was never printed',
  },
];

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

describe('first and last day under ten hours', () => {
  test.each(PUBLISHED.filter((row) => row.exception === undefined).map((row) => [row.row, row] as const))(
    '%s agrees within two days',
    (_row, published) => {
      const offDays = [-1, 0, 1].map((side) => {
        const latitudeDeg = published.latitudeDeg + side * published.roundedDeg;
        const weeks = darkWeeks(new Date(`${published.first}T12:00:00Z`), latitudeDeg, -75);
        return Math.max(daysApart(weeks?.firstDay, published.first), daysApart(weeks?.lastDay, published.last));
      });
      expect(Math.min(...offDays)).toBeLessThanOrEqual(2);
    },
  );

  test('every published row is checked or excused', () => {
    expect(PUBLISHED.filter((row) => row.exception === undefined)).toHaveLength(3);
    expect(PUBLISHED.filter((row) => row.exception !== undefined).map((row) => row.row)).toEqual(['R016', 'R019']);
  });

  test('the excused latitude fits its dates where the reason says', () => {
    const weeks = darkWeeks(new Date('2020-10-01T12:00:00Z'), 35.5, -75);
    expect(daysApart(weeks?.firstDay, '2020-11-28')).toBeLessThanOrEqual(1);
    expect(daysApart(weeks?.lastDay, '2021-01-14')).toBeLessThanOrEqual(1);
  });

  // R020, garden weblog on the short-day period, read: from 22 November in Kentucky and West Virginia (36.5° to 40.6° N).
  test('begin on 22 November at a latitude of Kentucky and West Virginia', () => {
    const south = darkWeeks(new Date('2025-08-01T12:00:00Z'), 36.5, -82)?.firstDay.getTime() ?? 0;
    const north = darkWeeks(new Date('2025-08-01T12:00:00Z'), 40.6, -82)?.firstDay.getTime() ?? 0;
    expect(north).toBeLessThan(Date.parse('2025-11-22T12:00:00Z'));
    expect(south).toBeGreaterThan(Date.parse('2025-11-22T12:00:00Z'));
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
