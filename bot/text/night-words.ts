import {
  type BedVerdict,
  bookNight,
  COVERS,
  type CoverKey,
  type Crop,
  coverWords,
  forecastLowSdK,
  type PlantingVerdict,
  spokenOdds,
} from '../../rules/index.ts';
import { clockTime } from '../ground/times.ts';
import { temperatureWithRange, windSpeed } from '../ground/units.ts';
import type { NightOutlook } from '../outlook/night-outlook.ts';
import { list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** Sentences about one night that several replies share. */

/** "Outside low about 16 °F (13 to 19) near 6:30 am, clear, wind 4 mph." */
export function outsideLine(outlook: NightOutlook, reader: Reader, nightsAhead = 0): string {
  const { garden, weather } = outlook;
  const { lowAt, cloudFraction, wind10MPerS } = weather.summary;
  const { lowC, sdK } = learnedOutside(outlook) ?? forecastOutside(outlook, nightsAhead);
  const at = clockTime(lowAt, garden.timeZone, reader.units === 'us');
  return `Outside low about ${temperatureWithRange(lowC, sdK, reader.units)} near ${at}, ${skyWord(cloudFraction)}, wind ${windSpeed(wind10MPerS, reader.units)}.`;
}

function forecastOutside({ garden, weather }: NightOutlook, nightsAhead: number) {
  const { lowC, cloudFraction, wind10MPerS } = weather.summary;
  const site = { inversionK: garden.exposure === 'hollow' ? 5.5 : 3 };
  const kind = { kind: 'forecast', nightsAhead } as const;
  return { lowC, sdK: forecastLowSdK(kind, { site, cloudFraction, windMPerS: wind10MPerS }) };
}

/** Where a thermometer hangs outside, what it has taught of the forecast. */
function learnedOutside({ beds }: NightOutlook): { lowC: number; sdK: number } | undefined {
  const taught = beds.find(({ bed }) => (bed.learned?.outsideNights ?? 0) > 0);
  if (taught === undefined) return undefined;
  const { night, keys } = taught.verdict;
  const { frame } = taught.bed;
  const { outsideLowC, outsideSdK } = bookNight(night, { covers: keys, ...(frame && { walls: frame.walls }) });
  return { lowC: outsideLowC, sdK: outsideSdK };
}

export function skyWord(cloudFraction: number): string {
  if (cloudFraction < 0.3) return 'clear';
  if (cloudFraction < 0.75) return 'partly cloudy';
  return cloudFraction < 0.95 ? 'mostly cloudy' : 'overcast';
}

/** "Long tunnel, kale"; a bed named after its crop is not told twice. */
export function bedCropWords(bedName: string, crop: Crop, reader: Reader): string {
  const word = cropWord(crop, reader);
  return bedName.toLowerCase().includes(word.toLowerCase()) ? bedName : `${bedName}, ${word}`;
}

/** "spinach holds" or "lettuce: winterkill likely, 3 in 4". */
export function verdictPhrase({ planting, verdict, odds }: PlantingVerdict, reader: Reader): string {
  const crop = cropWord(planting.crop, reader);
  switch (verdict) {
    case 'holds':
      return `${crop} holds`;
    case 'on the edge':
      return `${crop} on the edge (odds of a mark ${spokenOdds(odds.leafBurn + odds.winterkill)})`;
    case 'leaf burn':
      return `${crop} ${markWord(planting.crop.organ)} (odds ${spokenOdds(odds.leafBurn + odds.winterkill)})`;
    case 'winterkill':
      return `${crop} winterkill (odds ${spokenOdds(odds.winterkill)})`;
  }
}

/** Leaf burn is the trade's word for leaves; a root or a curd is marked. */
function markWord(organ: string): string {
  return organ === 'leaf' || organ === 'stalk' || organ === 'head' ? 'leaf burn' : 'frost damage';
}

/** How to lay what is to be added: "a blanket from the shed over the low tunnel", "row cover on hoops under the frame". */
export function layingWords(
  keys: readonly CoverKey[],
  added: readonly CoverKey[],
  reader: Reader,
  fromShed = false,
): string {
  const pieces: CoverKey[][] = [];
  for (const key of added) {
    if (key === 'hoops' && pieces.length > 0) pieces.at(-1)?.push(key);
    else pieces.push([key]);
  }
  const shed = fromShed ? ' from the shed' : '';
  const texts = pieces.map((piece) => {
    const words = piece.map((key) => coverWords(key, reader.dialect)).join(' on ');
    return `${words}${shed}${placeWords(keys, piece, added, reader)}`;
  });
  return list(texts.map((text, index) => (texts.indexOf(text) < index ? 'another on that' : text)));
}

/** " over the row cover", " under the cold frame", or " over it" for a bare bed. */
function placeWords(
  keys: readonly CoverKey[],
  piece: readonly CoverKey[],
  added: readonly CoverKey[],
  reader: Reader,
): string {
  const at = keys.findIndex((_, index) => piece.every((key, offset) => keys[index + offset] === key));
  const old = (key: CoverKey) => isCover(key) && !added.includes(key);
  const inside = keys.slice(at + piece.length).find(old);
  if (inside !== undefined) return ` over the ${shortCover(inside, reader)}`;
  const outside = keys.slice(0, at).findLast(old);
  return outside === undefined ? ' over it' : ` under the ${shortCover(outside, reader)}`;
}

export function isCover(key: CoverKey): boolean {
  return key !== 'hoops' && key !== 'jugs';
}

/** The cover's name without article and weight: "row cover", "cold frame". */
export function shortCover(key: CoverKey, { dialect }: Reader): string {
  const name = COVERS[key][dialect];
  const weight = name.indexOf(' (');
  return weight < 0 ? name : name.slice(0, weight);
}

/** A whole stack in short words: "blanket over low tunnel", "no cover". */
export function shortStack(keys: readonly CoverKey[], reader: Reader): string {
  const covers = keys.filter(isCover).map((key) => shortCover(key, reader));
  return covers.length === 0 ? 'no cover' : covers.join(' over ');
}

/** Below what it differs by nobody asks why. [K] */
const WORTH_EXPLAINING_K = 0.5;

/** Why what is covered gets colder than the forecast; undefined where it does not. */
export function colderThanOutsideWords({ night, worst, keys }: BedVerdict): string | undefined {
  if (!keys.some(isCover) || worst.organLowC > night.screenLowC - WORTH_EXPLAINING_K) return undefined;
  return 'Colder than outside, even covered: the forecast is the air at head height; down at the bed under a clear sky it is colder.';
}
