import { blackBodyWPerM2, SHELTERED_LEAF_W_PER_M2K } from '../constants.ts';
import type { NightSite } from '../site-and-weather.ts';
import { inversionHeightFraction } from '../sky/inversion.ts';
import type { OutsideInstant } from '../sky/prepared-weather.ts';
import { CALM_M_PER_S, windFactor, windShareFraction } from '../sky/wind-profile.ts';
import type { CoverStack } from './night-input.ts';

/** Top of the crop, where the bare bed's leaf hangs (`judgement`). */
const CROP_HEIGHT_M = 0.15;
const CALM_FACTOR = windFactor(CALM_M_PER_S);

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
  /** The same of the power of the wind that heat exchange follows. */
  readonly coverWindFactor: number;
  readonly cropWindFactor: number;
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
  const { heightM } = stack.geometry;
  const coverWindFraction = windShareFraction(heightM, site.shelterFraction);
  const cropWindFraction = windShareFraction(CROP_HEIGHT_M, site.shelterFraction);
  return {
    site,
    leafSizeM,
    coverInversionK: site.inversionK * inversionHeightFraction(heightM),
    cropInversionK: site.inversionK * inversionHeightFraction(CROP_HEIGHT_M),
    coverWindFraction,
    cropWindFraction,
    coverWindFactor: windFactor(coverWindFraction),
    cropWindFactor: windFactor(cropWindFraction),
  };
}

/**
 * Surroundings before the first instant.
 *
 * @returns Surroundings to be filled by `setSurroundings`.
 */
export function blankSurroundings(): Surroundings {
  return {
    coverAirC: Number.NaN,
    cropAirC: Number.NaN,
    vapourHPa: Number.NaN,
    skyWPerM2: Number.NaN,
    aroundWPerM2: Number.NaN,
    coverWindMPerS: Number.NaN,
    coverAirWPerM2K: Number.NaN,
    bareLeafWPerM2K: Number.NaN,
    bareSoilWPerM2K: Number.NaN,
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
  around.coverAirWPerM2K = outdoorSurfaceWPerM2K(exposure.coverWindFactor * outside.windFactor);
  const cropWindMPerS = Math.max(CALM_M_PER_S, exposure.cropWindFraction * outside.wind10MPerS);
  around.bareLeafWPerM2K = bareLeafWPerM2K(cropWindMPerS, exposure.leafSizeM);
  around.bareSoilWPerM2K = outdoorSurfaceWPerM2K(exposure.cropWindFactor * outside.windFactor);
}

/**
 * Heat exchange of an outdoor surface with the wind.
 *
 * @param factor - `windFactor` of the wind at the surface; calm air counts as 0.1 m s⁻¹.
 * @returns Coefficient. [W m⁻² K⁻¹]
 * @see Papadakis et al. 1992 (`papadakis-1992`)
 */
export function outdoorSurfaceWPerM2K(factor: number): number {
  return 0.95 + 6.76 * Math.max(CALM_FACTOR, factor);
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
