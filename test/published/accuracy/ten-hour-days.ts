import { darkWeeks } from '../../../rules/index.ts';
import { daysApart } from '../worked-values.ts';
import type { ComparedRow, Comparison } from './comparison.ts';

/** Published first and last days under ten hours. */
interface PublishedDarkWeeks {
  readonly row: string;
  readonly source: string;
  readonly latitudeDeg: number;
  /** The latitude as printed is rounded: it means this much either way. [°] */
  readonly roundedDeg: number;
  readonly first: string;
  readonly last: string;
  /** Why it is not met within two days. */
  readonly exception?: string;
}

const TOLERANCE_DAYS = 2;

export const PUBLISHED_DARK_WEEKS: readonly PublishedDarkWeeks[] = [
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
    exception: 'Its last day is eight days after the one in its own 2015 edition; both libraries side with 2015.',
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
    exception: 'Its dates belong to 35.5°, its shortest day to 34.6°; the latitude was never printed.',
  },
];

export function tenHourComparison(): Comparison {
  return {
    quantity: 'First and last day under ten hours',
    unit: 'd',
    source: 'garden weblogs R015–R020',
    standing: 'read',
    tolerance: 'two days, within the rounding of the printed latitude',
    rows: [...PUBLISHED_DARK_WEEKS.map(comparedRow), kentuckyRow()],
  };
}

/** The day that is farther off, at the latitude within the rounding that fits best. */
function comparedRow({
  row,
  source,
  latitudeDeg,
  roundedDeg,
  first,
  last,
  exception,
}: PublishedDarkWeeks): ComparedRow {
  const offDays = [-1, 0, 1].map((side) => {
    const weeks = darkWeeks(new Date(`${first}T12:00:00Z`), latitudeDeg + side * roundedDeg, -75);
    return Math.max(daysApart(weeks?.firstDay, first), daysApart(weeks?.lastDay, last));
  });
  return {
    id: `${row}, ${source}`,
    ours: Math.min(...offDays),
    theirs: 0,
    tolerance: TOLERANCE_DAYS,
    ...(exception !== undefined && { excuse: exception }),
  };
}

/** 22 November somewhere in Kentucky and West Virginia, 36.5° to 40.6° N. */
function kentuckyRow(): ComparedRow {
  const daysAfter = (latitudeDeg: number) => {
    const firstDay = darkWeeks(new Date('2025-08-01T12:00:00Z'), latitudeDeg, -82)?.firstDay.getTime() ?? Number.NaN;
    return (firstDay - Date.parse('2025-11-22T12:00:00Z')) / 86_400_000;
  };
  return {
    id: 'R020, garden weblog on the short-day period, read: starts 22 November in Kentucky and West Virginia',
    ours: 0,
    theirs: [daysAfter(40.6), daysAfter(36.5)],
    tolerance: TOLERANCE_DAYS,
  };
}
