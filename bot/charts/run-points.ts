import type { CurvePoint } from './curve-chart.ts';

/** The values of a run between two instants. */
export function pointsOf(timesMs: Float64Array, values: Float64Array, from: Date, to: Date): CurvePoint[] {
  const points: CurvePoint[] = [];
  timesMs.forEach((atMs, index) => {
    const tempC = values[index];
    if (tempC === undefined || atMs < from.getTime() || atMs > to.getTime()) return;
    points.push({ at: new Date(atMs), tempC });
  });
  return points;
}
