import type { SoilPoint } from '../balance/night-input.ts';
import type { CoverKey } from '../covers/cover-key.ts';
import { COVERS } from '../covers/cover-table.ts';
import type { NightSite } from '../site-and-weather.ts';
import { almanacSun } from '../sun/almanac-sun.ts';
import { extraterrestrialMJPerM2 } from '../sun/daily-light.ts';
import { assumedClimate, type Climate, climateGroundC } from './climate.ts';

const TOP_DEPTH_M = 0.1;
const DEEP_DEPTH_M = 0.8;
/** Soil at 10 cm runs this much above the week's air in the cold season (`judgement`, ± 1.5 K). */
const ABOVE_WEEK_AIR_K = 1;
const COLDEST_GUESS_C = -2;
const GUESS_SD_K = 1.5;
/** A soil thermometer, its depth and the spread over a bed (judgement). */
const MEASURED_SD_K = 0.5;
/** Sun of a day that brings the whole surplus. */
const FULL_SURPLUS_MJ_PER_M2 = 15;

/** Share of the sun above the air that a day between clear, 0.75, and overcast, 0.25, lets through (judgement). */
const USUAL_SUN_FRACTION = 0.45;

/** Soil temperature that a night begins with. */
export interface SoilStart {
  readonly soil10CmC: number;
  readonly deepC: number;
  /** Down to 0.8 m, for the energy balance. */
  readonly profile: readonly SoilPoint[];
  /** Standard deviation of the 10 cm value. */
  readonly sdK: number;
  readonly measured: boolean;
}

export interface SoilStartInput {
  readonly site: Pick<NightSite, 'latitudeDeg' | 'elevationM'>;
  /** The night for which it is asked. */
  readonly at: Date;
  /** Mean screen temperature of the last seven days. [°C] */
  readonly weekMeanC: number;
  /** What has lain on the bed for weeks, if anything has. */
  readonly coveredForWeeks?: readonly CoverKey[];
  /** Mean sun of a day lately, the whole surplus needs 15; a usual day of the season when absent. [MJ m⁻²] */
  readonly dailySunMJPerM2?: number;
  /** Soil thermometer at 10 cm. [°C] */
  readonly measured10CmC?: number;
  /** Yearly course of the air; assumed from latitude and height when absent. */
  readonly climate?: Climate;
}

/**
 * Soil temperature to begin with when nobody measured it, or one did.
 *
 * @returns 10 cm value, value at 0.8 m and the profile between them.
 *
 * @remarks
 * 10 cm: the week's mean air and 1 K, and what weeks under cover added (`acta-187-20` for perforated film: 2.5 K under one
 * sheet, 4.5 K under two; the others judged), not below −2 °C; off by 1.5 K. 0.8 m: the damped yearly wave.
 */
export function soilStart(input: SoilStartInput): SoilStart {
  const { site, at, weekMeanC, measured10CmC } = input;
  const climate = input.climate ?? assumedClimate(site.latitudeDeg, site.elevationM);
  const dailySunMJPerM2 =
    input.dailySunMJPerM2 ?? USUAL_SUN_FRACTION * extraterrestrialMJPerM2(site.latitudeDeg, almanacSun(at));
  const sunShare = Math.min(1, dailySunMJPerM2 / FULL_SURPLUS_MJ_PER_M2);
  const surplusK = coveredSurplusK(input.coveredForWeeks ?? []) * sunShare;
  const guessC = Math.max(COLDEST_GUESS_C, weekMeanC + ABOVE_WEEK_AIR_K + surplusK);
  const deepC = climateGroundC(climate, at, DEEP_DEPTH_M);
  return measured10CmC === undefined ? soilAt(guessC, deepC, GUESS_SD_K) : measuredSoil(measured10CmC, deepC);
}

/**
 * Soil that begins at a guessed temperature.
 *
 * @param soil10CmC - Guess at 10 cm. [°C]
 * @param deepC - Guess at 0.8 m. [°C]
 * @param sdK - How far off the upper one may be. [K]
 */
export function soilAt(soil10CmC: number, deepC: number, sdK: number): SoilStart {
  return { soil10CmC, deepC, profile: soilProfile(soil10CmC, deepC), sdK, measured: false };
}

/**
 * Soil that begins where a thermometer found it.
 *
 * @param soil10CmC - Reading at 10 cm. [°C]
 * @param deepC - Guess at 0.8 m. [°C]
 */
export function measuredSoil(soil10CmC: number, deepC: number): SoilStart {
  return { ...soilAt(soil10CmC, deepC, MEASURED_SD_K), measured: true };
}

/**
 * Soil profile from two values: the upper one down to 10 cm, then even to 0.8 m.
 *
 * @param soil10CmC - At 10 cm. [°C]
 * @param deepC - At 0.8 m. [°C]
 */
export function soilProfile(soil10CmC: number, deepC: number): readonly SoilPoint[] {
  return [
    { depthM: 0, soilC: soil10CmC },
    { depthM: TOP_DEPTH_M, soilC: soil10CmC },
    { depthM: DEEP_DEPTH_M, soilC: deepC },
  ];
}

/**
 * How much warmer weeks under cover in full sun make the soil.
 *
 * @param keys - What lay there, from outside to inside.
 * @returns Fabric 1, perforated film 2.5 and two of it 4.5, solid tunnel or frame 4, fabric inside one of these 5; 0 for what
 * shuts out the sun. [K]
 */
export function coveredSurplusK(keys: readonly CoverKey[]): number {
  const perforated = keys.filter((key) => key === 'low-tunnel-perforated').length;
  const solid = keys.some((key) => key !== 'low-tunnel-perforated' && isGlazed(key));
  const fabric = keys.some((key) => COVERS[key].kind === 'fabric');
  if (keys.some((key) => COVERS[key].kind === 'litter' || key === 'snow')) return 0;
  if (solid) return fabric ? 5 : 4;
  if (perforated > 0) return perforated > 1 ? 4.5 : 2.5;
  return fabric ? 1 : 0;
}

function isGlazed(key: CoverKey): boolean {
  const { kind } = COVERS[key];
  return kind === 'low-tunnel' || kind === 'frame' || kind === 'high-tunnel';
}
