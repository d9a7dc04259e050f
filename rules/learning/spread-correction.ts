/** Weight of the book's own spread, in nights (judgement). */
const BOOK_NIGHTS = 20;
/** A spread is never narrowed or widened beyond these factors (judgement). */
const NARROWEST_RATIO = 0.6;
const WIDEST_RATIO = 2;

/**
 * By how much the stated spreads should be multiplied, from how past nights fell within them. The posterior mean scale of
 * normal errors, with the book counted as twenty nights that fell just as stated.
 *
 * @param errorsInSds - Measured minus predicted, divided by the spread stated at the time. One per night.
 * @returns Factor on the standard deviation. [0.6…2]
 * @throws RangeError when an error is not finite.
 */
export function spreadRatio(errorsInSds: readonly number[]): number {
  let sum = BOOK_NIGHTS;
  for (const error of errorsInSds) {
    if (!Number.isFinite(error)) throw new RangeError(`error ${error} is not a number`);
    sum += error * error;
  }
  const ratio = Math.sqrt(sum / (BOOK_NIGHTS + errorsInSds.length));
  return Math.max(NARROWEST_RATIO, Math.min(WIDEST_RATIO, ratio));
}
