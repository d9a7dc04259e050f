import { inversionHeightFraction } from '../sky/inversion.ts';
import type { OutsideInstant } from '../sky/prepared-weather.ts';
import { CALM_M_PER_S, windShareFraction } from '../sky/wind-profile.ts';
import { blackBodyWPerM2, SHELTERED_LEAF_W_PER_M2K } from './constants.ts';
import type { CoverStack, NightSite } from './night-input.ts';

/** Top of the crop, where the bare bed's leaf hangs (`judgement`). */
const CROP_HEIGHT_M = 0.15;

/** What a bed feels from outside at one instant. */
export interface Surroundings {
  /** Air at the height of the outermost cover. */
  coverAirC: number;
  /** Air at crop level in the open. */
  cropAirC: number;
  vapourHPa: number;
  /** Longwave from the sky and whatever stands round the bed. */
  skyWPerM2: number;
  /** Black-body emission at `coverAirC`. */
  aroundWPerM2: number;
  coverWindMPerS: number;
  /** Outer face of the outermost cover to the air. */
  coverAirWPerM2K: number;
  /** Leaf, per side, and soil of the bare bed to the air. */
  bareLeafWPerM2K: number;
  bareSoilWPerM2K: number;
}

/** Shares of height and wind that stay the same through a run. */
export interface Exposure {
  readonly site: NightSite;
  readonly leafSizeM: number;
  readonly coverInversionK: number;
  readonly cropInversionK: number;
  readonly coverWindFraction: number;
  readonly cropWindFraction: number;
}

/**
 * How open a stack stands.
 *
 * @param site - The site.
 * @param stack - The stack; its height matters.
 * @param leafSizeM - Size of a leaf. [m]
 * @returns Shares of inversion and wind at the cover and at the crop.
 */
export function exposureOf(site: NightSite, stack: CoverStack, leafSizeM: number): Exposure {
  const heightM = stack.geometry.heightM;
  return {
    site,
    leafSizeM,
    coverInversionK: site.inversionK * inversionHeightFraction(heightM),
    cropInversionK: site.inversionK * inversionHeightFraction(CROP_HEIGHT_M),
    coverWindFraction: windShareFraction(heightM, site.shelterFraction),
    cropWindFraction: windShareFraction(CROP_HEIGHT_M, site.shelterFraction),
  };
}

/**
 * Surroundings before the first instant.
 *
 * @returns Surroundings to be filled by `setSurroundings`.
 */
export function blankSurroundings(): Surroundings {
  return {
    coverAirC: 0.5,
    cropAirC: 0.5,
    vapourHPa: 0.5,
    skyWPerM2: 0.5,
    aroundWPerM2: 0.5,
    coverWindMPerS: 0.5,
    coverAirWPerM2K: 0.5,
    bareLeafWPerM2K: 0.5,
    bareSoilWPerM2K: 0.5,
  };
}

/**
 * Sets what a bed feels at an instant.
 *
 * @param around - Set to the instant.
 * @param exposure - How open the bed stands.
 * @param outside - Weather of the instant.
 */
export function setSurroundings(around: Surroundings, exposure: Exposure, outside: OutsideInstant): void {
  const { site } = exposure;
  around.coverAirC = outside.screenC - exposure.coverInversionK * outside.inversionFraction;
  around.cropAirC = outside.screenC - exposure.cropInversionK * outside.inversionFraction;
  around.vapourHPa = outside.vapourHPa;
  around.aroundWPerM2 = blackBodyWPerM2(around.coverAirC);
  around.skyWPerM2 = site.skyViewFraction * outside.skyWPerM2 + (1 - site.skyViewFraction) * around.aroundWPerM2;
  around.coverWindMPerS = Math.max(CALM_M_PER_S, exposure.coverWindFraction * outside.wind10MPerS);
  around.coverAirWPerM2K = outdoorSurfaceWPerM2K(around.coverWindMPerS);
  const cropWindMPerS = Math.max(CALM_M_PER_S, exposure.cropWindFraction * outside.wind10MPerS);
  around.bareLeafWPerM2K = bareLeafWPerM2K(cropWindMPerS, exposure.leafSizeM);
  around.bareSoilWPerM2K = outdoorSurfaceWPerM2K(cropWindMPerS);
}

/**
 * Heat exchange of an outdoor surface with the wind.
 *
 * @param windMPerS - Wind at the surface. [m s⁻¹, at least 0.1]
 * @returns Coefficient. [W m⁻² K⁻¹]
 * @see Papadakis et al. 1992 (`papadakis-1992`)
 */
export function outdoorSurfaceWPerM2K(windMPerS: number): number {
  return 0.95 + 6.76 * windMPerS ** 0.49;
}

/**
 * Heat exchange of an open leaf with the wind, for one of its sides.
 *
 * @param windMPerS - Wind at the leaf. [m s⁻¹, at least 0.1]
 * @param leafSizeM - Size of the leaf along the wind. [m]
 * @returns Coefficient, never below that of still air. [W m⁻² K⁻¹]
 * @see Campbell & Norman 1998 (`campbell-norman-1998`)
 */
export function bareLeafWPerM2K(windMPerS: number, leafSizeM: number): number {
  return Math.max(SHELTERED_LEAF_W_PER_M2K, 5.5 * Math.sqrt(windMPerS / leafSizeM));
}
