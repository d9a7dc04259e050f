import { MS_PER_S } from '../../rules/index.ts';

/** Waits double from the first to the longest, each shortened at random so that many do not come back together. */
const FIRST_S = 10;
const LONGEST_S = 300;

/**
 * When to try a delivery again.
 *
 * @param attempts - So far, at least 1.
 * @param askedS - How long the service wants to be left alone, where it says.
 */
export function tryAgainAt(now: Date, attempts: number, askedS = 0, random = Math.random): Date {
  const fullS = Math.min(LONGEST_S, FIRST_S * 2 ** Math.min(attempts - 1, 20));
  const waitS = fullS * (0.5 + random() / 2);
  return new Date(now.getTime() + Math.max(waitS, askedS * (1 + random() / 10)) * MS_PER_S);
}
