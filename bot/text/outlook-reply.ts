import {
  type BedVerdict,
  CAUTIONS,
  type CautionKey,
  type CoverKey,
  cautionsFor,
  type PlantingVerdict,
} from '../../rules/index.ts';
import type { OfficialWarning, OfficialWarnings } from '../forecast/forecast.ts';
import { clockTime, deadline, shortDay } from '../ground/times.ts';
import { EIGHTY_PERCENT_Z, shortLength, temperature, temperatureWithRange } from '../ground/units.ts';
import { nightHarms } from '../outlook/night-harms.ts';
import { type BedOutlook, type NightOutlook, snowOverBedM } from '../outlook/night-outlook.ts';
import type { Reply, Section } from '../talk/reply.ts';
import { forecastLine, noteLines } from './forecast-words.ts';
import { assumedHardeningLines, hardeningLines } from './hardening-words.ts';
import { HARM_TITLE, harmLines } from './harm-words.ts';
import { learnedLines } from './learned-words.ts';
import { longColdLines } from './long-cold-words.ts';
import { colderThanOutsideWords, isCover, layingWords, outsideLine, shortStack, verdictPhrase } from './night-words.ts';
import { counted, list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

export interface OutlookTelling {
  readonly outlook: NightOutlook;
  readonly official: OfficialWarnings;
  readonly reader: Reader;
  readonly now: Date;
  /** "tonight", "on Friday night". */
  readonly nightWords: string;
}

/** A garden's night as a warning: official words first, then what to do, most urgent first. */
export function outlookReply(telling: OutlookTelling): Reply {
  const { outlook, official, reader, now } = telling;
  const sections: (Section | undefined)[] = [
    officialSection(official, { timeZone: outlook.garden.timeZone, reader }),
    { lines: [outsideLine(outlook, reader)] },
    harmSection(telling),
    pickSection(telling),
    addSection(telling),
    ...(isFrostless(outlook) ? [] : [shutSection(telling), fineSection(telling)]),
    {
      lines: [
        ...(isFrostless(outlook) ? [] : whyColder(outlook)),
        ...longColdLines(outlook, reader),
        ...hardeningOf(outlook, reader),
        forecastLine(outlook.forecast, now),
        ...noteLines(outlook.weather.notes, reader),
        ...learnedLines(outlook, reader),
      ],
    },
  ];
  return {
    headline: headline(telling),
    sections: sections.filter((section) => section !== undefined),
    cautions: cautionsOf(outlook).map((key) => CAUTIONS[key].text),
    credits: outlook.forecast.credits,
    private: true,
  };
}

/** How hard the plants are known or taken to be, and what the other end of what was assumed would mean. */
export function hardeningOf({ beds }: NightOutlook, reader: Reader): string[] {
  return [
    ...hardeningLines(
      beds.flatMap(({ bed }) => bed.plantings),
      reader,
    ),
    ...assumedHardeningLines(
      beds.flatMap(({ bed, verdict }) => verdict.plantings.map((planting) => ({ bedName: bed.name, planting }))),
      reader,
    ),
  ];
}

/** Once, however many beds it is true of. */
function whyColder({ beds }: NightOutlook): string[] {
  return beds.flatMap(({ verdict }) => colderThanOutsideWords(verdict) ?? []).slice(0, 1);
}

/** How many beds are at risk, and by when to act. */
function headline(telling: OutlookTelling): string {
  const { outlook, nightWords } = telling;
  const { garden, beds } = outlook;
  if (beds.length === 0) return `${garden.name}: no bed has a crop in it.`;
  if (isFrostless(outlook)) return `${garden.name}: no frost ${nightWords}.`;
  const risky = beds.filter(({ verdict }) => verdict.worst.verdict !== 'holds').length;
  const when = whenToShut(telling);
  const shut = beds.some(({ bed }) => isCovered(bed.covers)) ? ` Shut ${when}.` : '';
  if (risky === 0) return `${garden.name}: every bed holds ${nightWords}.${shut}`;
  const act = shut === '' ? ` Act ${when}.` : shut;
  return `${garden.name}: ${risky} of ${counted(beds.length, 'bed')} at risk ${nightWords}.${act}`;
}

/** Even the cold end of every bed's range stays above freezing. */
export function isFrostless({ beds }: NightOutlook): boolean {
  return beds.every(({ verdict }) => verdict.night.leafLowC - EIGHTY_PERCENT_Z * verdict.night.spread.sdK > 0);
}

export function officialSection(
  official: OfficialWarnings,
  { timeZone, reader }: { readonly timeZone: string; readonly reader: Reader },
): Section | undefined {
  if (official.kind === 'not-covered') return undefined;
  if (official.kind === 'unknown') {
    return { lines: ['I could not read the official warnings just now. Look them up before you rely on this.'] };
  }
  const lines = official.warnings.map((warning) => officialLine(warning, timeZone, reader));
  return lines.length === 0 ? undefined : { title: 'Official warning, which comes first', lines };
}

export function officialLine(warning: OfficialWarning, timeZone: string, reader: Reader): string {
  const until = `${shortDay(warning.until, timeZone)}, ${clockTime(warning.until, timeZone, reader.units === 'us')}`;
  return `${warning.event} until ${until} (${warning.sender}): ${warning.url}`;
}

/** What wind, snow and wet do to the covers in the night. */
function harmSection({ outlook, reader, now }: OutlookTelling): Section | undefined {
  const { hours, beds } = nightHarms(outlook, now);
  const told = beds.map(({ bed, harms }) => ({ name: bed.name, frame: bed.frame, harms }));
  const lines = harmLines(told, hours, outlook.garden.timeZone, reader);
  return lines.length === 0 ? undefined : { title: HARM_TITLE, lines };
}

/** Crops that nothing at hand will bring through: what is ready is better picked while it is good. */
function pickSection({ outlook, reader }: OutlookTelling): Section | undefined {
  const lines = outlook.beds.flatMap((bed) => {
    const { step, verdict } = bed;
    if (step.kind === 'nothing' || (step.kind === 'add' && step.holds)) return [];
    return `${bed.bed.name}: ${riskyWords(verdict, reader)}. ${lowLine(verdict, reader)} ${lastResort(step, reader)}`;
  });
  return lines.length === 0 ? undefined : { title: 'Pick today what is ready', lines };
}

function lastResort(step: BedOutlook['step'], reader: Reader): string {
  if (step.kind !== 'add') return 'No cover that I know helps.';
  const laying = layingWords(step.keys, step.added, reader, step.fromShed);
  return `For what stays: ${laying}; even so ${riskyWords(step.after, reader)}.`;
}

function addSection({ outlook, reader }: OutlookTelling): Section | undefined {
  const lines = outlook.beds.flatMap(({ bed, step, verdict }) => {
    if (step.kind !== 'add' || !step.holds) return [];
    const laying = layingWords(step.keys, step.added, reader, step.fromShed);
    const low = (each: BedVerdict) => temperature(each.worst.organLowC, reader.units);
    return `${bed.name}: ${laying}. Without it ${riskyWords(verdict, reader)}, low ${low(verdict)}; with it all holds, low ${low(step.after)}.`;
  });
  return lines.length === 0 ? undefined : { title: 'Add cover', lines };
}

function riskyWords({ plantings }: BedVerdict, reader: Reader): string {
  return list(plantings.filter(({ verdict }) => verdict !== 'holds').map((each) => verdictPhrase(each, reader)));
}

function shutSection(telling: OutlookTelling): Section | undefined {
  const { outlook, reader } = telling;
  const lines = outlook.beds.flatMap((bed) =>
    bed.step.kind === 'nothing' && isCovered(bed.bed.covers)
      ? `${bed.bed.name} (${capped(bed.verdict.plantings, reader)}, ${shortStack(bed.bed.covers, reader)}): holds. ${lowLine(bed.verdict, reader)}`
      : [],
  );
  return lines.length === 0 ? undefined : { title: `Only shut, ${whenToShut(telling)}`, lines };
}

/** "by 3:00 pm"; once that has passed there is nothing to wait for. */
function whenToShut({ outlook: { night, garden }, reader, now }: OutlookTelling): string {
  return now < night.shutBy ? `by ${deadline(night.shutBy, garden.timeZone, reader.units === 'us')}` : 'now';
}

function fineSection({ outlook, reader }: OutlookTelling): Section | undefined {
  const lines = outlook.beds.flatMap((bed) =>
    bed.step.kind === 'nothing' && !isCovered(bed.bed.covers)
      ? `${bed.bed.name} (${capped(bed.verdict.plantings, reader)}): holds bare${snowWords(bed, outlook, reader)}. ${lowLine(bed.verdict, reader)}`
      : [],
  );
  return lines.length === 0 ? undefined : { title: 'Nothing to do', lines };
}

/** " under 25 cm of snow": leave it there. */
function snowWords({ bed }: BedOutlook, { weather }: NightOutlook, { units }: Reader): string {
  const overM = snowOverBedM(bed, weather);
  const toldM = weather.summary.leastSnowDepthM;
  return overM === undefined || toldM === undefined
    ? ''
    : ` under ${shortLength(toldM, units)} of snow, which stays on`;
}

/** The low that the worst planting is judged by, with its range. */
export function lowLine({ night, worst }: BedVerdict, reader: Reader): string {
  const what = worst.planting.crop.judgedBy === 'surface' ? 'Soil surface low' : 'Leaf low';
  return `${what} ${temperatureWithRange(worst.organLowC, night.spread.sdK, reader.units)}.`;
}

/** "spinach, kale and 2 more". */
function capped(plantings: readonly PlantingVerdict[], reader: Reader): string {
  const words = plantings.map(({ planting }) => cropWord(planting.crop, reader));
  return words.length <= 3 ? list(words) : `${words.slice(0, 2).join(', ')} and ${words.length - 2} more`;
}

export function isCovered(covers: readonly CoverKey[]): boolean {
  return covers.some(isCover);
}

export function cautionsOf({ beds, weather }: NightOutlook): readonly CautionKey[] {
  const covers = new Set(beds.flatMap(({ bed, step }) => (step.kind === 'add' ? step.keys : bed.covers)));
  const { newSnowM, snowDepthM } = weather.summary;
  const crops = beds.flatMap(({ verdict }) => verdict.plantings.map(({ planting }) => planting.crop));
  return cautionsFor({
    covers: [...covers],
    foodSafety: crops.flatMap((crop) => crop.cautions).filter((key) => key === 'rhubarb' || key === 'potato'),
    freezes: beds.some(({ verdict }) => verdict.night.frozenFraction > 0),
    snow: (newSnowM ?? 0) > 0.02 || (snowDepthM ?? 0) > 0.02,
  });
}
