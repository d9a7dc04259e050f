import type { OfficialWarnings } from '../forecast/forecast.ts';
import { temperature } from '../ground/units.ts';
import type { BedOutlook } from '../outlook/night-outlook.ts';
import type { Credit, ReplyFile, Section } from '../talk/reply.ts';
import { addLine, type BedGroup, pickLine, placeWords } from './club-groups.ts';
import type { ClubGarden, ClubTelling } from './club-telling.ts';
import { forecastLine, noteLines } from './forecast-words.ts';
import { outsideLine } from './night-words.ts';
import { lastKnownLine } from './no-forecast-words.ts';
import { lowLine, officialLine } from './outlook-reply.ts';
import { counted } from './phrases.ts';
import type { Reader } from './reader.ts';
import type { Shutting } from './shut-by-words.ts';

/** What of beds a phone shows without much scrolling; the rest is summed up. [characters] */
const ROOM_FOR_BEDS = 560;
const MOST_OFFICIAL = 4;
const MOST_NOTES = 3;

export function isRisky({ verdict }: BedOutlook): boolean {
  return verdict.worst.verdict !== 'holds';
}

/** Every official warning once, whichever gardens it is in force for. */
export function officialSections({
  gardens,
  gaps,
  reader,
}: Pick<ClubTelling, 'gardens' | 'gaps' | 'reader'>): Section[] {
  const lines = new Map<string, string>();
  const told = [...gardens.map(({ official, outlook }) => ({ official, timeZone: outlook.garden.timeZone })), ...gaps];
  for (const { official, timeZone } of told) {
    if (official.kind !== 'known') continue;
    for (const warning of official.warnings) lines.set(warning.key, officialLine(warning, timeZone, reader));
  }
  const found = [...lines.values()];
  const more = found.length - MOST_OFFICIAL;
  const shown = [
    ...found.slice(0, MOST_OFFICIAL),
    ...(more > 0 ? [`And ${counted(more, 'more warning')} for other gardens.`] : []),
  ];
  const isUnknown = told.some(({ official }) => official.kind === 'unknown');
  return [
    ...titled('Official warning, which comes first', shown),
    ...(isUnknown
      ? [{ lines: ['I could not read the official warnings just now. Look them up before you rely on this.'] }]
      : []),
  ];
}

function toDoInOrder(groups: readonly BedGroup[]): BedGroup[] {
  return [...groups.filter(({ doing }) => doing === 'pick'), ...groups.filter(({ doing }) => doing === 'add')];
}

function doLine(group: BedGroup, reader: Reader): string {
  return group.doing === 'pick' ? pickLine(group, reader) : addLine(group, reader);
}

/** Every group at risk in a text of its own, where a post has no room for all. */
export function allBedsFile(groups: readonly BedGroup[], reader: Reader): ReplyFile[] {
  const lines = toDoInOrder(groups).map((group) => doLine(group, reader));
  if (lines.reduce((sum, line) => sum + line.length, 0) <= ROOM_FOR_BEDS) return [];
  return [{ name: 'all-beds.txt', bytes: new TextEncoder().encode(`${lines.join('\n')}\n`) }];
}

/** As many groups as there is room for, what must be picked before what can be covered. */
export function bedSections(groups: readonly BedGroup[], reader: Reader): Section[] {
  const pick: string[] = [];
  const add: string[] = [];
  let room = ROOM_FOR_BEDS;
  let restBeds = 0;
  for (const group of toDoInOrder(groups)) {
    const line = doLine(group, reader);
    room -= line.length;
    if (room < 0 && pick.length + add.length > 0) restBeds += group.beds.length;
    else (group.doing === 'pick' ? pick : add).push(line);
  }
  const rest =
    restBeds === 0
      ? []
      : [{ lines: [`And ${counted(restBeds, 'more bed')} at risk: see the list beside this, or your own beds.`] }];
  return [...titled('Pick today what is ready', pick), ...titled('Add cover', add), ...rest];
}

/** What holds: how many beds, and the one nearest to harm. */
export function restSections(groups: readonly BedGroup[], reader: Reader): Section[] {
  return (['shut', 'nothing'] as const).flatMap((doing) => {
    const fine = groups.filter((group) => group.doing === doing);
    const first = fine[0]?.beds[0];
    if (first === undefined) return [];
    const count = fine.reduce((sum, { beds }) => sum + beds.length, 0);
    const nearest = `${placeWords(first, reader)} comes nearest to harm. ${lowLine(first.verdict, reader)}`;
    return titled(doing === 'shut' ? 'Only shut' : 'Nothing to do', [`${counted(count, 'bed')}. ${nearest}`]);
  });
}

/** "Outside low about 16 °F …", of the coldest garden where they differ. */
export function outsideLines(gardens: readonly ClubGarden[], reader: Reader): string[] {
  const byCold = gardens.toSorted((a, b) => lowOf(a) - lowOf(b));
  const [coldest] = byCold;
  const mildest = byCold.at(-1);
  if (coldest === undefined || mildest === undefined) return [];
  const line = outsideLine(coldest.outlook, reader);
  const [from, to] = [coldest, mildest].map((each) => temperature(lowOf(each), reader.units));
  return from === to
    ? [line]
    : [`In the coldest garden: ${line.charAt(0).toLowerCase()}${line.slice(1)} In the mildest ${to}.`];
}

function lowOf({ outlook }: ClubGarden): number {
  return outlook.weather.summary.lowC;
}

export function gapSections({ gaps, failedCount, gardens, reader }: ClubTelling): Section[] {
  const lines = [...new Set(gaps.map(({ last }) => lastKnownLine(last, reader)))].slice(0, MOST_NOTES);
  if (failedCount > 0) {
    const who = failedCount === 1 ? 'One garden' : `${failedCount} gardens`;
    lines.push(`${who} I could not work out, through a fault of mine: cover as for a colder night.`);
  }
  const count = gaps.length + failedCount;
  return titled(gardens.length === 0 ? 'No forecast' : `No forecast for ${counted(count, 'garden')}`, lines);
}

/** For who looks after the others: where the risk lies, and how much is seen to. */
export function coachLine({ gardens, markedBeds }: Pick<ClubTelling, 'gardens' | 'markedBeds'>): string {
  const risky = gardens.filter(({ outlook }) => outlook.beds.some(isRisky)).length;
  const marked = markedBeds === 0 ? 'no bed' : counted(markedBeds, 'bed');
  return `Beds at risk in ${risky} of ${counted(gardens.length, 'garden')}; ${marked} marked covered so far.`;
}

export function forecastLines({ gardens, reader, now }: Pick<ClubTelling, 'gardens' | 'reader' | 'now'>): string[] {
  const forecasts = new Set(gardens.map(({ outlook }) => forecastLine(outlook.forecast, now)));
  const notes = new Set(gardens.flatMap(({ outlook }) => noteLines(outlook.weather.notes, reader)));
  return [...[...forecasts].slice(0, MOST_NOTES), ...[...notes].slice(0, MOST_NOTES)];
}

export function creditsOf({ gardens, gaps }: Pick<ClubTelling, 'gardens' | 'gaps'>): Credit[] {
  const all = [
    ...gardens.flatMap(({ outlook, official }) => [...outlook.forecast.credits, ...officialCredits(official)]),
    ...gaps.flatMap(({ official }) => officialCredits(official)),
  ];
  return [...new Map(all.map((credit) => [credit.url, credit])).values()];
}

function officialCredits(official: OfficialWarnings): readonly Credit[] {
  return official.kind === 'known' && official.warnings.length > 0 ? official.credits : [];
}

export function shuttingsOf({ gardens, gaps }: Pick<ClubTelling, 'gardens' | 'gaps'>): Shutting[] {
  return [
    ...gardens.map(({ outlook }) => ({ shutBy: outlook.night.shutBy, timeZone: outlook.garden.timeZone })),
    ...gaps,
  ];
}

export function titled(title: string, lines: readonly string[]): Section[] {
  return lines.length === 0 ? [] : [{ title, lines }];
}
