import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import type { LoggerNight } from '../../learning/logger/logger-nights.ts';
import { type BadRow, type LoggerFile, type LoggerProblem, readLogger } from '../../learning/logger/read-logger.ts';
import { nightLater } from '../../learning/night-days.ts';
import type { Store } from '../../store/store.ts';
import type { Reply, Section } from '../../talk/reply.ts';
import type { Request, UploadedFile } from '../../talk/request.ts';
import { counted, list } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import type { OwnBed } from '../bed/own-beds.ts';
import { DOUBT_WORDS, doubtButtons } from './doubts.ts';
import { type WeighedReading, weighed } from './night-of-bed.ts';
import type { ReadingOptions } from './reading-options.ts';
import { taughtLines } from './taught-lines.ts';

export interface FileEntered {
  readonly bed: OwnBed;
  readonly file: UploadedFile;
  readonly options: ReadingOptions;
  readonly request: Request;
  readonly reader: Reader;
}

type LoggerReading = WeighedReading['facts'] & { readonly origin: 'logger' };

/** A winter at a row in five minutes. */
const MOST_BYTES = 2 * 1024 * 1024;
/** Two winters. */
const MOST_NIGHTS = 400;
/** Nothing is learned from what is older. */
const OLDEST_DAYS = 730;
/** Of one bed: as many years as anybody looks back upon. */
const MOST_KEPT = 2000;
const SHOWN = 5;

const PROBLEMS: Readonly<Record<LoggerProblem, string>> = {
  empty: 'That file is empty.',
  'no-times': 'I find no column of times in that file; each row needs one, such as 2026-01-20 06:30.',
  'no-temperatures': 'I find no column of temperatures in that file.',
  'unclear-columns': 'I cannot tell which column is under the cover: head them inside and outside, or leave one out.',
  'units-unsaid': 'The file does not say its units: give the command again with units:°F or units:°C.',
  'too-many-days': 'That file holds more than two years of days. Cut it to the last winter or two.',
  'too-many-rows': 'That file is too long: at most 60,000 rows, a winter at one row in five minutes.',
};

const ROW_WORDS: Readonly<Record<BadRow['reason'], string>> = {
  time: 'no time that I can read',
  'no-such-time': 'no such day or hour',
  temperature: 'no temperature',
  'out-of-range': 'no possible temperature',
};

/** Keeps the nights of a logger's file, and says what could not be used. */
export async function loggerReply(entered: FileEntered, store: Store): Promise<Reply> {
  const { bed, request, reader, options } = entered;
  const read = await readLogger(await entered.file.text(MOST_BYTES), bed.site, {
    ...{ units: options.units, zone: options.zone, holds: options.holds },
    usualOrder: request.locale.endsWith('-US') ? 'month-first' : 'day-first',
  });
  if (typeof read === 'string') throw new PlainProblem(PROBLEMS[read]);
  const { facts, older, toCome, tooOld } = await weighedNights(read.nights, entered, store);
  const kept = new Set((await store.readings.ofBed(request.memberId, bed.id)).map(({ night }) => night));
  if (new Set([...kept, ...facts.map(({ night }) => night)]).size > MOST_KEPT) {
    throw new PlainProblem(`${bed.label} has ${MOST_KEPT} nights of readings, which is all that I keep of one bed.`);
  }
  await store.readings.record(request.memberId, facts, request.now);
  const doubted = facts.filter(({ doubt }) => doubt !== undefined);
  const sections: Section[] = [
    { lines: understoodLines(read) },
    { lines: doubtLines(doubted) },
    { lines: [...leftOutLines(read, older, bed), ...wrongClockLines(toCome, tooOld)] },
    { lines: await taughtLines(store, bed, request.now, reader) },
  ];
  const good = facts.length - doubted.length;
  return {
    headline: `${bed.label}: ${counted(good, 'night')} noted from ${counted(read.rowCount, 'row')}.`,
    sections: sections.filter(({ lines }) => lines.length > 0),
    ...(doubted.length > 0 && { buttons: doubtButtons(bed.id) }),
    private: true,
    refused: facts.length === 0,
  };
}

/** Nights still to come, as a wrong clock makes them, and very old ones are left out with those of unknown covers. */
async function weighedNights(nights: readonly LoggerNight[], entered: FileEntered, store: Store) {
  const { bed, request, options } = entered;
  const today = localDay(request.now, bed.site.timeZone);
  const facts: LoggerReading[] = [];
  const oldest = nightLater(today, -OLDEST_DAYS);
  const [toCome, tooOld] = [nights.filter(({ night }) => night >= today), nights.filter(({ night }) => night < oldest)];
  let older = 0;
  const usable = nights.filter(({ night }) => night < today && night >= oldest);
  for (const lows of usable.slice(-MOST_NIGHTS)) {
    const found = await weighed(store, bed, lows, {
      ...(options.covers && { covers: options.covers }),
      ...(options['same-covers'] !== undefined && { same: options['same-covers'] }),
    });
    if (found === undefined) older += 1;
    else facts.push({ ...found.facts, origin: 'logger' });
  }
  return { facts, older, toCome: toCome.length, tooOld: tooOld.length };
}

function wrongClockLines(toCome: number, tooOld: number): string[] {
  return [
    ...(toCome > 0 ? [`Left out: ${counted(toCome, 'night')} still to come. Is the logger's clock right?`] : []),
    ...(tooOld > 0 ? [`Left out: ${counted(tooOld, 'night')} from more than two years ago.`] : []),
  ];
}

function understoodLines({ units, zone, daysOnly, assumedOrder, holdsInside, holdsOutside }: LoggerFile): string[] {
  const what = list([...(holdsInside ? ['under the cover'] : []), ...(holdsOutside ? ['outside'] : [])]);
  const order =
    assumedOrder === undefined ? '' : ` Dates read with the ${assumedOrder === 'day-first' ? 'day' : 'month'} first.`;
  const days = daysOnly ? ' Only days are written: each low counts for the night that ended that morning.' : '';
  const times = zone === undefined ? 'times by the zone written with them' : `times of ${zone}`;
  return [`Temperatures ${what} in °${units}, ${times}.${order}${days}`];
}

function doubtLines(doubted: readonly LoggerReading[]): string[] {
  const [first] = doubted;
  if (first?.doubt === undefined) return [];
  const nights = list([...doubted.slice(0, SHOWN).map(({ night }) => night), ...more(doubted.length, 'more')]);
  return [`Kept apart until you say: ${nights}. ${DOUBT_WORDS[first.doubt]}`];
}

function leftOutLines({ badRows, partial }: LoggerFile, older: number, bed: OwnBed): string[] {
  const lines: string[] = [];
  if (badRows.length > 0) {
    const rows = badRows.slice(0, SHOWN).map(({ line, reason }) => `line ${line} (${ROW_WORDS[reason]})`);
    lines.push(`Not read: ${list([...rows, ...more(badRows.length, 'more')])}.`);
  }
  if (partial.length > 0) {
    const nights = [...partial.slice(0, SHOWN), ...more(partial.length, 'more')];
    lines.push(`Left out, seen only in part from sunset to sunrise: ${list(nights)}.`);
  }
  if (older > 0) {
    const since = localDay(bed.coversSince, bed.site.timeZone);
    const which = older === 1 ? 'night from before its covers were' : 'nights from before its covers were';
    lines.push(
      `Left out: ${older} ${which} noted (${since}). If they lay there then, give the file again with same-covers:yes.`,
    );
  }
  return lines;
}

function more(count: number, word: string): string[] {
  return count > SHOWN ? [`${count - SHOWN} ${word}`] : [];
}
