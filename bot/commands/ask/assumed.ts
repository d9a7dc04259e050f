import type { NightVerdict } from '../../../rules/index.ts';
import { windSpeed } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { hardeningWords } from '../../text/hardening-words.ts';
import { isCover, shortCover } from '../../text/night-words.ts';
import { list } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { underWords } from '../../text/verdict-words.ts';
import type { AskedNight } from './asked-night.ts';
import type { Judged } from './judged.ts';

/** " grown cold", " grown warm", " half hardened", or nothing where cold makes no difference. */
export function stateWords({
  hardening,
  hardeningIndex,
  verdict,
  crop,
}: Pick<Judged, 'hardening' | 'hardeningIndex' | 'verdict' | 'crop'>): string {
  if (hardening === 'no-matter') return '';
  if (isBySite(hardening) || hardening === 'followed') return ` ${hardeningWords(hardeningIndex)}`;
  return isGrownCold({ hardening, verdict, crop }) ? ' grown cold' : ' grown warm';
}

function isBySite(hardening: Judged['hardening']): boolean {
  return hardening === 'weather' || hardening === 'season';
}

/** Judged by the tolerance of hardened plants; never so for crops that do not harden. */
export function isGrownCold({ hardening, verdict, crop }: Pick<Judged, 'hardening' | 'verdict' | 'crop'>): boolean {
  return hardening !== 'no-matter' && !isWarm(verdict, crop);
}

function isWarm({ tolerance }: NightVerdict, crop: Judged['crop']): boolean {
  const middleC = (crop.unhardened.lt50C + crop.hardened.lt50C) / 2;
  return tolerance.lt50C > middleC;
}

/** What the answer rests on, and the verdicts if it is otherwise. */
export function assumedLines(
  all: readonly Judged[],
  understood: Understood,
  night: AskedNight,
  reader: Reader,
): readonly string[] {
  return [
    ...assumedLine(all, understood, night, reader),
    ...otherwiseLine('If they have grown warm', all, ({ grownWarm }) => grownWarm, reader),
    ...otherwiseLine('If they are fully hardened', all, ({ fullyHardened }) => fullyHardened, reader),
    ...otherwiseLine('Leaves that press against the cover', all, ({ pressed }) => pressed, reader),
  ];
}

/** What was taken for granted, in one line. */
export function assumedLine(
  all: readonly Judged[],
  understood: Understood,
  night: AskedNight,
  reader: Reader,
): readonly string[] {
  const assumed = [
    ...nightWords(understood, night, reader),
    ...(all.some(({ hardening }) => hardening === 'assumed') ? ['hardened plants'] : []),
    ...all.flatMap(byWeatherWords),
    ...all.flatMap((one) => coverWords(one, understood, reader)),
  ];
  return assumed.length === 0 ? [] : [`Assumed: ${list([...new Set(assumed)])}.`];
}

/** "plants half hardened, by the past week there". */
function byWeatherWords({ hardening, hardeningIndex }: Judged): string[] {
  if (!isBySite(hardening)) return [];
  return [
    `plants ${hardeningWords(hardeningIndex)}, by ${hardening === 'weather' ? 'the past week' : 'the season'} there`,
  ];
}

/** One word where it is the same for all; else each by its crop and its covers, as far as they differ. */
function otherwiseLine(
  lead: string,
  all: readonly Judged[],
  otherwise: (one: Judged) => NightVerdict | undefined,
  reader: Reader,
): readonly string[] {
  const changed = all.flatMap((one) => {
    const word = otherwise(one)?.verdict;
    return word === undefined ? [] : [{ one, word }];
  });
  const [first] = changed;
  if (first === undefined) return [];
  const isSame = changed.length === all.length && changed.every(({ word }) => word === first.word);
  if (isSame) return [`${lead}: ${first.word}.`];
  const differ = (words: (one: Judged) => string) => new Set(all.map(words)).size > 1;
  const labels = [(one: Judged) => cropWord(one.crop, reader), (one: Judged) => underWords(one.covers, reader)].filter(
    differ,
  );
  const told = changed.map(({ one, word }) => [...labels.map((label) => label(one)), word].join(' '));
  return [`${lead}: ${list([...new Set(told)])}.`];
}

export function nightWords({ sky }: Understood, { assumed }: AskedNight, { units }: Reader): string[] {
  if (assumed === undefined) return [];
  const wind = windSpeed(assumed.windMPerS, units);
  return [
    ...(sky?.cloud === undefined ? [assumed.sky === 'clear' ? 'clear sky' : `${assumed.sky} sky`] : []),
    ...(sky?.wind === undefined && sky?.windMPerS === undefined && sky?.gustMPerS === undefined
      ? [`light wind (${wind})`]
      : []),
    'moist soil of the season',
  ];
}

function coverWords(
  { night, bedName }: Judged,
  { covers: said, options, byCrop }: Understood,
  reader: Reader,
): string[] {
  const words: string[] = [];
  if (bedName === undefined && said === undefined && options === undefined && byCrop === undefined)
    words.push('nothing over them');
  if (night.stack.touchesLeaves) words.push('cover lying lightly');
  if (night.stack.notes.includes('row-cover-weight-assumed')) words.push('row cover of medium weight');
  if (night.stack.notes.includes('frame-assumed'))
    words.push(reader.units === 'us' ? 'a wooden frame of 4 by 8 ft' : 'a wooden frame of 1.2 by 2.4 m');
  const off = night.stack.takenOffByDay.filter(isCover);
  const names = new Set(off.map((key) => shortCover(key, reader)));
  if (names.size > 0) words.push(`the ${list([...names])} taken off by day`);
  return words;
}
