import { MS_PER_DAY } from '../../rules/index.ts';

/** Days since 1970 of a night named by the local day of its evening, such as `2026-12-31`. */
export function daysOfNight(night: string): number {
  return Date.parse(`${night}T00:00:00Z`) / MS_PER_DAY;
}

/** The night so many days later; earlier where the number is below zero. */
export function nightLater(night: string, days: number): string {
  return new Date((daysOfNight(night) + days) * MS_PER_DAY).toISOString().slice(0, 10);
}
