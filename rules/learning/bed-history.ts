import type { BookNight } from '../night/book-night.ts';
import {
  afterNights,
  afterOtherCovers,
  afterReading,
  type BedBelief,
  bookBelief,
  insideErrorSds,
  type NightReading,
} from './bed-learning.ts';
import { bookSpread, type LaidCovers, nightParts } from './book-spread.ts';
import { isSameStack, sharedFraction } from './shared-fraction.ts';
import { spreadRatio } from './spread-correction.ts';

/** A past night of a bed: what the book had said and what the thermometers showed. */
export interface ReadNight {
  /** Days since any fixed day. */
  readonly epochDays: number;
  readonly laid: LaidCovers;
  readonly book: BookNight;
  /** [°C] */
  readonly outsideLowC?: number;
  /** [°C] */
  readonly underCoverLowC?: number;
}

/** What a bed's readings have taught, ready for the next night. */
export interface BedLearning {
  readonly belief: BedBelief;
  /** The stack that the belief is about. */
  readonly laid: LaidCovers;
  /** Nights with a reading outside, and under the cover. */
  readonly outsideNights: number;
  readonly underCoverNights: number;
  /** By how much the ranges are to be widened or narrowed. [0.6…2] */
  readonly spreadRatio: number;
}

/**
 * What the readings of a bed come to. Always worked out anew from the first one, so that nothing learned can go stale or be
 * counted twice.
 *
 * @param nights - In any order; a night without readings teaches nothing.
 * @param now - The stack and the night that it is wanted for.
 * @throws RangeError when a low is not finite or a spread is not positive.
 */
export function bedLearning(
  nights: readonly ReadNight[],
  now: { readonly laid: LaidCovers; readonly epochDays: number },
): BedLearning {
  let { laid } = nights[0] ?? now;
  let belief = bookBelief(bookSpread(laid));
  let epochDays: number | undefined;
  const errorsInSds: number[] = [];
  const reach = (to: { readonly laid: LaidCovers; readonly epochDays: number }) => {
    belief = afterNights(belief, bookSpread(laid), to.epochDays - (epochDays ?? to.epochDays));
    belief = underStack(belief, laid, to.laid);
    ({ laid, epochDays } = to);
  };
  const read = nights.filter(hasReading).toSorted((one, other) => one.epochDays - other.epochDays);
  for (const night of read) {
    reach(night);
    const reading = comparison(night);
    const error = insideErrorSds(belief, reading);
    if (error !== undefined) errorsInSds.push(error);
    belief = afterReading(belief, reading);
  }
  reach(now);
  return {
    belief,
    laid,
    outsideNights: read.filter(({ outsideLowC }) => outsideLowC !== undefined).length,
    underCoverNights: read.filter(({ underCoverLowC }) => underCoverLowC !== undefined).length,
    spreadRatio: spreadRatio(errorsInSds),
  };
}

/**
 * What is believed of a bed under another stack than the one that the belief is about.
 *
 * @param belief - Under `from`.
 */
export function underStack(belief: BedBelief, from: LaidCovers, to: LaidCovers): BedBelief {
  if (isSameStack(from, to)) return belief;
  return afterOtherCovers(belief, bookSpread(from), bookSpread(to), sharedFraction(from, to));
}

function hasReading({ outsideLowC, underCoverLowC }: ReadNight): boolean {
  return outsideLowC !== undefined || underCoverLowC !== undefined;
}

function comparison({ laid, book, outsideLowC, underCoverLowC }: ReadNight): NightReading {
  return {
    ...nightParts(laid, book),
    ...(outsideLowC !== undefined && { outsideErrorK: outsideLowC - book.outsideLowC }),
    ...(underCoverLowC !== undefined && { insideErrorK: underCoverLowC - book.underCoverLowC }),
  };
}
