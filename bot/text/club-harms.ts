import { nightHarms } from '../outlook/night-harms.ts';
import { placeWords } from './club-groups.ts';
import type { ClubGarden } from './club-telling.ts';
import { type HarmedBed, harmLines } from './harm-words.ts';
import type { Reader } from './reader.ts';

/** Beds named in one line of a club's post. */
const MOST_BEDS = 6;

/** What wind, snow and wet do to the covers of a club, told for the garden where they do most, beds by crop and cover. */
export function clubHarmLines(gardens: readonly ClubGarden[], now: Date, reader: Reader): readonly string[] {
  const all = gardens.map(({ outlook }) => ({ outlook, ...nightHarms(outlook, now) }));
  const [worst] = all.toSorted((a, b) => harmCount(b) - harmCount(a) || gust(b) - gust(a));
  if (worst === undefined) return [];
  const beds = new Map<string, HarmedBed>();
  for (const [index, { bed, harms }] of worst.beds.entries()) {
    const outlook = worst.outlook.beds[index];
    const name = outlook === undefined ? bed.name : placeWords(outlook, reader);
    if (beds.size < MOST_BEDS && !beds.has(name)) beds.set(name, { name, harms, frame: bed.frame });
  }
  return harmLines([...beds.values()], worst.hours, worst.outlook.garden.timeZone, reader);
}

function harmCount({ beds }: ReturnType<typeof nightHarms>): number {
  return beds.reduce((count, { harms }) => count + harms.length, 0);
}

function gust({ hours }: ReturnType<typeof nightHarms>): number {
  return hours.gustMPerS ?? 0;
}
