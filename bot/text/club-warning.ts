import { CAUTIONS } from '../../rules/index.ts';
import type { NightOutlook } from '../outlook/night-outlook.ts';
import type { Reply } from '../talk/reply.ts';
import { aheadLine } from './ahead-words.ts';
import { type BedGroup, bedGroups } from './club-groups.ts';
import { clubHarmLines } from './club-harms.ts';
import {
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
import { HARM_TITLE } from './harm-words.ts';
import { cautionsOf, isFrostless } from './outlook-reply.ts';
import { counted } from './phrases.ts';
import { shutByLines, shutByWords } from './shut-by-words.ts';

/** A club's night: official words first, then what to do, most urgent first, beds by crop and cover and never by member. */
export function clubWarning(telling: ClubTelling): Reply {
  const { gardens, reader, ahead, worse } = telling;
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
    { lines: ahead === undefined ? [] : [aheadLine(ahead, reader)] },
    { lines: forecastLines(telling) },
  ];
  const cautions = new Set(gardens.flatMap(({ outlook }) => cautionsOf(outlook)));
  return {
    headline: headline(telling, groups),
    sections: sections.filter(({ lines }) => lines.length > 0),
    cautions: [...cautions].map((key) => CAUTIONS[key].text),
    credits: creditsOf(telling),
    buttons: telling.buttons,
    private: false,
  };
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
  const { gardens, reader, nightWords, ahead } = telling;
  const beds = gardens.reduce((sum, { outlook }) => sum + outlook.beds.length, 0);
  const frostless = gardens.every(({ outlook }) => isFrostless(outlook)) ? ' No frost at any leaf.' : '';
  const later = ahead === undefined ? [] : [{ lines: [aheadLine(ahead, reader)] }];
  return {
    headline: `Nothing to do ${nightWords}: ${beds === 1 ? 'the bed holds' : `all ${beds} beds hold`}.${frostless}`,
    sections: [...later, { lines: [...outsideLines(gardens, reader), ...forecastLines(telling)] }],
    credits: creditsOf(telling),
    buttons: telling.buttons,
    private: false,
  };
}
