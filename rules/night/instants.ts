import type { CoverStack, NightInput } from './night-input.ts';

const MS_PER_MIN = 60_000;

/**
 * The instants of a run: even steps, cut wherever covers, blankets or vents change, and the end.
 *
 * @param input - The run.
 * @param stepMin - Longest step. [min]
 * @returns Instants in order, from start to end. [ms since 1970]
 */
export function instantsMs(input: NightInput, stepMin: number): Float64Array {
  const startMs = input.start.getTime();
  const endMs = input.end.getTime();
  const times = new Set<number>([startMs, endMs]);
  for (let atMs = startMs; atMs < endMs; atMs += stepMin * MS_PER_MIN) times.add(atMs);
  const changes = input.changes ?? [];
  for (const at of [
    ...changes.map((change) => change.at),
    ...[input, ...changes].flatMap((part) => dressInstants(part.stack)),
  ]) {
    const atMs = at.getTime();
    if (atMs > startMs && atMs < endMs) times.add(atMs);
  }
  return Float64Array.from(times).sort();
}

/**
 * The stack that lies over the bed from an instant on.
 *
 * @param input - The run.
 * @param atMs - Instant. [ms since 1970]
 * @returns The stack.
 */
export function stackFrom(input: NightInput, atMs: number): CoverStack {
  const change = input.changes?.findLast((candidate) => candidate.at.getTime() <= atMs);
  return change?.stack ?? input.stack;
}

/**
 * Whether something with a beginning and an end is there from an instant on.
 *
 * @param span - Blanket or vent.
 * @param atMs - Instant. [ms since 1970]
 * @returns True from the beginning up to, but not at, the end.
 */
export function isThere(span: { readonly from: Date; readonly to: Date } | undefined, atMs: number): boolean {
  return span !== undefined && span.from.getTime() <= atMs && atMs < span.to.getTime();
}

function dressInstants(stack: CoverStack): Date[] {
  return [stack.blanket, stack.vent].flatMap((span) => (span === undefined ? [] : [span.from, span.to]));
}
