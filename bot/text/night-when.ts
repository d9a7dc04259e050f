import { DateTime } from 'luxon';
import { localDay } from '../ground/times.ts';

/**
 * "tonight", "tomorrow night", "on Friday night".
 *
 * @param name - Local day of the night's evening, `2026-11-27`.
 */
export function nightWhen(name: string, now: Date, timeZone: string): string {
  if (localDay(now, timeZone) >= name) return 'tonight';
  const evening = DateTime.fromISO(name, { zone: timeZone });
  const isTomorrow = localDay(now, timeZone) === evening.minus({ days: 1 }).toFormat('yyyy-LL-dd');
  return isTomorrow ? 'tomorrow night' : `on ${evening.toFormat('cccc')} night`;
}
