import { DateTime, IANAZone } from 'luxon';
import { z } from 'zod';
import { list, saidBack } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { bedOption } from '../bed/own-beds.ts';
import type { OptionSpec } from '../command.ts';
import { maybe, oneOf, yesNo } from '../options.ts';
import { suggestCovers } from '../suggest/suggest-covers.ts';
import { typedCovers } from '../typed/covers.ts';
import { typedLow } from '../typed/low.ts';
import { type Read, read, unread } from '../typed/read.ts';

export const READING_OPTIONS: readonly OptionSpec[] = [
  { name: 'inside', description: 'Low under the cover, such as 21 °F', kind: 'text' },
  { name: 'outside', description: 'Low outside, such as 14 °F', kind: 'text' },
  { ...bedOption, description: 'Which of your beds, if you have several', required: false },
  {
    name: 'night',
    description: 'Last night unless you say; or the date of its evening, such as 2026-01-20',
    kind: 'text',
  },
  {
    name: 'covers',
    description: 'What lay over it that night, if not what usually does',
    kind: 'text',
    suggest: suggestCovers,
  },
  { name: 'file', description: 'A logger’s CSV file with a column of times, instead of single lows', kind: 'file' },
  {
    name: 'units',
    description: 'Of the file, where it does not say',
    kind: 'text',
    choices: [
      { label: '°F', value: 'f' },
      { label: '°C', value: 'c' },
    ],
  },
  {
    name: 'zone',
    description: 'Time zone of the file, such as UTC or Europe/Vienna; your garden’s unless you say',
    kind: 'text',
  },
  {
    name: 'holds',
    description: 'What a single column of the file is; inside unless you say',
    kind: 'text',
    choices: [
      { label: 'Under the cover', value: 'inside' },
      { label: 'Outside', value: 'outside' },
    ],
  },
  { name: 'same-covers', description: 'Did the covers of today lie there all the time of the file?', kind: 'yes-no' },
];

/** What the lows are read with; the file itself is no text. */
export function readingSchema(reader: Reader) {
  const low = (text: string) => lowOnly(text, reader);
  return z.object({
    inside: maybe(low),
    outside: maybe(low),
    bed: maybe(read),
    night: maybe(read),
    covers: maybe((text) => typedCovers(text, reader)),
    units: maybe(typedUnits),
    zone: maybe(typedZone),
    holds: maybe(oneOf('holds', ['inside', 'outside'] as const)),
    'same-covers': maybe(yesNo('same-covers')),
  });
}

export type ReadingOptions = z.output<ReturnType<typeof readingSchema>>;

function lowOnly(text: string, { units }: Reader): Read<number> {
  const low = typedLow(text, units);
  return low.ok ? read(low.value.lowC) : low;
}

function typedUnits(text: string): Read<'C' | 'F'> {
  const letter = text.replace('°', '').trim().charAt(0).toUpperCase();
  if (letter === 'C' || letter === 'F') return read(letter);
  return unread('units is °C or °F.');
}

function typedZone(text: string): Read<string> {
  if (IANAZone.isValidZone(text)) return read(text);
  return unread(`I do not know the time zone "${saidBack(text, 30)}"; write it like UTC or America/New_York.`);
}

/** Oldest night that anybody would still enter. */
const OLDEST_DAYS = 730;
const FORMS = ['yyyy-LL-dd', 'd LLL yyyy', 'LLL d yyyy', 'd LLL', 'LLL d', 'd LLLL', 'LLLL d'];
const LAST_NIGHT = ['last night', 'last', 'tonight', 'yesterday'];

/**
 * The night that is meant, as the local day of its evening: "last night", "2026-01-20", "Jan 20", "20 January".
 *
 * @param today - Local day, `2026-01-21`.
 */
export function typedNight(text: string | undefined, today: string): Read<string> {
  const now = DateTime.fromISO(today, { zone: 'utc' });
  const day = (time: DateTime) => time.toFormat('yyyy-LL-dd');
  if (text === undefined || LAST_NIGHT.includes(text.toLowerCase())) return read(day(now.minus({ days: 1 })));
  const plain = text.replace(/[.,]/g, ' ').replace(/\s+/g, ' ').trim();
  for (const form of FORMS) {
    const time = DateTime.fromFormat(plain, form, { zone: 'utc', locale: 'en-US' });
    if (!time.isValid) continue;
    // A day without its year is the last one there was.
    const meant = form.includes('yyyy') || time <= now ? time : time.minus({ years: 1 });
    if (meant >= now) return unread('That night is not over yet; enter its reading in the morning.');
    if (now.diff(meant, 'days').days > OLDEST_DAYS) return unread('That night is more than two winters back.');
    return read(day(meant));
  }
  const forms = list(['last night', '2026-01-20', 'Jan 20'], 'or');
  return unread(`I cannot read "${saidBack(text, 30)}" as a night; write ${forms}, by the day of its evening.`);
}
