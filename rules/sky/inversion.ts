import { blackBodyWPerM2 } from '../constants.ts';

/** Screens stand at 2 m; the cooling is full at a twentieth of that (`judgement`). */
const SCREEN_HEIGHT_M = 2;
const FULL_EFFECT_LOG = Math.log(20);
/** The layer forms while the sun is below this height and dissolves above it (`judgement`). */
const SUN_LIMIT_DEG = 10;

/**
 * Cooling of the lowest air below the screen, for a site whose inversion number is one kelvin. Multiply by the site number and by
 * `inversionHeightFraction`.
 *
 * @param screenC - Air temperature at 2 m. [°C]
 * @param skyWPerM2 - Longwave radiation from the sky. [W m⁻²]
 * @param wind10MPerS - Wind at 10 m. [m s⁻¹, at least 0]
 * @param sunElevationDeg - Height of the sun. [°]
 * @returns Cooling per kelvin of site number. [0…about 1.3]
 *
 * @remarks Our own scheme. With site number 3 it reproduces the spread of surface minus air minima of a climate network.
 * @see `sky-comparison`, `judgement`
 */
export function inversionStrengthFraction(
  screenC: number,
  skyWPerM2: number,
  wind10MPerS: number,
  sunElevationDeg: number,
): number {
  const night = clamp01((SUN_LIMIT_DEG - sunElevationDeg) / SUN_LIMIT_DEG);
  const deficit = Math.max(0, blackBodyWPerM2(screenC) - skyWPerM2) / 100;
  return (deficit * night) / (1 + (wind10MPerS / 2) ** 2);
}

/**
 * How much of the inversion is felt at a height: all of it at 0.1 m, none at the screen.
 *
 * @param heightM - Height above the ground. [m, above 0]
 * @returns Share of the full cooling. [0…1]
 */
export function inversionHeightFraction(heightM: number): number {
  return clamp01(Math.log(SCREEN_HEIGHT_M / heightM) / FULL_EFFECT_LOG);
}

function clamp01(value: number): number {
  return Math.min(1, Math.max(0, value));
}
