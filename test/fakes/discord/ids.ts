/** Discord's ids count milliseconds from here. */
const EPOCH_MS = 1_420_070_400_000n;
let count = 0n;

/** A new id, 18 or 19 digits as Discord's are, later ones greater. */
export function newId(nowMs = Date.now()): string {
  count = (count + 1n) % 4096n;
  return (((BigInt(nowMs) - EPOCH_MS) << 22n) | count).toString();
}

export function idTimeMs(id: string): number {
  return Number((BigInt(id) >> 22n) + EPOCH_MS);
}
