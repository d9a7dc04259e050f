import { MS_PER_H } from '../../rules/index.ts';
import type { ForecastColumnName, ForecastColumns, ForecastNote, HourlyColumn } from './forecast.ts';

/** More than any service sends: a longer one is a faulty or hostile answer. */
const MOST_HOURS = 120 * 24;

/** Consecutive hours: hour `i` is `firstMs` + `i` hours. */
export interface HourGrid {
  readonly firstMs: number;
  readonly hours: number;
}

/** A value from one instant up to, not including, another; already in our unit. */
export interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
  readonly value: number;
}

/** One part of an answer, under the service's own name for it. */
export interface Layer {
  readonly column: ForecastColumnName;
  readonly name: string;
  readonly stretches: readonly Stretch[];
  /** The value is an amount for the whole stretch and is spread evenly over its hours. */
  readonly spread?: boolean;
}

/** A value that holds at one instant only. */
export function atInstant(atMs: number, value: number): Stretch {
  return { fromMs: atMs, toMs: atMs + 1, value };
}

/** The hours, counted from `phaseMs`, from the first to the last stretch; `undefined` when there are none or absurdly many. */
export function gridOver(stretches: readonly Stretch[], phaseMs = 0): HourGrid | undefined {
  let fromMs = Number.POSITIVE_INFINITY;
  let toMs = Number.NEGATIVE_INFINITY;
  for (const stretch of stretches) {
    fromMs = Math.min(fromMs, stretch.fromMs);
    toMs = Math.max(toMs, stretch.toMs);
  }
  const firstMs = phaseMs + Math.ceil((fromMs - phaseMs) / MS_PER_H) * MS_PER_H;
  const hours = Math.ceil((toMs - firstMs) / MS_PER_H);
  return hours >= 1 && hours <= MOST_HOURS ? { firstMs, hours } : undefined;
}

interface Limits {
  readonly low: number;
  readonly high: number;
  /** A value outside by no more than this is rounding and is moved to the limit. */
  readonly slack: number;
}

const TEMPERATURE: Limits = { low: -70, high: 60, slack: 0 };

/** What can be true on a field; anything beyond is a fault of the service (thousands of degrees and fill values were seen). */
const LIMITS: Readonly<Record<ForecastColumnName, Limits>> = {
  screenC: TEMPERATURE,
  dewPointC: TEMPERATURE,
  humidityFraction: { low: 0.01, high: 1, slack: 0.05 },
  cloudFraction: { low: 0, high: 1, slack: 0.05 },
  wind10MPerS: { low: 0, high: 75, slack: 0 },
  gustMPerS: { low: 0, high: 110, slack: 0 },
  precipitationMm: { low: 0, high: 300, slack: 0.5 },
  newSnowM: { low: 0, high: 1, slack: 0.01 },
  snowDepthM: { low: 0, high: 20, slack: 0.1 },
  globalWPerM2: { low: 0, high: 1500, slack: 20 },
  soil0C: TEMPERATURE,
  soil6C: TEMPERATURE,
  soil18C: TEMPERATURE,
};

/** The value within its column's limits, or `undefined` when it is absurd. */
export function plausible(column: ForecastColumnName, value: number): number | undefined {
  const { low, high, slack } = LIMITS[column];
  if (!(value >= low - slack && value <= high + slack)) return undefined;
  return Math.min(high, Math.max(low, value));
}

/** Lays layers on the hours. Values that no field can have are left out and noted; where stretches overlap the later one counts. */
export function laidOut(
  grid: HourGrid,
  layers: readonly Layer[],
): { readonly columns: ForecastColumns; readonly notes: readonly ForecastNote[] } {
  const columns: Partial<Record<ForecastColumnName, HourlyColumn>> = {};
  const notes: ForecastNote[] = [];
  for (const layer of layers) {
    const { column, absurd } = laidOutLayer(grid, layer);
    if (absurd) notes.push({ code: 'layer-refused', layer: layer.name, reason: 'absurd-values' });
    if (column.some((value) => value !== undefined)) columns[layer.column] = column;
  }
  return { columns, notes };
}

function laidOutLayer(grid: HourGrid, layer: Layer): { column: (number | undefined)[]; absurd: boolean } {
  const column = new Array<number | undefined>(grid.hours).fill(undefined);
  let absurd = false;
  for (const { fromMs, toMs, value } of layer.stretches) {
    const share = layer.spread ? value / Math.max(1, (toMs - fromMs) / MS_PER_H) : value;
    const kept = plausible(layer.column, share);
    if (kept === undefined) absurd = true;
    const first = Math.max(0, Math.ceil((fromMs - grid.firstMs) / MS_PER_H));
    const end = Math.min(grid.hours, Math.ceil((toMs - grid.firstMs) / MS_PER_H));
    if (kept !== undefined && first < end) column.fill(kept, first, end);
  }
  return { column, absurd };
}
