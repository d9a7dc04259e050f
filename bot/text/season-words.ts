import { DateTime } from 'luxon';
import type { Reader } from './reader.ts';

/** "Nov 10" where °F is read, "10 Nov" elsewhere. */
export function dayWords(at: Date, timeZone: string, { units }: Reader): string {
  return DateTime.fromJSDate(at, { zone: timeZone })
    .setLocale('en-US')
    .toFormat(units === 'us' ? 'LLL d' : 'd LLL');
}

/** A local date with its year: "Nov 10, 2026" where °F is read, "10 Nov 2026" elsewhere. */
export function dateWords(date: string, { units }: Reader): string {
  return DateTime.fromISO(date)
    .setLocale('en-US')
    .toFormat(units === 'us' ? 'LLL d, yyyy' : 'd LLL yyyy');
}

/** "9 h 2 min". */
export function lengthWords(hours: number): string {
  const minutes = Math.round(hours * 60);
  return `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
