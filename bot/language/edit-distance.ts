/**
 * Slips of the finger between two words: letters left out, added, swapped with a neighbour or mistaken. Counted only as
 * far as `most`; anything further is `most + 1`. (Optimal string alignment distance; the packages at hand count a swap,
 * the commonest slip, as two.)
 */
export function slipsBetween(one: string, other: string, most: number): number {
  if (Math.abs(one.length - other.length) > most) return most + 1;
  let before: number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    let least = i;
    for (let j = 1; j <= other.length; j += 1) {
      const slips = cheapest(one, other, i, j, { before, row, next });
      next.push(slips);
      least = Math.min(least, slips);
    }
    if (least > most) return most + 1;
    before = row;
    row = next;
  }
  return Math.min(row[other.length] ?? 0, most + 1);
}

interface Rows {
  readonly before: readonly number[];
  readonly row: readonly number[];
  readonly next: readonly number[];
}

function cheapest(one: string, other: string, i: number, j: number, { before, row, next }: Rows): number {
  const same = one[i - 1] === other[j - 1];
  const slips = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + (same ? 0 : 1));
  const swapped = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
  return swapped ? Math.min(slips, (before[j - 2] ?? 0) + 1) : slips;
}
