import { CAUTIONS } from '../../rules/index.ts';
import type { NightOutlook } from '../outlook/night-outlook.ts';
import type { Reply } from '../talk/reply.ts';
import { aheadLine, lowsAheadLines } from './ahead-words.ts';
import { type BedGroup, bedGroups, placeWords } from './club-groups.ts';
import { clubHarmLines } from './club-harms.ts';
import {
  allBedsFile,
  bedSections,
  coachLine,
  creditsOf,
  forecastLines,
  gapSections,
  isRisky,
  officialSections,
  outsideLines,
  restSections,
  shuttingsOf,
  titled,
} from './club-sections.ts';
import type { ClubGarden, ClubTelling } from './club-telling.ts';
import { assumedHardeningLines } from './hardening-words.ts';
import { HARM_TITLE } from './harm-words.ts';
import { cautionsOf, isFrostless } from './outlook-reply.ts';
import { counted } from './phrases.ts';
import { shutByLines, shutByWords } from './shut-by-words.ts';

/** A club's night: official words first, then what to do, most urgent first, beds by crop and cover and never by member. */
export function clubWarning(telling: ClubTelling): Reply {
  const { gardens, reader, worse } = telling;
  const groups = bedGroups(gardens.map((garden) => toldBeds(garden, telling)));
  const sections = [
    ...officialSections(telling),
    { lines: outsideLines(gardens, reader) },
    ...titled(HARM_TITLE, clubHarmLines(gardens, telling.now, reader)),
    ...bedSections(groups, reader),
    ...(worse === undefined ? restSections(groups, reader) : []),
    ...titled('Shut by', shutByLines(shuttingsOf(telling), reader)),
    ...gapSections(telling),
    { lines: gardens.length === 0 ? [] : [coachLine(telling)] },
    { lines: aheadLines(telling) },
    { lines: [...clubHardeningLines(telling), ...forecastLines(telling)] },
  ];
  const files = allBedsFile(groups, reader);
  const cautions = new Set(gardens.flatMap(({ outlook }) => cautionsOf(outlook)));
  return {
    headline: headline(telling, groups),
    sections: sections.filter(({ lines }) => lines.length > 0),
    cautions: [...cautions].map((key) => CAUTIONS[key].text),
    credits: creditsOf(telling),
    ...(files.length > 0 && { files }),
    buttons: telling.buttons,
    private: false,
  };
}

/** The nights to come in a line, and the worst of them where it asks for something. */
function aheadLines({ ahead, lowsAhead, reader }: ClubTelling): string[] {
  return [...(ahead === undefined ? [] : [aheadLine(ahead, reader)]), ...lowsAheadLines(lowsAhead, reader)];
}

/** Where hardening had to be assumed: by crop and cover, never by whose bed it is. */
function clubHardeningLines(telling: ClubTelling): string[] {
  const beds = telling.gardens.flatMap((garden) => toldBeds(garden, telling).beds);
  const all = beds.flatMap((each) =>
    each.verdict.plantings.map((planting) => ({ bedName: placeWords(each, telling.reader), planting })),
  );
  return assumedHardeningLines(all, telling.reader);
}

function toldBeds({ outlook }: ClubGarden, { worse }: ClubTelling): Pick<NightOutlook, 'beds'> {
  return worse === undefined ? outlook : { beds: outlook.beds.filter((bed) => worse.has(bed)) };
}

function headline(telling: ClubTelling, groups: readonly BedGroup[]): string {
  const { gardens, gaps, failedCount, nightWords, worse, reader } = telling;
  const by = shutByWords(shuttingsOf(telling), reader);
  if (gardens.length === 0) return `No forecast can be had for ${nightWords}. Cover as for a cold night, by ${by}.`;
  if (worse !== undefined) {
    return `Worse ${nightWords} than I said, for ${counted(worse.size, 'bed')}. Shut by ${by}.`;
  }
  const beds = gardens.reduce((sum, { outlook }) => sum + outlook.beds.length, 0);
  const risky = groups.filter(({ beds: [first] }) => isRisky(first)).reduce((sum, group) => sum + group.beds.length, 0);
  const known = gaps.length + failedCount > 0 ? ' that I could work out' : '';
  if (risky > 0) return `${risky} of ${counted(beds, 'bed')}${known} at risk ${nightWords}. Shut by ${by}.`;
  return `Every bed${known} holds ${nightWords}. Shut by ${by}.`;
}

/** A night that needs nothing, for channels that want to hear so, or of which a later night is to be told. */
export function clubAllClear(telling: ClubTelling): Reply {
  const { gardens, reader, nightWords } = telling;
  const beds = gardens.reduce((sum, { outlook }) => sum + outlook.beds.length, 0);
  const frostless = gardens.every(({ outlook }) => isFrostless(outlook)) ? ' No frost at any leaf.' : '';
  const later = [{ lines: aheadLines(telling) }].filter(({ lines }) => lines.length > 0);
  return {
    headline: `Nothing to do ${nightWords}: ${beds === 1 ? 'the bed holds' : `all ${beds} beds hold`}.${frostless}`,
    sections: [...later, { lines: [...outsideLines(gardens, reader), ...forecastLines(telling)] }],
    credits: creditsOf(telling),
    buttons: telling.buttons,
    private: false,
  };
}
