/** Short grass (`log-wind-profile`). */
const GRASS_ROUGHNESS_M = 0.03;
const FORECAST_HEIGHT_M = 10;
const LOWEST_HEIGHT_M = 0.1;
/** Air over a cooling garden is never quite still (`judgement`). */
export const CALM_M_PER_S = 0.1;
const WIND_EXPONENT = 0.49;

/**
 * Wind at a height near the ground, as a share of the forecast wind at 10 m over the open field.
 *
 * @param heightM - Height above the ground; below 0.1 m it counts as 0.1. [m]
 * @param shelterFraction - Exposed field 1, open garden 0.8, hedged or walled garden 0.5. [0…1]
 * @returns Share of the 10 m wind. [0…1]
 *
 * @see Logarithmic profile over short grass, roughness 3 cm (`log-wind-profile`)
 */
export function windShareFraction(heightM: number, shelterFraction: number): number {
  const height = Math.max(heightM, LOWEST_HEIGHT_M);
  const profile = Math.log(height / GRASS_ROUGHNESS_M) / Math.log(FORECAST_HEIGHT_M / GRASS_ROUGHNESS_M);
  return shelterFraction * profile;
}

/**
 * The power of the wind that heat exchange follows. It is its own, so that shares of the wind can be taken of the power: the power of a product
 * is the product of the powers.
 *
 * @param windMPerS - Wind. [m s⁻¹, at least 0]
 * @returns Wind to the power 0.49.
 * @see Papadakis et al. 1992 (`papadakis-1992`)
 */
export function windFactor(windMPerS: number): number {
  return windMPerS ** WIND_EXPONENT;
}
