import type { CoverKey } from '../covers/cover-key.ts';
import { COVERS } from '../covers/cover-table.ts';
import { type Snowfall, type SnowHarm, snowHarm } from './snow-harm.ts';
import { STRUCTURES } from './structure-table.ts';
import { type WindHarm, windHarm } from './wind-harm.ts';

/** Weather of the hours ahead that breaks things or takes the good out of covers. What is not told is absent. */
export interface HarmfulWeather {
  readonly gustMPerS?: number;
  readonly snowfall?: Snowfall;
  /** Rain in the hours before the first frost. [mm] */
  readonly rainBeforeFreezeMm?: number;
  /** Rain that falls while the air is below freezing. [mm] */
  readonly freezingRainMm?: number;
  /** One after the other, up to now. [days] */
  readonly sunlessDays: number;
}

/** Rain that soaks fabric before it freezes: it lies stiff and cold on the leaves. */
export interface WetFabric {
  readonly kind: 'wet-fabric';
  readonly cover: CoverKey;
  readonly rainMm: number;
}

/** Ice of freezing rain weighs on what carries it and glues shut what opens. */
export interface IceHarm {
  readonly kind: 'freezing-rain';
  readonly cover: CoverKey;
  /** A millimetre of rain is a kilogram a square metre of ice. [kg m⁻²] */
  readonly loadKgPerM2: number;
}

/** The soil under the cover has had no sun to store. */
export interface SunlessSpell {
  readonly kind: 'sunless';
  readonly days: number;
}

export type WeatherHarm = WindHarm | SnowHarm | WetFabric | IceHarm | SunlessSpell;

/** Soaks fabric (judgement). */
const SOAKING_RAIN_MM = 1;
/** Glazes a light (judgement). */
const GLAZING_RAIN_MM = 0.3;
/** Covers lose part of their gain after so many days (judgement, from a log that tells of two weeks and a trial of one day). */
const SUNLESS_FROM_DAYS = 3;

/**
 * What the weather ahead does to the covers of a bed.
 *
 * @param keys - Covers from outside to inside.
 * @param weather - What is forecast.
 * @param shelterFraction - Wind at the bed as a share of the open-field wind. [0…1]
 * @returns Each harm once, in the order in which to act; empty for a bare bed and for harmless weather.
 * @see wind-anchor, snow-load, wet-covers, sunless-covers
 */
export function weatherHarms(
  keys: readonly CoverKey[],
  weather: HarmfulWeather,
  shelterFraction: number,
): readonly WeatherHarm[] {
  const covers = keys.filter((key) => key !== 'hoops' && key !== 'jugs' && key !== 'snow');
  const [outermost] = covers;
  if (outermost === undefined) return [];
  const { gustMPerS, snowfall } = weather;
  return [
    gustMPerS === undefined ? undefined : windHarm(outermost, gustMPerS, shelterFraction),
    snowfall === undefined ? undefined : snowHarm(covers.find(bearsSnow) ?? outermost, snowfall),
    iceHarm(outermost, weather),
    wetFabric(outermost, weather),
    sunlessSpell(covers, weather),
  ].filter((harm) => harm !== undefined);
}

/** A quilt on a tunnel carries nothing: what lies on it lies on the hoops. */
function bearsSnow(key: CoverKey): boolean {
  return STRUCTURES[key]?.bearsKgPerM2 !== undefined;
}

function iceHarm(cover: CoverKey, { freezingRainMm = 0 }: HarmfulWeather): IceHarm | undefined {
  return freezingRainMm >= GLAZING_RAIN_MM ? { kind: 'freezing-rain', cover, loadKgPerM2: freezingRainMm } : undefined;
}

function wetFabric(cover: CoverKey, { rainBeforeFreezeMm = 0 }: HarmfulWeather): WetFabric | undefined {
  const { kind } = COVERS[cover];
  if (rainBeforeFreezeMm < SOAKING_RAIN_MM || !(kind === 'fabric' || kind === 'cloth')) return undefined;
  return { kind: 'wet-fabric', cover, rainMm: rainBeforeFreezeMm };
}

function sunlessSpell(covers: readonly CoverKey[], weather: HarmfulWeather): SunlessSpell | undefined {
  const lives = covers.some((key) => ['frame', 'low-tunnel', 'high-tunnel', 'fabric'].includes(COVERS[key].kind));
  if (!lives || weather.sunlessDays < SUNLESS_FROM_DAYS) return undefined;
  return { kind: 'sunless', days: weather.sunlessDays };
}
