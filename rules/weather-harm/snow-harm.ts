import type { CoverKey } from '../covers/cover-key.ts';
import { STRUCTURES } from './structure-table.ts';

/** Snow weighs 50 to 400 kg m⁻³ (`snow-load`): fallen in frost about 100, fallen near or above freezing 250 (judgement). */
const DRY_SNOW_KG_PER_M3 = 100;
const WET_SNOW_KG_PER_M3 = 250;
/** Snow falling in air warmer than this is wet. [°C] */
const WET_ABOVE_C = -1;
/** From half of what it bears on, snow is to come off before more falls (judgement). */
const CLEAR_FROM_FRACTION = 0.5;
/** Less snow than this neither presses nor warms. */
const THINNEST_M = 0.02;

/** Snow that falls on a cover. */
export interface Snowfall {
  /** Depth of the fresh snow. [m] */
  readonly depthM: number;
  /** Rain and melted snow in it, where a service tells. [kg m⁻²] */
  readonly waterKgPerM2?: number;
  /** Air while it falls. [°C] */
  readonly airC: number;
}

/** What new snow does to the cover that carries it. */
export interface SnowHarm {
  readonly kind: 'snow';
  readonly cover: CoverKey;
  readonly depthM: number;
  readonly loadKgPerM2: number;
  /** What such a structure usually bears. [kg m⁻²] */
  readonly bearsKgPerM2: number;
  /** `breaks`: more than it bears; `clear` it gently; `insulates`: dry and light, it can stay until the sun is wanted. */
  readonly advice: 'breaks' | 'clear' | 'insulates';
}

/**
 * Weight of fresh snow.
 *
 * @param snowfall - Depth, water and air. [m, kg m⁻², °C]
 * @returns Load on what it lies on. [kg m⁻²]
 * @throws RangeError when the depth is negative.
 *
 * @remarks The water that falls is the load, whatever its depth; without it, depth times density. Nothing is taken to slide off.
 * @see snow-load
 */
export function snowLoadKgPerM2({ depthM, waterKgPerM2, airC }: Snowfall): number {
  if (!(depthM >= 0)) throw new RangeError(`depthM ${depthM} is below 0`);
  const density = airC > WET_ABOVE_C ? WET_SNOW_KG_PER_M3 : DRY_SNOW_KG_PER_M3;
  return waterKgPerM2 ?? density * depthM;
}

/**
 * What new snow does to a cover.
 *
 * @param cover - The outermost cover that carries snow.
 * @param snowfall - What falls on it.
 * @returns What to do; `undefined` for a dusting, and for covers that carry no snow.
 * @see snow-load
 */
export function snowHarm(cover: CoverKey, snowfall: Snowfall): SnowHarm | undefined {
  const bearsKgPerM2 = STRUCTURES[cover]?.bearsKgPerM2;
  if (bearsKgPerM2 === undefined || snowfall.depthM < THINNEST_M) return undefined;
  const loadKgPerM2 = snowLoadKgPerM2(snowfall);
  const share = loadKgPerM2 / bearsKgPerM2;
  const advice = share >= 1 ? 'breaks' : share >= CLEAR_FROM_FRACTION ? 'clear' : 'insulates';
  return { kind: 'snow', cover, depthM: snowfall.depthM, loadKgPerM2, bearsKgPerM2, advice };
}
