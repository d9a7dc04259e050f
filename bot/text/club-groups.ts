import { harmFraction } from '../../rules/index.ts';
import { temperature } from '../ground/units.ts';
import type { BedOutlook, NightOutlook } from '../outlook/night-outlook.ts';
import { layingWords, shortStack, verdictPhrase } from './night-words.ts';
import { isCovered, lowLine } from './outlook-reply.ts';
import { capitalised, counted } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** What is to be done about a bed, as the whole club can read it: by crop and covers, never by whose it is. */
export type Doing = 'pick' | 'add' | 'shut' | 'nothing';

/** Beds with the same crop in most danger, under the same covers, for which the same is to be done. */
export interface BedGroup {
  readonly doing: Doing;
  /** Most urgent first; at least one. */
  readonly beds: readonly [BedOutlook, ...BedOutlook[]];
}

export function doingFor({ bed, step }: BedOutlook): Doing {
  if (step.kind === 'add') return step.holds ? 'add' : 'pick';
  if (step.kind === 'none-helps') return 'pick';
  return isCovered(bed.covers) ? 'shut' : 'nothing';
}

/** Beds of all gardens, alike ones together; the most urgent group first. */
export function bedGroups(outlooks: readonly Pick<NightOutlook, 'beds'>[]): BedGroup[] {
  const byKind = new Map<string, [BedOutlook, ...BedOutlook[]]>();
  const all = outlooks.flatMap(({ beds }) => beds).toSorted((a, b) => harmOf(b) - harmOf(a));
  for (const bed of all) {
    const key = kindOf(bed);
    const alike = byKind.get(key);
    if (alike === undefined) byKind.set(key, [bed]);
    else alike.push(bed);
  }
  return [...byKind.values()]
    .map((beds) => ({ doing: doingFor(beds[0]), beds }))
    .toSorted((a, b) => harmOf(b.beds[0]) - harmOf(a.beds[0]) || b.beds.length - a.beds.length);
}

function harmOf({ verdict }: BedOutlook): number {
  return harmFraction(verdict.worst.odds);
}

function kindOf(each: BedOutlook): string {
  const { verdict, step } = each;
  const added = step.kind === 'add' ? [step.keys, step.fromShed] : [];
  return JSON.stringify([doingFor(each), verdict.worst.planting.crop.id, verdict.keys, added]);
}

/** "Lettuce under low tunnel, 3 beds: lettuce winterkill (odds 3 in 4). Leaf low 14 °F (8 to 20). …" */
export function pickLine({ beds: [first, ...others] }: BedGroup, reader: Reader): string {
  const { verdict, step } = first;
  const what = `${placeWords(first, reader)}${bedCount(others.length + 1)}`;
  const now = `${what}: ${verdictPhrase(verdict.worst, reader)}. ${lowLine(verdict, reader)}`;
  if (step.kind !== 'add') return now;
  return `${now} For what stays: ${layingWords(step.keys, step.added, reader, step.fromShed)}.`;
}

/** "Kale under low tunnel, 5 beds: a blanket from the shed over the low tunnel. Without it kale on the edge (…), low 19 °F; …" */
export function addLine({ beds: [first, ...others] }: BedGroup, reader: Reader): string {
  const { verdict, step } = first;
  if (step.kind !== 'add') return '';
  const what = `${placeWords(first, reader)}${bedCount(others.length + 1)}`;
  const laying = layingWords(step.keys, step.added, reader, step.fromShed);
  const after = temperature(step.after.worst.organLowC, reader.units);
  return `${what}: ${laying}. Without it ${verdictPhrase(verdict.worst, reader)}. ${lowLine(verdict, reader)} With it all holds, ${after}.`;
}

/** "Kale under low tunnel". */
export function placeWords({ bed, verdict }: BedOutlook, reader: Reader): string {
  const crop = capitalised(cropWord(verdict.worst.planting.crop, reader));
  return isCovered(bed.covers) ? `${crop} under ${shortStack(bed.covers, reader)}` : `${crop} in the open`;
}

function bedCount(count: number): string {
  return count === 1 ? '' : `, ${counted(count, 'bed')}`;
}
