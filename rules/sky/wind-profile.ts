const GRASS_ROUGHNESS_M = 0.03;
const FORECAST_HEIGHT_M = 10;
const LOWEST_HEIGHT_M = 0.1;
/** Air over a cooling garden is never quite still (`judgement`). */
export const CALM_M_PER_S = 0.1;

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
