import { CAUTIONS, type CautionKey, type CoverKey, cautionsFor, type PlantingVerdict } from '../../rules/index.ts';
import type { Reply, Section } from '../chat/reply.ts';
import type { OfficialWarning, OfficialWarnings } from '../forecast/forecast.ts';
import type { BedOutlook, NightOutlook } from '../outlook/night-outlook.ts';
import { forecastLine, noteLines } from './forecast-words.ts';
import { isCover, layingWords, outsideLine, shortStack, verdictPhrase } from './night-words.ts';
import { capitalised, counted, list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';
import { clockTime, deadline, shortDay } from './times.ts';
import { temperature, temperatureWithRange } from './units.ts';

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
    officialSection(official, telling),
    { lines: [outsideLine(outlook, reader)] },
    pickSection(telling),
    addSection(telling),
    shutSection(telling),
    fineSection(telling),
    { lines: [forecastLine(outlook.forecast, now), ...noteLines(outlook.weather.notes, reader)] },
  ];
  return {
    headline: headline(telling),
    sections: sections.filter((section) => section !== undefined),
    cautions: cautionsOf(outlook).map((key) => CAUTIONS[key].text),
    credits: outlook.forecast.credits,
    private: true,
  };
}

/** Beds at risk now, and the word for the worst of them. */
function headline({ outlook, reader, nightWords }: OutlookTelling): string {
  const { garden, beds, night } = outlook;
  const risky = beds.filter(({ verdict }) => verdict.worst.verdict !== 'holds').length;
  const shutBy = deadline(night.shutBy, garden.timeZone, reader.units === 'us');
  const shut = beds.some(({ bed }) => isCovered(bed.covers)) ? ` Shut by ${shutBy}.` : '';
  if (beds.length === 0) return `${garden.name}: no bed has a crop in it.`;
  if (risky === 0) return `${garden.name}: every bed holds ${nightWords}.${shut}`;
  const act = beds.some(({ step }) => step.kind !== 'nothing') && shut === '' ? ` Act by ${shutBy}.` : shut;
  return `${garden.name}: ${risky} of ${counted(beds.length, 'bed')} at risk ${nightWords}.${act}`;
}

function officialSection(official: OfficialWarnings, { outlook, reader }: OutlookTelling): Section | undefined {
  if (official.kind === 'not-covered') return undefined;
  if (official.kind === 'unknown') {
    return { lines: ['I could not read the official warnings just now. Look them up before you rely on this.'] };
  }
  const { timeZone } = outlook.garden;
  const lines = official.warnings.map((warning) => officialLine(warning, timeZone, reader));
  return lines.length === 0 ? undefined : { title: 'Official warning, which comes first', lines };
}

function officialLine(warning: OfficialWarning, timeZone: string, reader: Reader): string {
  const until = `${shortDay(warning.until, timeZone)}, ${clockTime(warning.until, timeZone, reader.units === 'us')}`;
  return `${warning.event} until ${until} (${warning.sender}): ${warning.url}`;
}

/** Crops that nothing at hand will bring through: what is ready is better picked while it is good. */
function pickSection({ outlook, reader }: OutlookTelling): Section | undefined {
  const lines = outlook.beds.flatMap((bed) => {
    if (bed.step.kind === 'nothing' || (bed.step.kind === 'add' && bed.step.holds)) return [];
    const after = bed.step.kind === 'add' ? bed.step.after : bed.verdict;
    const lost = after.plantings.filter(({ verdict }) => verdict === 'leaf burn' || verdict === 'winterkill');
    if (lost.length === 0) return [];
    const how =
      bed.step.kind === 'add'
        ? `even with ${layingWords(bed.step.keys, bed.step.added, reader)}`
        : 'and no cover I know helps';
    return `${bed.bed.name}: ${list(lost.map((each) => verdictPhrase(each, reader)))}, ${how}. ${leafLine(bed, reader)}`;
  });
  return lines.length === 0 ? undefined : { title: 'Pick today what is ready', lines };
}

function addSection({ outlook, reader }: OutlookTelling): Section | undefined {
  const lines = outlook.beds.flatMap((bed) => {
    const { step, verdict } = bed;
    if (step.kind !== 'add') return [];
    const shed = step.fromShed ? 'from the shed, ' : 'add ';
    const risky = verdict.plantings.filter((each) => each.verdict !== 'holds');
    const without = list(risky.map((each) => verdictPhrase(each, reader)));
    const then = step.holds ? 'with it, all holds' : 'it helps, but not enough';
    const lows = `leaf low ${temperature(verdict.night.leafLowC, reader.units)} without, ${temperature(step.after.night.leafLowC, reader.units)} with`;
    return `${bed.bed.name}: ${shed}${layingWords(step.keys, step.added, reader)}. As it is, ${without}; ${then} (${lows}).`;
  });
  return lines.length === 0 ? undefined : { title: 'Add cover', lines };
}

function shutSection({ outlook, reader }: OutlookTelling): Section | undefined {
  const lines = outlook.beds.flatMap((bed) =>
    bed.step.kind === 'nothing' && isCovered(bed.bed.covers)
      ? `${bed.bed.name} (${capped(bed.verdict.plantings, reader)}, ${shortStack(bed.bed.covers, reader)}): holds. ${leafLine(bed, reader)}`
      : [],
  );
  const by = deadline(outlook.night.shutBy, outlook.garden.timeZone, reader.units === 'us');
  return lines.length === 0 ? undefined : { title: `Only shut, by ${by}`, lines };
}

function fineSection({ outlook, reader }: OutlookTelling): Section | undefined {
  const lines = outlook.beds.flatMap((bed) =>
    bed.step.kind === 'nothing' && !isCovered(bed.bed.covers)
      ? `${bed.bed.name} (${capped(bed.verdict.plantings, reader)}): holds bare. ${leafLine(bed, reader)}`
      : [],
  );
  return lines.length === 0 ? undefined : { title: 'Nothing to do', lines };
}

function leafLine({ verdict }: BedOutlook, reader: Reader): string {
  const { night } = verdict;
  return `${capitalised('leaf low')} ${temperatureWithRange(night.leafLowC, night.spread.sdK, reader.units)}.`;
}

/** "spinach, kale and 2 more". */
function capped(plantings: readonly PlantingVerdict[], reader: Reader): string {
  const words = plantings.map(({ planting }) => cropWord(planting.crop, reader));
  return words.length <= 3 ? list(words) : `${words.slice(0, 2).join(', ')} and ${words.length - 2} more`;
}

function isCovered(covers: readonly CoverKey[]): boolean {
  return covers.some(isCover);
}

function cautionsOf({ beds, weather }: NightOutlook): readonly CautionKey[] {
  const covers = new Set(beds.flatMap(({ bed, step }) => (step.kind === 'add' ? step.keys : bed.covers)));
  const { gustMaxMPerS, newSnowM, snowDepthM } = weather.summary;
  const crops = beds.flatMap(({ verdict }) => verdict.plantings.map(({ planting }) => planting.crop));
  return cautionsFor({
    covers: [...covers],
    foodSafety: crops.flatMap((crop) => crop.cautions).filter((key) => key === 'rhubarb' || key === 'potato'),
    freezes: beds.some(({ verdict }) => verdict.night.frozenFraction > 0),
    snow: (newSnowM ?? 0) > 0.02 || (snowDepthM ?? 0) > 0.02,
    ...(gustMaxMPerS !== undefined && { gustMPerS: gustMaxMPerS }),
  });
}
