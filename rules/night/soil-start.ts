import type { SoilPoint } from '../balance/night-input.ts';
import type { CoverKey } from '../covers/cover-key.ts';
import { COVERS } from '../covers/cover-table.ts';
import type { NightSite } from '../site-and-weather.ts';
import { almanacSun } from '../sun/almanac-sun.ts';
import { extraterrestrialMJPerM2 } from '../sun/daily-light.ts';
import { assumedClimate, type Climate, climateGroundC } from './climate.ts';

const ORDINARY_YEAR = 2025;
const MID_YEAR_DAY = 100;
const TOP_DEPTH_M = 0.1;
const DEEP_DEPTH_M = 0.8;
/** Soil at 10 cm runs this much above the week's air in the cold season (`judgement`, ± 1.5 K). */
const ABOVE_WEEK_AIR_K = 1;
const GUESS_SD_K = 1.5;
/** A soil thermometer, its depth and the spread over a bed (judgement). */
const MEASURED_SD_K = 0.5;
/** Sun of a day that brings the whole surplus. */
const FULL_SURPLUS_MJ_PER_M2 = 15;

/** Share of the sun above the air that a day between clear, 0.75, and overcast, 0.25, lets through (judgement). */
export const USUAL_SUN_FRACTION = 0.45;

/**
 * Coldest guess for a bare bed, under one cover that is no film, and under film, glass or two covers: soils seen there in hard cold were
 * 0 to 4 °C (`covered-soils`), and 0 °C leaves all water unfrozen.
 */
const COLDEST_BARE_C = -2;
const COLDEST_UNDER_ONE_C = -1;
const COLDEST_UNDER_FILM_OR_TWO_C = 0;

/**
 * Mean air of the week round a night of which no more than the low is known: milder than the night itself. 5 °C for −4 °C on 1 December, 0.4 K
 * less for every kelvin colder, within 1.2 K of the pairs that the reference cases take. Autumn is warmer, by half of what the climate says.
 */
const WEEK_AT_ZERO_C = 6.6;
const WEEK_PER_LOW = 0.4;
const AUTUMN_SHARE = 0.5;
const MOST_AUTUMN_K = 4;

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
  /** How far off the guess may be; 1.5 where the week was measured. [K] */
  readonly guessSdK?: number;
}

/**
 * Soil temperature to begin with when nobody measured it, or one did.
 *
 * @returns 10 cm value, value at 0.8 m and the profile between them.
 *
 * @remarks
 * 10 cm: the week's mean air and 1 K, and what weeks under cover added (`acta-187-20` for perforated film: 2.5 K under one
 * sheet, 4.5 K under two; the others judged), not below {@link coldestSoilC}; off by 1.5 K. 0.8 m: the damped yearly wave.
 */
export function soilStart(input: SoilStartInput): SoilStart {
  const { site, at, weekMeanC, measured10CmC, coveredForWeeks = [] } = input;
  const climate = input.climate ?? assumedClimate(site.latitudeDeg, site.elevationM);
  const dailySunMJPerM2 =
    input.dailySunMJPerM2 ?? USUAL_SUN_FRACTION * extraterrestrialMJPerM2(site.latitudeDeg, almanacSun(at));
  const sunShare = Math.min(1, dailySunMJPerM2 / FULL_SURPLUS_MJ_PER_M2);
  const surplusK = coveredSurplusK(coveredForWeeks) * sunShare;
  const coldestC = coldestSoilC(coveredForWeeks);
  const guessC = Math.max(coldestC, weekMeanC + ABOVE_WEEK_AIR_K + surplusK);
  const deepC = climateGroundC(climate, at, DEEP_DEPTH_M);
  return measured10CmC === undefined
    ? soilAt(guessC, Math.max(coldestC, deepC), input.guessSdK ?? GUESS_SD_K)
    : measuredSoil(measured10CmC, deepC);
}

/**
 * The coldest that soil is guessed to be where nobody measured it.
 *
 * @param keys - What has lain there for weeks, from outside to inside.
 * @returns −2 bare, −1 under one cover that is no film or glass, otherwise 0: the freezing curve of the soil ends at −1 °C, so that a colder
 * start has spent the latent heat before the night begins. [°C]
 */
export function coldestSoilC(keys: readonly CoverKey[]): number {
  const covers = keys.filter((key) => key !== 'hoops' && key !== 'jugs');
  if (covers.length === 0) return COLDEST_BARE_C;
  return covers.length === 1 && !covers.some(isGlazed) ? COLDEST_UNDER_ONE_C : COLDEST_UNDER_FILM_OR_TWO_C;
}

/**
 * Mean air of the week round a night of which only the low is known.
 *
 * @param lowC - Outside low. [°C]
 * @param at - The night.
 * @param climate - Of the place.
 * @returns Milder than the night by more, the colder it is. [°C]
 * @see judgement; held against measured lows with all their soils unknown in the accuracy page
 */
export function usualWeekC(lowC: number, at: Date, climate: Climate): number {
  const winter = new Date(Date.UTC(ORDINARY_YEAR, climate.warmestDay < MID_YEAR_DAY ? 5 : 11, 1, 12));
  const aboveWinterK = climateGroundC(climate, at, TOP_DEPTH_M) - climateGroundC(climate, winter, TOP_DEPTH_M);
  return WEEK_AT_ZERO_C + WEEK_PER_LOW * lowC + Math.max(0, Math.min(MOST_AUTUMN_K, AUTUMN_SHARE * aboveWinterK));
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

/** Film, glass or twin-wall. */
export function isGlazed(key: CoverKey): boolean {
  const { kind } = COVERS[key];
  return kind === 'low-tunnel' || kind === 'frame' || kind === 'high-tunnel';
}
