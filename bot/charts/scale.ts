/** Maps a range of values to pixels, linearly. */
export type Scale = (value: number) => number;

export type Range = readonly [low: number, high: number];

export function scale(values: Range, pixels: Range): Scale {
  const perUnit = (pixels[1] - pixels[0]) / (values[1] - values[0]);
  return (value) => pixels[0] + (value - values[0]) * perUnit;
}

const STEPS = [1, 2, 5, 10, 20, 50];
const FEWEST_LINES = 3;

/** Round values for grid lines: the largest step of 1, 2, 5, 10, 20, 50 that gives at least four of them. */
export function roundTicks([low, high]: Range): number[] {
  const step = STEPS.findLast((each) => (high - low) / each >= FEWEST_LINES) ?? 1;
  const first = Math.ceil(low / step);
  const count = Math.floor(high / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => (first + index) * step + 0);
}

/**
 * Places for labels that would like to stand with their middle at `wanted`: kept in order, inside the bounds, and as far apart
 * as their sizes ask for. In the order given.
 */
export function spreadApart(
  labels: readonly { readonly wanted: number; readonly size: number }[],
  bounds: Range,
): number[] {
  const order = labels.map((label, index) => ({ ...label, index })).sort((a, b) => a.wanted - b.wanted);
  const starts: number[] = [];
  let free = bounds[0];
  for (const { wanted, size } of order) {
    const start = Math.max(free, wanted - size / 2);
    starts.push(start);
    free = start + size;
  }
  let end = bounds[1];
  for (const [rank, { size }] of [...order.entries()].reverse()) {
    const start = Math.min(starts[rank] ?? end, end - size);
    starts[rank] = start;
    end = start;
  }
  const places = new Array<number>(labels.length).fill(0);
  for (const [rank, { index, size }] of order.entries()) places[index] = (starts[rank] ?? 0) + size / 2;
  return places;
}
