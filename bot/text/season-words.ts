import { DateTime } from 'luxon';
import type { Reader } from './reader.ts';

/** "Nov 10" where °F is read, "10 Nov" elsewhere. */
export function dayWords(at: Date, timeZone: string, { units }: Reader): string {
  return DateTime.fromJSDate(at, { zone: timeZone })
    .setLocale('en-US')
    .toFormat(units === 'us' ? 'LLL d' : 'd LLL');
}

/** "9 h 2 min". */
export function lengthWords(hours: number): string {
  const minutes = Math.round(hours * 60);
  return `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
