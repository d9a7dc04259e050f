import { DateTime } from 'luxon';

/** A date and time as written, its first two numbers not yet told apart where the year stands last. */
export interface WrittenTime {
  readonly first: number;
  readonly second: number;
  readonly third: number;
  /** The year stands first: month and day are certain. */
  readonly yearFirst: boolean;
  /** Absent where only a day is written. */
  readonly clock?: { readonly hour: number; readonly minute: number; readonly second: number };
  /** East of Greenwich, where it is written. [min] */
  readonly offsetMin?: number;
}

export type DayOrder = 'day-first' | 'month-first';

// One pass each: no part can match in two ways.
const DATE = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})(?:[T ,]+|$)/;
const CLOCK = /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d{1,9})?)?\s?([AaPp])?\.?[Mm]?\.?\s?/;
const OFFSET = /^(Z|[+-]\d{2}:?\d{2})$/;
const SECONDS_SINCE_1970 = /^\d{10}$|^\d{13}$/;
const HOURS_PER_HALF_DAY = 12;

/** A time as loggers write it, such as `2026-01-20 06:30`, `1/20/26 6:30 AM`, `20.01.2026 06:30` or seconds since 1970. */
export function writtenTime(text: string): WrittenTime | undefined {
  const plain = text.trim();
  if (SECONDS_SINCE_1970.test(plain)) return sinceEpoch(Number(plain.padEnd(13, '0')));
  const date = DATE.exec(plain);
  if (date === null) return undefined;
  const [whole, first = '', second = '', third = ''] = date;
  const yearFirst = first.length === 4;
  if (!yearFirst && third.length !== 2 && third.length !== 4) return undefined;
  const numbers = { first: Number(first), second: Number(second), third: Number(third), yearFirst };
  const rest = plain.slice(whole.length);
  if (rest === '') return numbers;
  const clock = CLOCK.exec(rest);
  if (clock === null) return undefined;
  const time = clockOf(clock);
  const offsetMin = offsetOf(rest.slice(clock[0].length));
  if (time === undefined || offsetMin === undefined) return undefined;
  return { ...numbers, clock: time, ...(offsetMin !== 'none' && { offsetMin }) };
}

/** A clock alone, for files that write the day in a column of its own. */
export function isClock(text: string): boolean {
  const clock = CLOCK.exec(text.trim());
  return clock !== null && clock[0].length === text.trim().length;
}

function sinceEpoch(ms: number): WrittenTime {
  const at = new Date(ms);
  return {
    ...{ first: at.getUTCFullYear(), second: at.getUTCMonth() + 1, third: at.getUTCDate(), yearFirst: true },
    clock: { hour: at.getUTCHours(), minute: at.getUTCMinutes(), second: at.getUTCSeconds() },
    offsetMin: 0,
  };
}

function clockOf([, hours = '', minutes = '', seconds = '0', half]: RegExpExecArray): WrittenTime['clock'] {
  const hour = Number(hours);
  if (half === undefined) return { hour, minute: Number(minutes), second: Number(seconds) };
  if (hour < 1 || hour > HOURS_PER_HALF_DAY) return undefined;
  const isAfternoon = half.toLowerCase() === 'p';
  return {
    hour: (hour % HOURS_PER_HALF_DAY) + (isAfternoon ? HOURS_PER_HALF_DAY : 0),
    minute: Number(minutes),
    second: Number(seconds),
  };
}

function offsetOf(text: string): number | 'none' | undefined {
  if (text === '') return 'none';
  const match = OFFSET.exec(text);
  if (match === null) return undefined;
  if (text === 'Z') return 0;
  const sign = text.startsWith('-') ? -1 : 1;
  const digits = text.slice(1).replace(':', '');
  return sign * (60 * Number(digits.slice(0, 2)) + Number(digits.slice(2)));
}

/** Which of the two numbers is the day, where the times themselves tell it. */
export function dayOrderOf(times: readonly WrittenTime[]): DayOrder | undefined {
  const open = times.filter(({ yearFirst }) => !yearFirst);
  if (open.some(({ first }) => first > 12)) return 'day-first';
  return open.some(({ second }) => second > 12) ? 'month-first' : undefined;
}

/** Turns written times into instants; the offset of a zone is looked up once an hour of it. */
export class Instants {
  readonly #zone: string;
  readonly #order: DayOrder;
  readonly #hours = new Map<string, number | undefined>();

  /** @param zone - IANA name, or a fixed offset such as `UTC-5`. */
  constructor(zone: string, order: DayOrder) {
    this.#zone = zone;
    this.#order = order;
  }

  /** Undefined for a day or hour that there is not. */
  at(time: WrittenTime): Date | undefined {
    const { clock = { hour: 0, minute: 0, second: 0 }, offsetMin } = time;
    if (clock.minute > 59 || clock.second > 59) return undefined;
    const zone = offsetMin === undefined ? this.#zone : `UTC${offsetMin < 0 ? '-' : '+'}${hoursAndMinutes(offsetMin)}`;
    const hourMs = this.#hourMs(this.#day(time), clock.hour, zone);
    return hourMs === undefined ? undefined : new Date(hourMs + (clock.minute * 60 + clock.second) * 1000);
  }

  #hourMs(day: readonly [number, number, number], hour: number, zone: string): number | undefined {
    const key = `${day.join('-')} ${hour} ${zone}`;
    if (this.#hours.has(key)) return this.#hours.get(key);
    const [year, month, dayOfMonth] = day;
    const time = DateTime.fromObject({ year, month, day: dayOfMonth, hour }, { zone });
    const ms = time.isValid ? time.toMillis() : undefined;
    this.#hours.set(key, ms);
    return ms;
  }

  #day({ first, second, third, yearFirst }: WrittenTime): readonly [number, number, number] {
    if (yearFirst) return [first, second, third];
    const year = third < 100 ? 2000 + third : third;
    return this.#order === 'day-first' ? [year, second, first] : [year, first, second];
  }
}

function hoursAndMinutes(offsetMin: number): string {
  const minutes = Math.abs(offsetMin);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}
