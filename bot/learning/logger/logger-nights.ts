import { setImmediate as nextTurn } from 'node:timers/promises';
import { DateTime } from 'luxon';
import { MS_PER_H, nightFrom } from '../../../rules/index.ts';
import { localDay } from '../../ground/times.ts';
import { nightLater } from '../night-days.ts';

/** One line of a logger. */
export interface LoggerSample {
  readonly at: Date;
  readonly insideC: number | undefined;
  readonly outsideC: number | undefined;
}

/** What a logger saw of one night. */
export interface LoggerNight {
  /** Local day of its evening. */
  readonly night: string;
  readonly underCoverLowC: number | undefined;
  readonly outsideLowC: number | undefined;
}

export interface LoggerNights {
  readonly nights: readonly LoggerNight[];
  /** Nights that the logger did not see from dusk to dawn. */
  readonly partial: readonly string[];
}

export interface LoggerPlace {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly timeZone: string;
}

/** A night's low may hide in a longer gap. */
const LONGEST_GAP_MS = 2 * MS_PER_H;
/** The low that is told is sought until then. */
const AFTER_SUNRISE_MS = MS_PER_H;
/** Worked on between two turns of everybody else. */
const ROWS_A_TURN = 500;
const NIGHTS_A_TURN = 20;

/** The lows of each night, from sunset to an hour after sunrise as they are told. */
export async function loggerNights(samples: readonly LoggerSample[], place: LoggerPlace): Promise<LoggerNights> {
  const sorted = samples.toSorted((one, other) => one.at.getTime() - other.at.getTime());
  const nights: LoggerNight[] = [];
  const partial: string[] = [];
  for (const [night, seen] of await grouped(sorted, place)) {
    if (nights.length % NIGHTS_A_TURN === 0) await nextTurn();
    const window = windowOf(night, place);
    const within = window === undefined ? seen : seen.filter(({ at }) => at >= window.from && at <= window.to);
    if (within.length === 0) continue;
    if (window !== undefined && hasGap(within, window)) partial.push(night);
    else nights.push({ night, underCoverLowC: lowOf(within, 'insideC'), outsideLowC: lowOf(within, 'outsideC') });
  }
  return { nights, partial };
}

/** From noon to noon. */
async function grouped(
  sorted: readonly LoggerSample[],
  { timeZone }: LoggerPlace,
): Promise<ReadonlyMap<string, LoggerSample[]>> {
  const byNight = new Map<string, LoggerSample[]>();
  for (const [index, sample] of sorted.entries()) {
    if (index % ROWS_A_TURN === 0) await nextTurn();
    const night = localDay(new Date(sample.at.getTime() - 12 * MS_PER_H), timeZone);
    const seen = byNight.get(night);
    if (seen === undefined) byNight.set(night, [sample]);
    else seen.push(sample);
  }
  return byNight;
}

/** Undefined where the sun does not set: then noon to noon counts. */
function windowOf(night: string, { latitudeDeg, longitudeDeg, timeZone }: LoggerPlace) {
  const noon = DateTime.fromISO(night, { zone: timeZone }).set({ hour: 12 }).toJSDate();
  const span = nightFrom(noon, latitudeDeg, longitudeDeg);
  return span && { from: span.sunset, to: new Date(span.sunrise.getTime() + AFTER_SUNRISE_MS) };
}

function hasGap(within: readonly LoggerSample[], { from, to }: { readonly from: Date; readonly to: Date }): boolean {
  const times = [from, ...within.map(({ at }) => at), to];
  return times.some((at, index) => at.getTime() - (times[index - 1] ?? at).getTime() > LONGEST_GAP_MS);
}

function lowOf(samples: readonly LoggerSample[], which: 'insideC' | 'outsideC'): number | undefined {
  const values = samples.flatMap((sample) => sample[which] ?? []);
  return values.length === 0 ? undefined : Math.min(...values);
}

/** Where only days are written, each with its low: the low of the night that ended that morning. */
export function morningNights(samples: readonly LoggerSample[], timeZone: string): LoggerNights {
  const nights = samples.map(({ at, insideC, outsideC }) => ({
    night: nightLater(localDay(at, timeZone), -1),
    underCoverLowC: insideC,
    outsideLowC: outsideC,
  }));
  return { nights, partial: [] };
}
