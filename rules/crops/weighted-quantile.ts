/** A value and how much it counts. */
export interface Weighted {
  readonly valueC: number;
  /** [> 0] */
  readonly weight: number;
}

/** Weights are sums of thirds and quarters; so near to a boundary counts as on it. */
const ROUNDING = 1e-9;

/**
 * The value below which the given share of the weight lies.
 *
 * @param values - At least one, each with weight above 0.
 * @param shareFraction - 0.5 for the median. [0…1]
 * @returns One of the values, or half-way between two where the share falls exactly between them. [°C]
 * @throws RangeError when there is no value.
 */
export function weightedQuantileC(values: readonly Weighted[], shareFraction: number): number {
  const fromCold = [...values].sort((a, b) => a.valueC - b.valueC);
  const wanted = shareFraction * fromCold.reduce((sum, value) => sum + value.weight, 0);
  const reached = firstReaching(fromCold, wanted - ROUNDING);
  const passed = firstReaching(fromCold, wanted + ROUNDING);
  return (reached + passed) / 2;
}

function firstReaching(fromCold: readonly Weighted[], wanted: number): number {
  let below = 0;
  for (const value of fromCold) {
    below += value.weight;
    if (below >= wanted) return value.valueC;
  }
  const warmest = fromCold.at(-1);
  if (warmest === undefined) throw new RangeError('values is empty: at least one value is needed');
  return warmest.valueC;
}
