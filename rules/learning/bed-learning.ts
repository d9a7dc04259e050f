import type { BookSpread, NightParts } from './book-spread.ts';

/**
 * What a bed's thermometer has taught: a two-number Kalman filter. Closed form, no iteration.
 *
 * State: how much the garden runs warmer than the forecast low (`site`), and how much the bed under its cover runs warmer
 * than computed from the true outside low (`cover`). Both start at zero with the book's spread and drift back to it slowly,
 * so that old winters fade.
 */

/** Mean and covariance of the two offsets. [K, K²] */
export interface BedBelief {
  readonly siteOffsetK: number;
  readonly coverOffsetK: number;
  readonly siteVarianceK2: number;
  readonly coverVarianceK2: number;
  readonly covarianceK2: number;
}

/** One night's comparison of readings with what had been predicted. */
export interface NightReading extends NightParts {
  /** Low measured outside minus the low that was forecast. [K] */
  readonly outsideErrorK?: number;
  /** Low measured under the cover minus the low that was computed. [K] */
  readonly insideErrorK?: number;
}

/** A shift of a computed low and its standard deviation. [K] */
export interface LearnedShift {
  readonly shiftK: number;
  readonly sdK: number;
}

/** Reading a small minimum-maximum thermometer: scale, lag, where it hangs tonight (`judgement`). [K] */
export const SENSOR_SD_K = 0.5;

/** A cheap thermometer's own lasting error, which no number of its readings can find out (`judgement`). [K] */
const SENSOR_BIAS_SD_K = 0.5;

/** After this many nights about 37 % of what was learned is left: two winters of readings (`judgement`). */
const MEMORY_NIGHTS = 240;

/** An innovation counts at most as this many standard deviations, so that one odd reading cannot swing a bed (`judgement`). */
const LARGEST_INNOVATION_SDS = 2.5;

/**
 * What is believed before the first reading.
 *
 * @param book - Lasting spreads of site and cover. [K, > 0]
 * @throws RangeError when a spread is not positive.
 */
export function bookBelief(book: BookSpread): BedBelief {
  if (!(book.siteSdK > 0) || !(book.coverSdK > 0)) {
    throw new RangeError(`siteSdK ${book.siteSdK} and coverSdK ${book.coverSdK} must be above 0`);
  }
  return {
    siteOffsetK: 0,
    coverOffsetK: 0,
    siteVarianceK2: book.siteSdK ** 2,
    coverVarianceK2: book.coverSdK ** 2,
    covarianceK2: 0,
  };
}

/**
 * The belief after nights without readings: means shrink and spreads widen towards the book's (an Ornstein–Uhlenbeck
 * drift whose stationary state is the prior).
 *
 * @param belief - Before them.
 * @param book - Lasting spreads of site and cover. [K]
 * @param nights - Nights passed. [≥ 0]
 */
export function afterNights(belief: BedBelief, book: BookSpread, nights: number): BedBelief {
  const kept = Math.exp(-Math.max(0, nights) / MEMORY_NIGHTS);
  const kept2 = kept * kept;
  return {
    siteOffsetK: belief.siteOffsetK * kept,
    coverOffsetK: belief.coverOffsetK * kept,
    siteVarianceK2: belief.siteVarianceK2 * kept2 + book.siteSdK ** 2 * (1 - kept2),
    coverVarianceK2: belief.coverVarianceK2 * kept2 + book.coverSdK ** 2 * (1 - kept2),
    covarianceK2: belief.covarianceK2 * kept2,
  };
}

/**
 * The belief once other covers lie over the bed. The site stays as it is known; of the cover's offset, soil, sky view and
 * shelter go on and the covers' own part begins anew.
 *
 * @param belief - Under the covers before.
 * @param from - Lasting spreads with those. [K]
 * @param to - Lasting spreads with the new ones. [K]
 * @param sharedFraction - Correlation of the two stacks' lasting offsets. [0…1]
 * @throws RangeError when `sharedFraction` is outside 0…1.
 */
export function afterOtherCovers(
  belief: BedBelief,
  from: BookSpread,
  to: BookSpread,
  sharedFraction: number,
): BedBelief {
  if (!(sharedFraction >= 0 && sharedFraction <= 1))
    throw new RangeError(`sharedFraction ${sharedFraction} is outside 0…1`);
  const kept = (sharedFraction * to.coverSdK) / from.coverSdK;
  return {
    ...belief,
    coverOffsetK: belief.coverOffsetK * kept,
    coverVarianceK2: belief.coverVarianceK2 * kept * kept + to.coverSdK ** 2 * (1 - sharedFraction * sharedFraction),
    covarianceK2: belief.covarianceK2 * kept,
  };
}

/**
 * The belief after one night's readings. With both readings the night's own forecast error is common to them and
 * cancels from the cover's part.
 *
 * @param belief - Before them.
 * @param reading - Their errors against the book.
 * @returns The updated belief; unchanged when the night has no reading.
 * @throws RangeError when a spread is not positive or a value is not finite.
 */
export function afterReading(belief: BedBelief, reading: NightReading): BedBelief {
  const { slopeRatio, forecastSdK, nightSdK } = checked(reading);
  const sensorK2 = SENSOR_SD_K ** 2;
  const weatherK2 = forecastSdK ** 2;
  let after = belief;
  // One at a time, the second given the first, is the same as both at once.
  if (reading.outsideErrorK !== undefined) {
    after = updated(after, 1, 0, reading.outsideErrorK, weatherK2 + sensorK2);
  }
  if (reading.insideErrorK === undefined) return after;
  if (reading.outsideErrorK === undefined) {
    return updated(after, slopeRatio, 1, reading.insideErrorK, slopeRatio ** 2 * weatherK2 + nightSdK ** 2 + sensorK2);
  }
  const difference = reading.insideErrorK - slopeRatio * reading.outsideErrorK;
  return updated(after, 0, 1, difference, nightSdK ** 2 + (1 + slopeRatio ** 2) * sensorK2);
}

/**
 * How far a reading under the cover fell from what was believed before it, in standard deviations: whether the ranges are
 * too narrow or too wide shows in these.
 *
 * @returns `undefined` where the night has no such reading.
 * @throws RangeError as {@link afterReading}.
 */
export function insideErrorSds(belief: BedBelief, reading: NightReading): number | undefined {
  if (reading.insideErrorK === undefined) return undefined;
  const { shiftK, sdK } = shiftOf(belief, checked(reading), belief.coverVarianceK2);
  return (reading.insideErrorK - shiftK) / Math.hypot(sdK, SENSOR_SD_K);
}

/**
 * How the next computed low under the cover is to be moved, and how uncertain it then is.
 *
 * @param belief - What is believed.
 * @param night - The night's own errors. [K]
 * @returns Shift of the computed low and its standard deviation, everything included. [K]
 */
export function learnedShift(belief: BedBelief, night: NightParts): LearnedShift {
  return shiftOf(belief, night, knownNoBetter(belief.coverVarianceK2));
}

/**
 * The same for a night whose outside low is given: only the cover's part is in doubt.
 *
 * @param belief - What is believed.
 * @param night - The night's own error under the cover. [K]
 */
export function learnedCoverShift(belief: BedBelief, night: Pick<NightParts, 'nightSdK'>): LearnedShift {
  return {
    shiftK: belief.coverOffsetK,
    sdK: Math.sqrt(knownNoBetter(belief.coverVarianceK2) + night.nightSdK ** 2),
  };
}

/**
 * The same for the low outside.
 *
 * @param belief - What is believed.
 * @param night - The night's own error of the forecast. [K]
 */
export function learnedOutsideShift(belief: BedBelief, night: Pick<NightParts, 'forecastSdK'>): LearnedShift {
  return { shiftK: belief.siteOffsetK, sdK: Math.sqrt(belief.siteVarianceK2 + night.forecastSdK ** 2) };
}

function shiftOf(belief: BedBelief, night: NightParts, coverVarianceK2: number): LearnedShift {
  const s = night.slopeRatio;
  const siteK2 = s * s * (belief.siteVarianceK2 + night.forecastSdK ** 2);
  const varianceK2 = siteK2 + 2 * s * belief.covarianceK2 + coverVarianceK2 + night.nightSdK ** 2;
  return { shiftK: s * belief.siteOffsetK + belief.coverOffsetK, sdK: Math.sqrt(varianceK2) };
}

function knownNoBetter(coverVarianceK2: number): number {
  return Math.max(coverVarianceK2, SENSOR_BIAS_SD_K ** 2);
}

function checked(reading: NightReading): NightReading {
  const { slopeRatio, forecastSdK, nightSdK } = reading;
  if (!(forecastSdK > 0) || !(nightSdK >= 0) || !Number.isFinite(slopeRatio)) {
    throw new RangeError(
      `forecastSdK ${forecastSdK}, nightSdK ${nightSdK} or slopeRatio ${slopeRatio} is out of range`,
    );
  }
  return reading;
}

/** Scalar Kalman update with observation row (h, g) and noise variance. */
function updated(belief: BedBelief, h: number, g: number, observedK: number, noiseK2: number): BedBelief {
  if (!Number.isFinite(observedK)) throw new RangeError(`reading error ${observedK} is not a number`);
  const { siteVarianceK2: vs, coverVarianceK2: vc, covarianceK2: vx } = belief;
  const siteGain = vs * h + vx * g;
  const coverGain = vx * h + vc * g;
  const innovationK2 = h * siteGain + g * coverGain + noiseK2;
  const expectedK = h * belief.siteOffsetK + g * belief.coverOffsetK;
  const limitK = LARGEST_INNOVATION_SDS * Math.sqrt(innovationK2);
  const innovationK = Math.max(-limitK, Math.min(limitK, observedK - expectedK));
  return {
    siteOffsetK: belief.siteOffsetK + (siteGain / innovationK2) * innovationK,
    coverOffsetK: belief.coverOffsetK + (coverGain / innovationK2) * innovationK,
    siteVarianceK2: vs - (siteGain * siteGain) / innovationK2,
    coverVarianceK2: vc - (coverGain * coverGain) / innovationK2,
    covarianceK2: vx - (siteGain * coverGain) / innovationK2,
  };
}
