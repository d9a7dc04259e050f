import {
  type BedLearning,
  bedLearning,
  bookNight,
  type CoverKey,
  isInside,
  learnedNight,
  type ReadNight,
  readingDoubt,
} from '../../../rules/index.ts';
import { type HiddenGarden, hiddenGarden } from './hidden-garden.ts';
import { type Random, random } from './random.ts';
import { forecastNight, type TrueNight, trueNight } from './true-night.ts';

/** How far the gardens of a study differ from the book. */
export interface Study {
  readonly name: string;
  readonly gardens: number;
  /** Spread of the published gain of a cover beyond that of the model's own inputs. [K] */
  readonly formSdK: (kind: GardenKind) => number;
  /** How much colder than the forecast a frost hollow lies, for one garden in ten. [K] */
  readonly hollowK: number;
}

export interface GardenKind {
  readonly name: string;
  readonly covers: readonly CoverKey[];
  /** Uncertainty of the cover's gain as published, one standard deviation. [K] */
  readonly publishedSdK: number;
  /** The same of the model's inputs alone, from draws. [K] */
  readonly inputsSdK: number;
}

/** Errors of one way of asking, over all nights counted: from the book, and learned from ten readings and from all before. */
export interface Errors {
  nights: number;
  bookK2: number;
  tenK2: number;
  allK2: number;
}

/** A group of gardens. */
export interface Tally {
  /** Low under the cover, the night's whole weather being known; gardens with a thermometer outside. */
  readonly givenWeather: Errors;
  /** The same, only the true low outside being known. */
  readonly givenOutside: Errors;
  /** From the forecast; all gardens. */
  readonly fromForecast: Errors;
  /** Nights inside the 80 % range: thermometer under the cover, and leaf. */
  bookInside: number;
  learnedInside: number;
  leafInside: number;
  /** Sums of the standard deviations told. [K] */
  bookSdK: number;
  learnedSdK: number;
}

/** Two groups together. */
export function added(one: Tally, other: Tally): Tally {
  const errors = (a: Errors, b: Errors): Errors => ({
    nights: a.nights + b.nights,
    bookK2: a.bookK2 + b.bookK2,
    tenK2: a.tenK2 + b.tenK2,
    allK2: a.allK2 + b.allK2,
  });
  return {
    givenWeather: errors(one.givenWeather, other.givenWeather),
    givenOutside: errors(one.givenOutside, other.givenOutside),
    fromForecast: errors(one.fromForecast, other.fromForecast),
    bookInside: one.bookInside + other.bookInside,
    learnedInside: one.learnedInside + other.learnedInside,
    leafInside: one.leafInside + other.leafInside,
    bookSdK: one.bookSdK + other.bookSdK,
    learnedSdK: one.learnedSdK + other.learnedSdK,
  };
}

/** Reading a thermometer; its lasting error belongs to the garden. [K] */
const READ_SD_K = 0.3;
const MISREAD_SHARE = 0.02;
const FIRST_READINGS = 10;

export function emptyTally(): Tally {
  const none = () => ({ nights: 0, bookK2: 0, tenK2: 0, allK2: 0 });
  return {
    ...{ givenWeather: none(), givenOutside: none(), fromForecast: none() },
    ...{ bookInside: 0, learnedInside: 0, leafInside: 0, bookSdK: 0, learnedSdK: 0 },
  };
}

/** One garden through its nights: told before each night, taught after it; counted from the eleventh night on. */
export function liveGarden(study: Study, kind: GardenKind, seed: number, nights: number, tally: Tally): void {
  const chance = random(seed);
  const hollowK = chance.even() < 0.1 ? study.hollowK : 0;
  const garden = hiddenGarden(chance, study.formSdK(kind), hollowK);
  const readsOutside = chance.even() < 0.5;
  const laid = { covers: kind.covers };
  const read: ReadNight[] = [];
  let ten: BedLearning | undefined;
  for (let day = 0; day < nights; day += 1) {
    const night = trueNight(forecastNight(day, chance), kind.covers, garden);
    const learned = bedLearning(read, { laid, epochDays: day });
    if (day === FIRST_READINGS) ten = learned;
    if (ten !== undefined) score(tally, night, kind.covers, readsOutside, ten, learned);
    const book = bookNight(night.book, laid);
    const lows = readingOf(night, garden, readsOutside, chance);
    if (readingDoubt(lows, laid, book) === undefined) read.push({ epochDays: day, laid, book, ...lows });
  }
}

function readingOf(night: TrueNight, garden: HiddenGarden, readsOutside: boolean, chance: Random) {
  const shown = (lowC: number, biasK: number) => {
    const misreadK = chance.even() < MISREAD_SHARE ? (chance.even() < 0.5 ? -1 : 1) * (4 + 8 * chance.even()) : 0;
    return lowC + biasK + READ_SD_K * chance.normal() + misreadK;
  };
  return {
    underCoverLowC: shown(night.underCoverLowC, garden.sensorBiasK.underCover),
    ...(readsOutside && { outsideLowC: shown(night.outsideLowC, garden.sensorBiasK.outside) }),
  };
}

function score(
  tally: Tally,
  night: TrueNight,
  covers: readonly CoverKey[],
  readsOutside: boolean,
  ten: BedLearning,
  all: BedLearning,
): void {
  const { book, underCoverLowC, leafLowC } = night;
  const told = learnedNight(book, all, { covers });
  if (readsOutside) {
    const shifts = [0, ten.belief.coverOffsetK, all.belief.coverOffsetK] as const;
    const { givenOutsideC, givenWeatherC } = night.known();
    add(tally.givenWeather, underCoverLowC - givenWeatherC, shifts);
    add(tally.givenOutside, underCoverLowC - givenOutsideC, shifts);
  }
  const lowAfterTenC = learnedNight(book, ten, { covers }).thermometerLowC;
  const toldShiftK = told.thermometerLowC - book.thermometerLowC;
  add(tally.fromForecast, underCoverLowC - book.thermometerLowC, [0, lowAfterTenC - book.thermometerLowC, toldShiftK]);
  const holds = (toldLowC: number, toldSdK: number, measuredLowC: number) =>
    Number(isInside({ toldLowC, toldSdK, measuredLowC }));
  tally.bookInside += holds(book.thermometerLowC, book.spread.sdK, underCoverLowC);
  tally.learnedInside += holds(told.thermometerLowC, told.spread.sdK, underCoverLowC);
  tally.leafInside += holds(told.leafLowC, told.spread.sdK, leafLowC);
  tally.bookSdK += book.spread.sdK;
  tally.learnedSdK += told.spread.sdK;
}

function add(errors: Errors, errorK: number, [bookK, tenK, allK]: readonly [number, number, number]): void {
  errors.nights += 1;
  errors.bookK2 += (errorK - bookK) ** 2;
  errors.tenK2 += (errorK - tenK) ** 2;
  errors.allK2 += (errorK - allK) ** 2;
}
