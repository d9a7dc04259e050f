import { MS_PER_S } from '../durations.ts';
import { type OutsideInstant, outsideAt, type PreparedWeather, preparedWeather } from '../sky/prepared-weather.ts';
import { advance, type Scene, settleStart } from './balance.ts';
import type { Bed } from './bed.ts';
import type { BedState } from './bed-state.ts';
import { type EnergyLedger, energyLedger, groundHeatJPerM2 } from './energy-ledger.ts';
import { checkedInput, checkedPrepared } from './input-check.ts';
import { instantsMs, isThere, type Stretch, stretchesOf } from './instants.ts';
import { bedUnder } from './lay-bed.ts';
import type { NightInput } from './night-input.ts';
import { blankSurroundings, exposureOf } from './surroundings.ts';
import { Tended } from './tended.ts';

const DEFAULT_STEP_MIN = 10;
const SERIES_COUNT = 8;

/** Choices of a run that do not change what is modelled. */
export interface NightRunOptions {
  /** Longest step. [min, 1…30; default 10] */
  readonly stepMin?: number;
  /** Weather that was worked out for several beds of the place. */
  readonly prepared?: PreparedWeather;
  /** Soil, wall and water at the end of an earlier run, instead of the soil profile. */
  readonly from?: BedState;
  /** Is told after every step where the heat came from and went to. */
  readonly onStep?: (ledger: EnergyLedger) => void;
}

/** Temperatures of a bed at every instant of a run; all arrays have the same length. */
export interface NightRun {
  readonly timesMs: Float64Array;
  /** Exposed leaf at the top of the crop: the number that decides. */
  readonly leafC: Float64Array;
  /** Air round the crop. */
  readonly airC: Float64Array;
  /** Unshielded thermometer among the leaves. */
  readonly thermometerC: Float64Array;
  readonly soilSurfaceC: Float64Array;
  readonly soil10CmC: Float64Array;
  /** Outer face of the outermost cover; air at crop level when there is none. */
  readonly coverC: Float64Array;
  /** Forecast air temperature at 2 m. */
  readonly screenC: Float64Array;
  /** Air at crop level in the open beside the bed. */
  readonly cropLevelAirC: Float64Array;
  /** Covers that lie over the bed in the step that ends here. */
  readonly coverCount: Uint8Array;
  readonly end: BedState;
}

/**
 * Temperatures of leaf, air and soil of a bed under its covers, by the energy balance of all layers from sky to deep soil.
 *
 * @param input - Site, weather, soil, crop and covers.
 * @param options - Step, shared weather, start from an earlier run.
 * @returns Temperatures at every instant, and what a later run can start from.
 * @throws RangeError naming parameter, value and limit when the input is out of range.
 *
 * @remarks
 * Leave out the first hour: the light parts start in steady state. Begin at the sunrise before the night that matters, or the top soil lacks
 * the heat of the day. Results are not finer than about 0.5 K; a clear calm night under a single cover is good to about 1.2 K.
 */
export function nightRun(input: NightInput, options: NightRunOptions = {}): NightRun {
  const stepMin = options.stepMin ?? DEFAULT_STEP_MIN;
  checkedInput(input, stepMin);
  const weather = options.prepared ?? preparedWeather(input.site, input.weather, input.start, input.end, stepMin);
  checkedPrepared(weather, input);
  const record = blankRecord(instantsMs(input, stepMin));
  const tended = input.tending && new Tended(input.tending);
  let carried = options.from;
  let index = 0;
  for (const stretch of stretchesOf(input)) {
    const scene = openScene(input, stretch, outsideAt(weather, stretch.fromMs), carried);
    if (index === 0) note(record, index++, scene, outsideAt(weather, stretch.fromMs));
    index = runStretch(record, index, { scene, stretch, weather, tended }, options.onStep);
    carried = bedState(scene.bed, carried);
  }
  return { ...record, end: carried ?? { soilC: [] } };
}

/** A stretch on its way. */
interface Going {
  readonly scene: Scene;
  readonly stretch: Stretch;
  readonly weather: PreparedWeather;
  readonly tended: Tended | undefined;
}

/** Runs to the end of a stretch; returns the index of the instant after it. */
function runStretch(
  record: Omit<NightRun, 'end'>,
  firstIndex: number,
  { scene, stretch, weather, tended }: Going,
  onStep: NightRunOptions['onStep'],
): number {
  let fromMs = stretch.fromMs;
  let index = firstIndex;
  for (; index < record.timesMs.length; index++) {
    const atMs = record.timesMs[index] ?? 0;
    if (atMs > stretch.toMs) break;
    const isChanged = dress(scene, fromMs, tended?.opening(fromMs, record.thermometerC[index - 1] ?? Number.NaN));
    const outside = outsideAt(weather, atMs);
    const groundBefore = onStep === undefined ? 0 : groundHeatJPerM2(scene.bed);
    advance(scene, outside, (atMs - fromMs) / MS_PER_S, isChanged);
    onStep?.(energyLedger(scene, atMs, groundBefore));
    note(record, index, scene, outside);
    fromMs = atMs;
  }
  return index;
}

function openScene(
  input: NightInput,
  { stack }: Stretch,
  outside: OutsideInstant,
  carried: BedState | undefined,
): Scene {
  const bed = bedUnder(input, stack, outside.screenC, outside.vapourHPa, carried);
  const exposure = exposureOf(input.site, stack, input.canopy.leafSizeM);
  const scene: Scene = { bed, exposure, around: blankSurroundings(), isBlanketed: false, vent: undefined };
  dress(scene, outside.atMs, undefined);
  settleStart(scene, outside);
  return scene;
}

/** Lays on or takes off, opens or shuts what the stack or a grower's hand says for the step from this instant; true when something changed. */
function dress(scene: Scene, fromMs: number, byHand: Scene['vent']): boolean {
  const { blanket, vent } = scene.bed.stack;
  const { isBlanketed: wasBlanketed, vent: wasOpen } = scene;
  scene.isBlanketed = isThere(blanket, fromMs);
  scene.vent = scene.isBlanketed ? undefined : isThere(vent, fromMs) ? vent : byHand;
  return scene.isBlanketed !== wasBlanketed || scene.vent !== wasOpen;
}

function bedState(bed: Bed, carried: BedState | undefined): BedState {
  return {
    ...carried,
    soilC: bed.ground.column.temperaturesC(),
    ...(bed.path && { pathSoilC: bed.path.column.temperaturesC() }),
    ...(bed.wall && { wallC: bed.wall.node.nowC }),
    ...(bed.jugs && { waterC: bed.jugs.node.nowC }),
  };
}

/** All series lie in one buffer: one large allocation instead of eight. */
function blankRecord(timesMs: Float64Array): Omit<NightRun, 'end'> {
  const count = timesMs.length;
  const buffer = new ArrayBuffer(SERIES_COUNT * count * Float64Array.BYTES_PER_ELEMENT);
  const series = (i: number) => new Float64Array(buffer, i * count * Float64Array.BYTES_PER_ELEMENT, count);
  return {
    timesMs,
    leafC: series(0),
    airC: series(1),
    thermometerC: series(2),
    soilSurfaceC: series(3),
    soil10CmC: series(4),
    coverC: series(5),
    screenC: series(6),
    cropLevelAirC: series(7),
    coverCount: new Uint8Array(count),
  };
}

function note(record: Omit<NightRun, 'end'>, index: number, scene: Scene, outside: OutsideInstant): void {
  const { bed, around } = scene;
  const leafC = bed.crop.exposedLeaf.nowC;
  const airC = bed.innermost?.below.air.nowC ?? around.cropAirC;
  record.leafC[index] = leafC;
  record.airC[index] = airC;
  record.thermometerC[index] = (airC + leafC) / 2;
  record.soilSurfaceC[index] = bed.ground.surface.nowC;
  record.soil10CmC[index] = bed.ground.column.tenCmC();
  record.coverC[index] = bed.outermost?.upper.nowC ?? around.cropAirC;
  record.screenC[index] = outside.screenC;
  record.cropLevelAirC[index] = around.cropAirC;
  record.coverCount[index] = bed.covers.length;
}
