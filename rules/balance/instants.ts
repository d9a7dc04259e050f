import { MS_PER_MIN } from '../durations.ts';
import type { CoverStack, NightInput } from './night-input.ts';

/** A stretch of a run under one stack. */
export interface Stretch {
  readonly stack: CoverStack;
  readonly fromMs: number;
  readonly toMs: number;
}

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
  const stepMs = stepMin * MS_PER_MIN;
  const steps = Math.ceil((endMs - startMs) / stepMs);
  const cuts = cutsMs(input).filter((atMs) => atMs > startMs && atMs < endMs && (atMs - startMs) % stepMs !== 0);
  const times = new Float64Array(steps + 1 + new Set(cuts).size);
  for (let i = 0; i < steps; i++) times[i] = startMs + i * stepMs;
  times[steps] = endMs;
  if (times.length > steps + 1) times.set([...new Set(cuts)], steps + 1);
  return times.length > steps + 1 ? times.sort() : times;
}

/**
 * The stacks of a run in order of time.
 *
 * @param input - The run.
 * @returns At least one stretch; together they reach from start to end.
 */
export function stretchesOf(input: NightInput): Stretch[] {
  const startMs = input.start.getTime();
  const endMs = input.end.getTime();
  const changes = (input.changes ?? []).map(({ at, stack }) => ({ atMs: at.getTime(), stack }));
  const parts = [{ atMs: startMs, stack: input.stack }, ...changes].filter(({ atMs }) => atMs < endMs);
  return parts
    .map(({ atMs, stack }, i) => ({
      stack,
      fromMs: Math.max(startMs, atMs),
      toMs: Math.max(startMs, parts[i + 1]?.atMs ?? endMs),
    }))
    .filter(({ fromMs, toMs }) => fromMs < toMs);
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

function cutsMs(input: NightInput): number[] {
  const changes = input.changes ?? [];
  const spans = [input, ...changes].flatMap(({ stack }) => [stack.blanket, stack.vent]);
  const dress = spans.flatMap((span) => (span === undefined ? [] : [span.from.getTime(), span.to.getTime()]));
  return [...changes.map(({ at }) => at.getTime()), ...dress];
}
