import { DateTime } from 'luxon';
import type { MonthDay } from './month-day.ts';

/** Between two leap days may lie eight years. */
const MOST_YEARS_BACK = 8;

/**
 * The latest day of that name up to today: in November "Aug 20" is this year's, "Dec 20" last year's.
 *
 * @param today - Local date, `2026-11-25`.
 * @returns Local date.
 */
export function pastDay({ month, day }: MonthDay, today: string): string {
  const { year } = DateTime.fromISO(today);
  const years = Array.from({ length: MOST_YEARS_BACK + 1 }, (_, back) => year - back);
  const dates = years.flatMap((each) => DateTime.fromObject({ year: each, month, day }).toISODate() ?? []);
  return dates.find((date) => date <= today) ?? today;
}
