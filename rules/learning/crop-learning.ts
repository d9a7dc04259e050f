import { normalFraction } from '../verdict/normal-fraction.ts';

/**
 * What a garden's own outcomes teach about a crop. One number, the shift of the whole tolerance (positive: hardier, so
 * that every limit lies lower), starts at zero with the published spread. Each outcome is a threshold observation with
 * normal errors (a probit likelihood), or with a small chance about something else; the posterior is matched by a normal with
 * the same mean and variance after each (assumed-density filtering), which is closed form and does not depend on a step size.
 */

/** Belief about how much hardier than the table a crop is here. */
export interface HardinessBelief {
  /** [K] */
  readonly hardierK: number;
  /** [K², > 0] */
  readonly varianceK2: number;
}

/** What was seen after a cold night. */
export const OUTCOMES = ['no-mark', 'leaf-burn', 'lost'] as const;

export type OutcomeKind = (typeof OUTCOMES)[number];

export interface ColdNight {
  /** Leaf (or organ) low computed for the night. [°C] */
  readonly organLowC: number;
  /** Its standard deviation. [K, > 0] */
  readonly sdK: number;
  /** First-mark limit of the table at that night's hardening. [°C] */
  readonly firstMarkC: number;
  /** Median lethal limit of the table at that night's hardening, at most `firstMarkC`. [°C] */
  readonly lt50C: number;
}

/** Slugs, sunscald, the wrong bed: so many answers in a hundred tell nothing of the frost (`judgement`). */
const UNRELATED_FRACTION = 0.05;

/** What is believed before any outcome. */
export function bookHardiness(cropSdK: number): HardinessBelief {
  if (!(cropSdK > 0)) throw new RangeError(`cropSdK ${cropSdK} must be above 0`);
  return { hardierK: 0, varianceK2: cropSdK ** 2 };
}

/**
 * The belief after one outcome.
 *
 * @throws RangeError when the night is not a proper one: `sdK` not above 0, `lt50C` above `firstMarkC`, or not finite.
 */
export function afterOutcome(belief: HardinessBelief, night: ColdNight, seen: OutcomeKind): HardinessBelief {
  if (!(night.sdK > 0) || !(night.lt50C <= night.firstMarkC) || !Number.isFinite(night.organLowC)) {
    throw new RangeError(`sdK ${night.sdK}, lt50C ${night.lt50C} or organLowC ${night.organLowC} is out of range`);
  }
  switch (seen) {
    case 'no-mark':
      return threshold(belief, night, night.firstMarkC, false);
    case 'lost':
      return threshold(belief, night, night.lt50C, true);
    case 'leaf-burn':
      return threshold(threshold(belief, night, night.firstMarkC, true), night, night.lt50C, false);
  }
}

/** Was the organ, at its true low, colder than its shifted limit? */
function threshold(belief: HardinessBelief, night: ColdNight, limitC: number, colder: boolean): HardinessBelief {
  const totalK2 = belief.varianceK2 + night.sdK ** 2;
  const sign = colder ? -1 : 1;
  const z = (sign * (night.organLowC - limitC + belief.hardierK)) / Math.sqrt(totalK2);
  const ratio = slope(z);
  return {
    hardierK: belief.hardierK + (sign * belief.varianceK2 * ratio) / Math.sqrt(totalK2),
    // Against all odds it would leave the belief less sure; it is then rather taken as about something else.
    varianceK2: belief.varianceK2 - (belief.varianceK2 ** 2 / totalK2) * Math.max(0, ratio * (ratio + z)),
  };
}

/** Derivative of the logarithm of the chance of what was seen, half of the unrelated answers agreeing by luck. */
function slope(z: number): number {
  const related = 1 - UNRELATED_FRACTION;
  const density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  return (related * density) / (UNRELATED_FRACTION / 2 + related * normalFraction(z));
}
