import { sunTimes } from '../../../rules/index.ts';
import { dailyCurveC } from '../../../rules/night/daily-curve.ts';
import type { Comparison } from './comparison.ts';

/** Mean air of each hour, local standard time, Seattle-Tacoma 1981–2010. [°C] */
const HOURLY_NORMALS_C: Readonly<Record<string, readonly number[]>> = {
  '2010-11-15': [
    6.79, 6.58, 6.41, 6.29, 6.14, 6.07, 5.98, 5.99, 6.17, 6.78, 7.48, 8.2, 8.75, 9.13, 9.3, 9.24, 8.8, 8.1, 7.77, 7.55,
    7.34, 7.12, 6.97, 6.81,
  ],
  '2010-12-15': [
    4.29, 4.13, 4.02, 3.93, 3.82, 3.73, 3.71, 3.72, 3.73, 4.07, 4.65, 5.31, 5.9, 6.28, 6.45, 6.34, 5.91, 5.35, 5.1,
    4.93, 4.83, 4.65, 4.52, 4.4,
  ],
  '2010-01-15': [
    4.86, 4.66, 4.56, 4.45, 4.3, 4.19, 4.19, 4.18, 4.2, 4.57, 5.18, 5.89, 6.54, 7.0, 7.28, 7.27, 6.96, 6.28, 5.87, 5.73,
    5.55, 5.36, 5.22, 5.07,
  ],
  '2010-02-15': [
    5.25, 5.02, 4.84, 4.63, 4.44, 4.26, 4.14, 4.18, 4.39, 5.11, 5.98, 6.92, 7.76, 8.33, 8.7, 8.81, 8.61, 7.96, 7.05,
    6.63, 6.31, 6.02, 5.81, 5.56,
  ],
  '2010-03-15': [
    6.56, 6.22, 5.96, 5.72, 5.51, 5.3, 5.17, 5.36, 6.07, 7.0, 7.99, 8.93, 9.7, 10.31, 10.72, 10.92, 10.76, 10.25, 9.28,
    8.45, 8.0, 7.57, 7.24, 6.83,
  ],
};
const SEATTLE = { latitudeDeg: 47.44, longitudeDeg: -122.31 } as const;
const UTC_OFFSET_H = -8;
const HOUR_MS = 3_600_000;
/** Warmest hour after solar noon, as the ordinary night has it. */
const PEAK_AFTER_NOON_H = 2;
/** The mean of many days is flatter than any of them. [% of the day's range] */
const COURSE_PERCENT = 15;

const AN_HOUR_LATE =
  'By day the mean of dull and clear days runs an hour behind; the nights, for which the course is made, agree.';

/** The course of the day between low and high that ordinary nights are made of, against hourly means. */
export function dailyCourseComparison(): Comparison {
  return {
    quantity: 'Air hour by hour between low and high',
    unit: '% of range',
    source: 'NOAA hourly normals, Seattle, November to March',
    standing: 'read',
    tolerance: '15 % of the day’s range: a mean of thirty years, clear and dull days together',
    rows: Object.entries(HOURLY_NORMALS_C).flatMap(([date, hourlyC]) => courseRows(date, hourlyC)),
  };
}

function courseRows(date: string, hourlyC: readonly number[]) {
  const lowC = Math.min(...hourlyC);
  const rangeK = Math.max(...hourlyC) - lowC;
  const midnightMs = Date.parse(`${date}T00:00:00Z`) - UTC_OFFSET_H * HOUR_MS;
  const sun = sunTimes(new Date(midnightMs + 12 * HOUR_MS), SEATTLE.latitudeDeg, SEATTLE.longitudeDeg);
  if (sun.kind !== 'rises') throw new Error('the sun rises in Seattle');
  const curve = { lowC: 0, rangeK: 100, peakAfterH: sun.dayLengthH / 2 + PEAK_AFTER_NOON_H };
  return hourlyC.map((airC, hour) => {
    const ours = dailyCurveC(curve, (midnightMs + hour * HOUR_MS - sun.sunrise.getTime()) / HOUR_MS);
    const theirs = (100 * (airC - lowC)) / rangeK;
    const late = Math.abs(ours - theirs) > COURSE_PERCENT && hour >= 8 && hour <= 18;
    const row = { id: `${date.slice(5, 7)}, ${hour} h`, ours, theirs, tolerance: COURSE_PERCENT };
    return late ? { ...row, excuse: AN_HOUR_LATE } : row;
  });
}
