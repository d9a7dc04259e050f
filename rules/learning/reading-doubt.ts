import type { BookNight } from '../night/book-night.ts';
import { SENSOR_SD_K } from './bed-learning.ts';
import { bookSpread, type LaidCovers, nightParts } from './book-spread.ts';

/** Why a reading is kept apart until its grower has confirmed it. */
export const READING_DOUBTS = [
  /** Warmer under the cover than any bed would be: a sensor in the sun, or a frame with a heater. */
  'too-warm',
  /** Colder under the cover than any bed would be. */
  'too-cold',
  /** Outside warmer or colder than any forecast errs. */
  'outside-off',
  /** Colder under the cover than outside by more than dry film can explain: perhaps the two are swapped. */
  'colder-than-outside',
] as const;

export type ReadingDoubt = (typeof READING_DOUBTS)[number];

export interface LowsRead {
  /** [°C] */
  readonly outsideLowC?: number;
  /** [°C] */
  readonly underCoverLowC?: number;
}

/** One honest reading in some 15,000 lies further off than this (`judgement`). [standard deviations] */
const DOUBTED_FROM_SDS = 4;
/** A lasting offset may be this many times what the book expects: published gains of frames and tunnels differ so (`judgement`). */
const LASTING_LEEWAY = 3;
/** Air under dry film was computed 3.6 K below the air outside, and measured 2.8 K (`model-spread`, `judgement`). [K] */
const DRY_FILM_K = 4.5;
/** No night is this warm in frost season without a heater or the sun (`judgement`). [°C] */
const WARMEST_NIGHT_C = 25;

/**
 * Whether readings can be so.
 *
 * @param lows - At least one of them.
 * @param laid - The stack of that night.
 * @param book - What had been computed, where anything was.
 * @returns The first doubt, or `undefined`.
 * @throws RangeError when a low is not finite.
 */
export function readingDoubt(
  { outsideLowC, underCoverLowC }: LowsRead,
  laid: LaidCovers,
  book?: BookNight,
): ReadingDoubt | undefined {
  if (!isNumberOrNone(outsideLowC) || !isNumberOrNone(underCoverLowC)) {
    throw new RangeError(`low ${outsideLowC} or ${underCoverLowC} is no number`);
  }
  if (outsideLowC !== undefined && book !== undefined && isOutsideOff(outsideLowC, book)) return 'outside-off';
  if (underCoverLowC === undefined) return undefined;
  if (underCoverLowC > WARMEST_NIGHT_C) return 'too-warm';
  if (outsideLowC !== undefined && underCoverLowC < outsideLowC - DRY_FILM_K) return 'colder-than-outside';
  return book === undefined ? undefined : insideDoubt(underCoverLowC, outsideLowC, laid, book);
}

function isOutsideOff(outsideLowC: number, book: BookNight): boolean {
  return Math.abs(outsideLowC - book.outsideLowC) > DOUBTED_FROM_SDS * Math.hypot(book.outsideSdK, SENSOR_SD_K);
}

/** Held against the low that belongs to the outside reading, where there is one. */
function insideDoubt(
  underCoverLowC: number,
  outsideLowC: number | undefined,
  laid: LaidCovers,
  book: BookNight,
): ReadingDoubt | undefined {
  const { slopeRatio, nightSdK } = nightParts(laid, book);
  const leewayK = LASTING_LEEWAY * bookSpread(laid).coverSdK;
  const outsideErrorK = outsideLowC === undefined ? 0 : outsideLowC - book.outsideLowC;
  const outsideSdK = outsideLowC === undefined ? book.outsideSdK : SENSOR_SD_K;
  const errorK = underCoverLowC - book.underCoverLowC - slopeRatio * outsideErrorK;
  const limitK = DOUBTED_FROM_SDS * Math.hypot(slopeRatio * outsideSdK, leewayK, nightSdK, SENSOR_SD_K);
  if (Math.abs(errorK) <= limitK) return undefined;
  return errorK > 0 ? 'too-warm' : 'too-cold';
}

function isNumberOrNone(value: number | undefined): boolean {
  return value === undefined || Number.isFinite(value);
}
