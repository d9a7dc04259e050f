/**
 * What a bed's thermometer has taught: a two-number Kalman filter. Closed form, no iteration.
 *
 * State: how much the garden runs warmer than the forecast low (`site`), and how much the covered leaf runs warmer than
 * computed from the true outside low (`cover`). Both start at zero with the book's spread and drift back to it slowly,
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

/** How sure the book is, before any reading. */
export interface BookSpread {
  /** Lasting difference between forecast and garden. [K, > 0] */
  readonly siteSdK: number;
  /** Lasting difference between computed and true effect of the cover. [K, > 0] */
  readonly coverSdK: number;
}

/** One night's comparison of readings with what had been predicted. At least one reading must be given. */
export interface NightReading {
  /** Low measured outside minus the low that was forecast. [K] */
  readonly outsideErrorK?: number;
  /** Low measured under the cover minus the low that was computed. [K] */
  readonly insideErrorK?: number;
  /** Change of the inside low per kelvin of outside low. [0…1.1] */
  readonly slopeRatio: number;
  /** Error of this one night's forecast, without the lasting part. [K, > 0] */
  readonly forecastSdK: number;
  /** Error of this one night's computed cover effect, without the lasting part. [K, ≥ 0] */
  readonly nightSdK: number;
}

/** Small minimum-maximum thermometer beside a shaded one: about half a kelvin (judgement). [K] */
export const SENSOR_SD_K = 0.5;

/** After this many nights about 37 % of what was learned is left (judgement: about two winters of readings). */
const MEMORY_NIGHTS = 240;

/** An innovation counts at most as this many standard deviations, so that one odd reading cannot swing a bed (judgement). */
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

/** The belief once other covers lie over the bed: the site is kept, the cover starts from the book. */
export function afterCoverChange(belief: BedBelief, book: BookSpread): BedBelief {
  return { ...belief, coverOffsetK: 0, coverVarianceK2: book.coverSdK ** 2, covarianceK2: 0 };
}

/**
 * The belief after one night's readings. With both readings the night's own forecast error is common to them and
 * cancels from the cover's part.
 *
 * @returns The updated belief; unchanged when the night has no reading.
 * @throws RangeError when a spread is not positive or a value is not finite.
 */
export function afterReading(belief: BedBelief, reading: NightReading): BedBelief {
  const { slopeRatio, forecastSdK, nightSdK } = reading;
  if (!(forecastSdK > 0) || !(nightSdK >= 0) || !Number.isFinite(slopeRatio)) {
    throw new RangeError(
      `forecastSdK ${forecastSdK}, nightSdK ${nightSdK} or slopeRatio ${slopeRatio} is out of range`,
    );
  }
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
 * How the next computed low under the cover is to be moved, and how uncertain it then is.
 *
 * @returns Shift of the computed low and its standard deviation, everything included. [K]
 */
export function learnedShift(
  belief: BedBelief,
  night: Pick<NightReading, 'slopeRatio' | 'forecastSdK' | 'nightSdK'>,
): { readonly shiftK: number; readonly sdK: number } {
  const s = night.slopeRatio;
  const varianceK2 =
    s * s * (belief.siteVarianceK2 + night.forecastSdK ** 2) +
    2 * s * belief.covarianceK2 +
    belief.coverVarianceK2 +
    night.nightSdK ** 2;
  return { shiftK: s * belief.siteOffsetK + belief.coverOffsetK, sdK: Math.sqrt(varianceK2) };
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
