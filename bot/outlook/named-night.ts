import { MS_PER_DAY, type NightSpan, nightFrom } from '../../rules/index.ts';
import { localDay, weekdayName } from '../ground/times.ts';
import type { Garden } from './garden.ts';

const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;

/** Nights by the words that people use; a weekday is the next night whose evening falls on it. */
export const NIGHT_NAMES = ['tonight', 'tomorrow', ...WEEKDAYS] as const;
export type NightName = (typeof NIGHT_NAMES)[number];

export interface NamedNight {
  readonly span: NightSpan;
  /** Local day of its evening, `2026-11-25`. */
  readonly day: string;
  /** "tonight", "tomorrow night", "on Friday night". */
  readonly words: string;
}

const DAYS_PER_WEEK = 7;

/** The night that a word means at a garden; undefined where the sun does not set then. */
export function namedNight(
  name: NightName,
  now: Date,
  place: Pick<Garden, 'latitudeDeg' | 'longitudeDeg' | 'timeZone'>,
): NamedNight | undefined {
  const tonight = nightFrom(now, place.latitudeDeg, place.longitudeDeg);
  if (tonight === undefined) return undefined;
  const after = (days: number) => nightAfter(tonight, days, place);
  if (name === 'tonight') return named(tonight, 'tonight', place);
  if (name === 'tomorrow') return named(after(1), 'tomorrow night', place);
  for (let days = 0; days < DAYS_PER_WEEK; days += 1) {
    const span = after(days);
    const weekday = span === undefined ? undefined : weekdayName(span.sunset, place.timeZone);
    if (weekday?.toLowerCase() === name) return named(span, days === 0 ? 'tonight' : `on ${weekday} night`, place);
  }
  return undefined;
}

/** Nights one after the other, tonight first; empty where the sun does not set. */
export function nightsFrom(
  now: Date,
  count: number,
  place: Pick<Garden, 'latitudeDeg' | 'longitudeDeg' | 'timeZone'>,
): readonly NamedNight[] {
  const tonight = nightFrom(now, place.latitudeDeg, place.longitudeDeg);
  if (tonight === undefined) return [];
  return Array.from({ length: count }, (_, days) => {
    const span = days === 0 ? tonight : nightAfter(tonight, days, place);
    return span && named(span, nightWords(span, days, place), place);
  }).filter((night) => night !== undefined);
}

function nightWords({ sunset }: NightSpan, days: number, { timeZone }: Pick<Garden, 'timeZone'>): string {
  if (days === 0) return 'tonight';
  return days === 1 ? 'tomorrow night' : `on ${weekdayName(sunset, timeZone)} night`;
}

/** Found by its middle: sunset itself moves from day to day. */
function nightAfter(
  { sunset, sunrise }: NightSpan,
  days: number,
  { latitudeDeg, longitudeDeg }: Pick<Garden, 'latitudeDeg' | 'longitudeDeg'>,
): NightSpan | undefined {
  const middleMs = (sunset.getTime() + sunrise.getTime()) / 2;
  return nightFrom(new Date(middleMs + days * MS_PER_DAY), latitudeDeg, longitudeDeg);
}

function named(
  span: NightSpan | undefined,
  words: string,
  { timeZone }: Pick<Garden, 'timeZone'>,
): NamedNight | undefined {
  return span === undefined ? undefined : { span, day: localDay(span.sunset, timeZone), words };
}
