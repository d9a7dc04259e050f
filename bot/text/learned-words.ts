import { type BedLearning, type Crop, type LearnedHardiness, OUTCOMES, type OutcomeKind } from '../../rules/index.ts';
import { difference } from '../ground/units.ts';
import type { GardenBed } from '../outlook/garden.ts';
import type { NightOutlook } from '../outlook/night-outlook.ts';
import { isCover, shortCover } from './night-words.ts';
import { capitalised, counted, list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** Less than this is not worth a word: a thermometer cannot tell it. [K] */
const WORTH_SAYING_K = 0.5;
/** From fewer the book still speaks louder than the thermometer (judgement). */
const FEW_NIGHTS = 4;

const SAW: Readonly<Record<OutcomeKind, string>> = { 'no-mark': 'no mark', 'leaf-burn': 'leaf burn', lost: 'it lost' };

/** What a garden's own thermometers have changed about a night, a sentence for each thing. */
export function learnedLines({ beds }: Pick<NightOutlook, 'beds'>, reader: Reader): string[] {
  const taught = beds.flatMap(({ bed }) => (bed.learned === undefined ? [] : { bed, learned: bed.learned }));
  // What the forecast gets wrong is the same for all beds of a place.
  const [site] = taught.map(({ learned }) => learned).toSorted((one, other) => other.outsideNights - one.outsideNights);
  const lines = [
    site === undefined ? undefined : siteLine(site, reader),
    ...taught.map(({ bed, learned }) => bedLine(bed, learned, reader)),
    ...othersLines(beds, reader),
  ];
  return lines.filter((line) => line !== undefined);
}

/** "Nights here have run 3 °F colder than the forecast, from 12 nights." */
export function siteLine({ belief, outsideNights }: BedLearning, reader: Reader): string | undefined {
  if (outsideNights === 0 || Math.abs(belief.siteOffsetK) < WORTH_SAYING_K) return undefined;
  const nights = counted(outsideNights, 'night');
  return `Nights here have run ${offset(belief.siteOffsetK, reader)} than the forecast, from ${nights}.`;
}

/** "Long tunnel: your low tunnel has run 1.5 °C warmer than the book, from 9 nights." */
export function bedLine(
  { name, covers }: Pick<GardenBed, 'name' | 'covers'>,
  learned: BedLearning,
  reader: Reader,
): string | undefined {
  const { belief, underCoverNights } = learned;
  if (underCoverNights === 0) return undefined;
  const outermost = covers.find(isCover);
  const what = outermost === undefined ? 'the open bed' : `your ${shortCover(outermost, reader)}`;
  const nights = counted(underCoverNights, 'night');
  return Math.abs(belief.coverOffsetK) < WORTH_SAYING_K
    ? `${name}: ${what} runs as the book says${underCoverNights < FEW_NIGHTS ? ' so far' : ''}, from ${nights}.`
    : `${name}: ${what} has run ${offset(belief.coverOffsetK, reader)} than the book, from ${nights}.`;
}

/** "Lettuce: two others of your club saw no mark, so I take it for 2 °F hardier than the table says." */
export function othersLine(crop: Crop, learned: LearnedHardiness | undefined, reader: Reader): string | undefined {
  if (learned?.othersCount === undefined || Math.abs(learned.hardierK) < WORTH_SAYING_K) return undefined;
  const saw = OUTCOMES.flatMap((kind) => othersSaw(kind, learned.othersCount?.[kind] ?? 0));
  const by = difference(Math.abs(learned.hardierK), reader.units);
  const which = learned.hardierK > 0 ? 'hardier' : 'more tender';
  return `${capitalised(cropWord(crop, reader))}: ${list(saw)}, so I take it for ${by} ${which} than the table says.`;
}

function othersSaw(kind: OutcomeKind, members: number): string[] {
  if (members === 0) return [];
  return [`${members === 1 ? 'one other' : `${wordFor(members)} others`} of your club saw ${SAW[kind]}`];
}

function wordFor(count: number): string {
  return ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'][count - 2] ?? String(count);
}

/** Each crop once, however many beds it grows in. */
function othersLines(beds: NightOutlook['beds'], reader: Reader): (string | undefined)[] {
  const plantings = beds.flatMap(({ verdict }) => verdict.plantings.map(({ planting }) => planting));
  return [...new Set(plantings.map(({ crop, learned }) => othersLine(crop, learned, reader)))];
}

function offset(byK: number, { units }: Reader): string {
  return `${difference(Math.abs(byK), units)} ${byK > 0 ? 'warmer' : 'colder'}`;
}
