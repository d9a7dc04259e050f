/** Weight of the book's own spread, in nights (`judgement`). */
const BOOK_NIGHTS = 20;
/** A spread is never narrowed or widened beyond these factors (`judgement`). */
const NARROWEST_RATIO = 0.6;
const WIDEST_RATIO = 2;
/** One night counts at most as this many standard deviations: a single odd reading says nothing of a spread (`judgement`). */
const LARGEST_ERROR_SDS = 3;

/**
 * By how much the stated spreads should be multiplied, from how past nights fell within them. The posterior mean scale of
 * normal errors, with the book counted as twenty nights that fell just as stated.
 *
 * @param errorsInSds - Measured minus expected, divided by the spread expected then, before any correction. One per night.
 * @returns Factor on the standard deviation. [0.6…2]
 * @throws RangeError when an error is not finite.
 */
export function spreadRatio(errorsInSds: readonly number[]): number {
  let sum = BOOK_NIGHTS;
  for (const error of errorsInSds) {
    if (!Number.isFinite(error)) throw new RangeError(`error ${error} is not a number`);
    sum += Math.min(LARGEST_ERROR_SDS, Math.abs(error)) ** 2;
  }
  const ratio = Math.sqrt(sum / (BOOK_NIGHTS + errorsInSds.length));
  return Math.max(NARROWEST_RATIO, Math.min(WIDEST_RATIO, ratio));
}
