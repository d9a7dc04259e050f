import {
  type CoverKey,
  OPENING_LIMIT_C,
  type OpeningAdvice,
  type OpeningLimit,
  type PickTime,
} from '../../rules/index.ts';
import { clockTime, deadline } from '../ground/times.ts';
import { propSize, temperature } from '../ground/units.ts';
import type { BedOpening } from '../outlook/opening-plan.ts';
import { hardeningWords } from './hardening-words.ts';
import { isCover, shortCover, shortStack } from './night-words.ts';
import { list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** Where and when a day is told of. */
export interface DayReader extends Reader {
  readonly timeZone: string;
  readonly now: Date;
}

/** "10:20 am", rounded down to five minutes: rather early than late. */
export function timeWords(at: Date, { timeZone, units }: DayReader): string {
  return deadline(at, timeZone, units === 'us');
}

/** Advice to open. */
export type Opened = Exclude<OpeningAdvice, { kind: 'stay-shut' }>;

/** "prop the light 4 in at 10:20 am, shut by 2:10 pm". */
export function openingWords(bed: BedOpening, advice: Opened, reader: DayReader): string {
  return `${howWords(bed, advice, reader)} ${whenWords(bed, advice, advice.shutAt, reader)}`;
}

/** "at 10:20 am, shut by 2:10 pm". */
export function whenWords({ day }: BedOpening, advice: Opened, shutAt: Date, reader: DayReader): string {
  const from = advice.openAt <= reader.now ? 'now' : `at ${timeWords(advice.openAt, reader)}`;
  const isGone = advice.kind === 'off' && day.opening?.openable.way !== 'roll-up-sides';
  return `${from}, ${isGone ? 'back on' : 'shut'} by ${timeWords(shutAt, reader)}`;
}

/** "prop the light 4 in". */
export function howWords({ day }: BedOpening, advice: Opened, reader: Reader): string {
  const openable = day.opening?.openable;
  if (openable === undefined) return '';
  return advice.kind === 'open'
    ? openWords(openable.way, advice.sizeM, reader)
    : offWords(openable.way, openable.cover, reader);
}

function openWords(way: string, sizeM: number, { units }: Reader): string {
  const size = propSize(sizeM, units);
  if (way === 'prop-light') return `prop the light ${size}`;
  return way === 'raise-side' ? `raise one side ${size}` : `roll both sides up ${size}`;
}

function offWords(way: string, cover: CoverKey, reader: Reader): string {
  if (way === 'prop-light') return 'take the light off';
  if (way === 'roll-up-sides') return 'open both ends and roll both sides right up';
  return `take the ${shortCover(cover, reader)} off`;
}

/** "Left shut it reaches 93 °F near 1:00 pm." */
export function shutWords({ shut }: OpeningAdvice, reader: DayReader): string {
  const { valueC, at } = shut.thermometerHigh;
  return `Left shut it reaches ${temperature(valueC, reader.units)} near ${hour(at, reader)}.`;
}

/** "highest 66 °F near 1:00 pm". */
export function highWords({ shut }: OpeningAdvice, reader: DayReader): string {
  const { valueC, at } = shut.thermometerHigh;
  return `highest ${temperature(valueC, reader.units)} near ${hour(at, reader)}`;
}

const HALF_HOUR_MS = 1_800_000;

/** To the half hour: no forecast of the sun is finer. */
function hour(at: Date, { timeZone, units }: DayReader): string {
  return clockTime(new Date(Math.round(at.getTime() / HALF_HOUR_MS) * HALF_HOUR_MS), timeZone, units === 'us');
}

/** An opened bed so much above its limit is no longer near it (judgement). [K] */
const NEAR_K = 2;

/** Why the limit is lower than usual, and whether it can be kept; empty where it is the usual one. */
export function limitWords(
  { limitC, because }: OpeningLimit,
  advice: Opened,
  { plantings }: BedOpening,
  reader: Reader,
): string {
  if (because === 'usual') return '';
  const crops = plantings.flatMap(({ crop }) => (crop.ventAboveC?.tempC === limitC ? [cropWord(crop, reader)] : []));
  const why = because === 'hardening' ? 'to keep them hard' : `for the ${list(crops)}`;
  const isKept = advice.kind === 'open' && advice.thermometerHigh.valueC <= limitC + NEAR_K;
  return ` ${isKept ? 'Kept near' : 'Opened at'} ${temperature(limitC, reader.units)} ${why}.`;
}

/** What else an opened bed asks for: it stays too hot, or the wind gets under its light. */
export function afterWords(bed: BedOpening, advice: Opened, reader: Reader): string {
  const { openable, limit } = bed.day.opening ?? {};
  if (openable === undefined || limit === undefined) return '';
  if (advice.kind === 'open') {
    return openable.way === 'prop-light' && bed.liftsPropped ? gustWords(bed) : '';
  }
  const left = openable.without?.filter(isCover) ?? [];
  if (left.length === 0 || advice.thermometerHigh.valueC <= OPENING_LIMIT_C + NEAR_K) return '';
  const still = temperature(advice.thermometerHigh.valueC, reader.units);
  return ` Under ${shortStack(left, reader)} alone it still gets to ${still}: take that off too.`;
}

/** Gusts that lift a light even shut leave no propped one lying. */
function gustWords({ harms }: BedOpening): string {
  return harms.some((harm) => harm.kind === 'wind' && harm.advice === 'weigh-down')
    ? ' In those gusts take the light right off instead, and lay it down flat.'
    : ' Hook the light to its prop: gusts may lift it.';
}

/** "Frame by the shed (spinach, three quarters hardened)". */
export function bedLabel({ bed, plantings }: BedOpening, reader: Reader): string {
  return `${bed.name} (${plantingWords(bed, plantings, reader)})`;
}

/** "Spinach under cold frame": for all to read, by crop and covers and never by whose it is. */
export function plainLabel({ bed, plantings }: BedOpening, reader: Reader): string {
  const crops = list(plantings.map(({ crop }) => cropWord(crop, reader)));
  return bed.covers.some(isCover) ? `${crops} under ${shortStack(bed.covers, reader)}` : `${crops} in the open`;
}

/** What is known of their hardness stands behind the crops; what is only assumed is not told as known. */
function plantingWords(bed: BedOpening['bed'], plantings: BedOpening['plantings'], reader: Reader): string {
  const words = plantings.map(({ crop }) => {
    const known = bed.plantings.find(({ cropId }) => cropId === crop.id)?.hardeningIndex;
    const state = known === undefined || !crop.hardens ? '' : hardeningWords(known);
    return { name: cropWord(crop, reader), state };
  });
  const states = new Set(words.map(({ state }) => state));
  const [only = ''] = states;
  if (states.size <= 1) return `${list(words.map(({ name }) => name))}${only === '' ? '' : `, ${only}`}`;
  return list(words.map(({ name, state }) => (state === '' ? name : `${name} ${state}`)));
}

const QUARTER_MS = 900_000;

/** "from 10:30 am", "from 11:45 am to 3:00 pm, then they freeze again", "not today, the leaves stay frozen". */
export function pickWords(pick: PickTime, reader: DayReader): string {
  if (pick.kind === 'not-frozen') return 'at any time, no frost at the leaves';
  const fromMs = pick.kind === 'thawed' ? Math.ceil(pick.at.getTime() / QUARTER_MS) * QUARTER_MS : Number.NaN;
  const untilMs = pick.kind === 'thawed' && pick.until ? pick.until.getTime() : Number.POSITIVE_INFINITY;
  if (!(fromMs < untilMs)) return 'not today, the leaves stay frozen';
  const quarter = (ms: number) => clockTime(new Date(ms), reader.timeZone, reader.units === 'us');
  const until = Number.isFinite(untilMs)
    ? ` to ${quarter(Math.floor(untilMs / QUARTER_MS) * QUARTER_MS)}, then they freeze again`
    : '';
  if (untilMs <= reader.now.getTime()) return 'no more today, the leaves freeze again';
  return fromMs <= reader.now.getTime() ? `now${until}` : `from ${quarter(fromMs)}${until}`;
}
