import type { NightRun } from '../balance/night-run.ts';
import { frozenFraction, thawedAt } from '../balance/thaw.ts';
import { windowLow } from '../night/window-summary.ts';

/** Leaves warmer than this for an hour are taken as thawed all through (judgement, from the model's thaw). [°C] */
export const THAWED_ABOVE_C = 1;
const THAWED_FOR_MS = 3_600_000;

/** When leaves can be picked. */
export type PickTime =
  /** The leaves did not freeze. */
  | { readonly kind: 'not-frozen' }
  /** From then on they have thawed; `until` they freeze again, if that is before the end of the day. */
  | { readonly kind: 'thawed'; readonly at: Date; readonly until?: Date }
  /** They stay frozen as long as there is light to pick by. */
  | { readonly kind: 'not-today' };

/** A night and the day after it. */
export interface PickDay {
  /** From before the night to after the day. */
  readonly run: NightRun;
  readonly nightFrom: Date;
  readonly sunrise: Date;
  readonly sunset: Date;
}

/**
 * When leaves can be picked on the day after a night: thawed, and above 1 °C for an hour.
 *
 * @param day - The run, and the times of the day.
 * @returns The first such instant in daylight, or that there is none.
 * @throws RangeError when the times do not lie within the run.
 *
 * @remarks Taken for the leaf at the top of the crop; those deep in a head thaw later. Covers stay as they are in the run.
 * @see `thawedAt`
 */
export function pickTime({ run, nightFrom, sunrise, sunset }: PickDay): PickTime {
  // Up to midday: the next frost at dusk is not what the morning thaws from.
  const midday = new Date((sunrise.getTime() + sunset.getTime()) / 2);
  const low = windowLow(run, 'leafC', nightFrom, midday);
  const lowIndex = nearestIndex(run, low.at.getTime());
  if (frozenFraction(run.leafC[lowIndex] ?? 0) === 0) return { kind: 'not-frozen' };
  const thawed = thawedAt(run, lowIndex);
  if (thawed === undefined) return { kind: 'not-today' };
  const at = warmForAnHour(run, Math.max(thawed.getTime() - THAWED_FOR_MS, low.at.getTime()), thawed.getTime());
  if (at === undefined || at >= sunset.getTime()) return { kind: 'not-today' };
  const from = Math.max(at, sunrise.getTime());
  const until = freezesAgain(run, from, sunset.getTime());
  return { kind: 'thawed', at: new Date(from), ...(until !== undefined && { until: new Date(until) }) };
}

function nearestIndex({ timesMs }: NightRun, atMs: number): number {
  const after = timesMs.findIndex((stepMs) => stepMs >= atMs);
  const before = Math.max(0, after - 1);
  return (timesMs[after] ?? 0) - atMs <= atMs - (timesMs[before] ?? 0) ? after : before;
}

/** The end of the first whole hour above the limit that does not end before the thaw. */
function warmForAnHour(run: NightRun, fromMs: number, thawedMs: number): number | undefined {
  let warmSinceMs: number | undefined;
  for (const [index, atMs] of run.timesMs.entries()) {
    if (atMs < fromMs) continue;
    if ((run.leafC[index] ?? 0) <= THAWED_ABOVE_C) warmSinceMs = undefined;
    else warmSinceMs ??= atMs;
    if (warmSinceMs !== undefined && atMs - warmSinceMs >= THAWED_FOR_MS && atMs >= thawedMs) return atMs;
  }
  return undefined;
}

/** Sap freezes from a degree below zero on; fingers bruise leaves before that. */
function freezesAgain(run: NightRun, fromMs: number, beforeMs: number): number | undefined {
  const index = run.timesMs.findIndex((atMs, at) => atMs > fromMs && atMs < beforeMs && (run.leafC[at] ?? 0) < 0);
  return index < 0 ? undefined : run.timesMs[index];
}
