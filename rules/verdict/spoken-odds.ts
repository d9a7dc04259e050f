/** Odds as people say them, with the chance each stands for, rising. */
const SPOKEN: readonly (readonly [chance: number, words: string])[] = [
  [0.005, 'next to none'],
  [0.01, '1 in 100'],
  [0.02, '1 in 50'],
  [0.05, '1 in 20'],
  [0.1, '1 in 10'],
  [0.2, '1 in 5'],
  [0.25, '1 in 4'],
  [0.33, '1 in 3'],
  [0.4, '2 in 5'],
  [0.5, 'about even'],
  [0.6, 'better than even'],
  [0.67, '2 in 3'],
  [0.75, '3 in 4'],
  [0.8, '4 in 5'],
  [0.9, '9 in 10'],
  [0.95, '19 in 20'],
  [0.99, 'almost certain'],
];

/**
 * A chance in words, such as "1 in 50" or "about even".
 *
 * @param chance - [0…1]
 * @returns The nearest way of saying it, by the ratio of the odds.
 * @throws RangeError when `chance` is outside 0…1.
 *
 * @see common-practice
 */
export function spokenOdds(chance: number): string {
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`chance ${chance} is outside 0…1`);
  const wanted = logOdds(chance);
  let nearest = '';
  let leastGap = Number.POSITIVE_INFINITY;
  for (const [said, words] of SPOKEN) {
    const gap = Math.abs(logOdds(said) - wanted);
    if (gap <= leastGap) [nearest, leastGap] = [words, gap];
  }
  return nearest;
}

/** Kept finite, so that the ends compare like all others. */
function logOdds(chance: number): number {
  const inside = Math.max(1e-9, Math.min(1 - 1e-9, chance));
  return Math.log(inside / (1 - inside));
}
