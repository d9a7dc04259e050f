import { DateTime } from 'luxon';

/** Times as people at the garden read them; the zone always comes from the place, never from this machine. */

/** "3:05 pm" where °F is read, "15:05" elsewhere. */
export function clockTime(at: Date, timeZone: string, twelveHour: boolean): string {
  const local = DateTime.fromJSDate(at, { zone: timeZone });
  return twelveHour ? local.toFormat('h:mm a').toLowerCase() : local.toFormat('HH:mm');
}

/** The clock time rounded down to five minutes, for deadlines: never later than the truth. */
export function deadline(at: Date, timeZone: string, twelveHour: boolean): string {
  const fiveMinutesMs = 5 * 60_000;
  return clockTime(new Date(Math.floor(at.getTime() / fiveMinutesMs) * fiveMinutesMs), timeZone, twelveHour);
}

/** "Friday". */
export function weekdayName(at: Date, timeZone: string): string {
  return DateTime.fromJSDate(at, { zone: timeZone }).toFormat('cccc');
}

/** "Fri 27 Nov". */
export function shortDay(at: Date, timeZone: string): string {
  return DateTime.fromJSDate(at, { zone: timeZone }).toFormat('ccc d LLL');
}

/** The local calendar day as `2026-11-25`; names a night by the day its evening falls on. */
export function localDay(at: Date, timeZone: string): string {
  return DateTime.fromJSDate(at, { zone: timeZone }).toFormat('yyyy-LL-dd');
}

/** "3 hours", "40 minutes", "2 days": for the age of a forecast. */
export function roughAge(ms: number): string {
  const minutes = Math.max(0, Math.round(ms / 60_000));
  if (minutes < 90) return minutes === 1 ? '1 minute' : `${minutes} minutes`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `${hours} hours` : `${Math.round(hours / 24)} days`;
}
