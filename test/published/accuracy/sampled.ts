import fc from 'fast-check';

/** The same draws on every machine, so that the table stays the same; the property tests draw anew each time. */
const SEED = 20251121;
const DRAWS = 200;
const FINE = 1_000_000;

/** Random inputs for a line of the table, told apart by their number. */
export function sampled<T>(arbitrary: fc.Arbitrary<T>, count = DRAWS): readonly (readonly [id: string, drawn: T])[] {
  const drawn = fc.sample(fc.noBias(arbitrary), { seed: SEED, numRuns: count });
  return drawn.map((value, index) => [`draw ${index + 1}`, value]);
}

/** A number drawn evenly: the usual arbitrary prefers the ends, where a mean error means nothing. */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  return fc.nat(FINE).map((share) => min + ((max - min) * share) / FINE);
}
