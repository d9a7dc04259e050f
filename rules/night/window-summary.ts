import type { NightRun } from '../balance/night-run.ts';

/** The temperatures that a run keeps. */
export type RunSeries =
  | 'leafC'
  | 'airC'
  | 'thermometerC'
  | 'soilSurfaceC'
  | 'soil10CmC'
  | 'coverC'
  | 'screenC'
  | 'cropLevelAirC';

/** A lowest or highest temperature and when it was. */
export interface Extreme {
  readonly valueC: number;
  readonly at: Date;
}

/**
 * The lowest value of a series within a window, its ends included.
 *
 * @param run - The run.
 * @param series - Which temperature.
 * @param from - Beginning of the window, within the run.
 * @param to - End of the window, within the run.
 * @returns Lowest temperature and its first instant. [°C]
 * @throws RangeError when the window does not lie within the run.
 */
export function windowLow(run: NightRun, series: RunSeries, from: Date, to: Date): Extreme {
  return extreme(run, series, from, to, (candidate, best) => candidate < best);
}

/**
 * The highest value of a series within a window, its ends included.
 *
 * @param run - The run.
 * @param series - Which temperature.
 * @param from - Beginning of the window, within the run.
 * @param to - End of the window, within the run.
 * @returns Highest temperature and its first instant. [°C]
 * @throws RangeError when the window does not lie within the run.
 */
export function windowHigh(run: NightRun, series: RunSeries, from: Date, to: Date): Extreme {
  return extreme(run, series, from, to, (candidate, best) => candidate > best);
}

/**
 * When a series first reaches a limit within a window; between two steps it is taken to rise evenly.
 *
 * @param run - The run.
 * @param series - Which temperature.
 * @param limitC - The limit. [°C]
 * @param from - Beginning of the window, within the run.
 * @param to - End of the window, within the run.
 * @returns The instant; `from` if the limit is reached already; `undefined` if the limit is not reached.
 * @throws RangeError when the window does not lie within the run.
 */
export function firstReaches(run: NightRun, series: RunSeries, limitC: number, from: Date, to: Date): Date | undefined {
  let before: Point | undefined;
  for (const point of points(run, series, from, to)) {
    if (point.valueC >= limitC) {
      if (before === undefined) return from;
      const share = (limitC - before.valueC) / (point.valueC - before.valueC);
      return new Date(Math.round(before.atMs + share * (point.atMs - before.atMs)));
    }
    before = point;
  }
  return undefined;
}

/**
 * The value of a series at an instant, between two steps on the line that joins them.
 *
 * @param run - The run.
 * @param series - Which temperature.
 * @param at - Instant within the run.
 * @returns Temperature. [°C]
 * @throws RangeError when the instant does not lie within the run.
 */
export function valueAtC(run: NightRun, series: RunSeries, at: Date): number {
  const [point] = points(run, series, at, at);
  return point?.valueC ?? Number.NaN;
}

function extreme(
  run: NightRun,
  series: RunSeries,
  from: Date,
  to: Date,
  isBetter: (candidateC: number, bestC: number) => boolean,
): Extreme {
  const [first, ...rest] = points(run, series, from, to);
  let best = first ?? { atMs: Number.NaN, valueC: Number.NaN };
  for (const point of rest) if (isBetter(point.valueC, best.valueC)) best = point;
  return { valueC: best.valueC, at: new Date(best.atMs) };
}

interface Point {
  readonly atMs: number;
  readonly valueC: number;
}

/** The points of a series within a window, with one on each end of it. */
function points(run: NightRun, series: RunSeries, from: Date, to: Date): Point[] {
  const { timesMs } = run;
  const [fromMs, toMs] = [from.getTime(), to.getTime()];
  const lastMs = timesMs[timesMs.length - 1] ?? Number.NaN;
  if (!(fromMs >= (timesMs[0] ?? Number.NaN) && toMs <= lastMs && fromMs <= toMs)) {
    throw new RangeError(`window from ${words(from)} to ${words(to)} does not lie within the run`);
  }
  const found = [pointAt(run, series, fromMs)];
  for (const [i, atMs] of timesMs.entries()) {
    if (atMs > fromMs && atMs < toMs) found.push({ atMs, valueC: run[series][i] ?? Number.NaN });
  }
  if (toMs > fromMs) found.push(pointAt(run, series, toMs));
  return found;
}

function pointAt(run: NightRun, series: RunSeries, atMs: number): Point {
  const after = run.timesMs.findIndex((stepMs) => stepMs >= atMs);
  const afterMs = run.timesMs[after] ?? Number.NaN;
  const valueC = run[series][after] ?? Number.NaN;
  if (afterMs === atMs) return { atMs, valueC };
  const beforeMs = run.timesMs[after - 1] ?? Number.NaN;
  const beforeC = run[series][after - 1] ?? Number.NaN;
  return { atMs, valueC: beforeC + ((atMs - beforeMs) / (afterMs - beforeMs)) * (valueC - beforeC) };
}

function words(at: Date): string {
  return Number.isNaN(at.getTime()) ? 'no instant' : at.toISOString();
}
