import { DateTime } from 'luxon';
import { saidBack } from '../../text/phrases.ts';
import { type Read, read, unread } from './read.ts';

/** A day of the year. */
export interface MonthDay {
  readonly month: number;
  readonly day: number;
}

/** Longest forms last; a leap year, so that 29 February is a day. */
const FORMS = ['LLL d', 'd LLL', 'LLLL d', 'd LLLL', 'LL-dd'];
const LEAP_YEAR = '2024';

/** A day without its year: "Oct 12", "12 October", "10-12" (month first, as in a full date). */
export function typedMonthDay(text: string): Read<MonthDay> {
  const plain = text.trim().replace(/[.,]/g, ' ').replace(/\s+/g, ' ');
  for (const form of FORMS) {
    const date = DateTime.fromFormat(`${LEAP_YEAR} ${plain}`, `yyyy ${form}`, { locale: 'en-US' });
    if (date.isValid) return read({ month: date.month, day: date.day });
  }
  return unread(`I cannot read "${saidBack(text, 30)}" as a day; write it like Oct 12 or 12 October.`);
}
