import { almanacSun } from './almanac-sun.ts';
import { refusePlaceOffTheGlobe } from './place.ts';

const RAD_PER_DEG = Math.PI / 180;
const SOLAR_CONSTANT_W_PER_M2 = 1367;
const S_PER_DAY = 86_400;
const J_PER_MJ = 1e6;

/**
 * Angle the earth turns between noon and sunset, for the centre of the sun and without refraction.
 *
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param declinationRad - Latitude over which the sun stands. [rad]
 * @returns Half the day as an angle: 0 when the sun never rises, π when it never sets. [rad]
 *
 * @see FAO Irrigation & Drainage Paper 56, eq. 25 (`fao-56`)
 */
export function sunsetHourAngleRad(latitudeDeg: number, declinationRad: number): number {
  const cosHour = -Math.tan(latitudeDeg * RAD_PER_DEG) * Math.tan(declinationRad);
  return Math.acos(Math.min(1, Math.max(-1, cosHour)));
}

/**
 * Sunlight of one day on level ground if there were no air: the upper bound of what a crop can get.
 *
 * @param at - An instant near noon of that day.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @returns Sum of the day. [MJ m⁻², 0…45]
 * @throws RangeError when the instant is invalid or the latitude is off the globe.
 *
 * @see FAO Irrigation & Drainage Paper 56, eq. 21 (`fao-56`), with the sun of `almanacSun`
 */
export function extraterrestrialMJPerM2(at: Date, latitudeDeg: number): number {
  refusePlaceOffTheGlobe(at, latitudeDeg, 0);
  const { declinationRad, eccentricity } = almanacSun(at);
  const latitudeRad = latitudeDeg * RAD_PER_DEG;
  const sunsetRad = sunsetHourAngleRad(latitudeDeg, declinationRad);
  const meanCosZenith =
    (sunsetRad * Math.sin(latitudeRad) * Math.sin(declinationRad) +
      Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.sin(sunsetRad)) /
    Math.PI;
  return (SOLAR_CONSTANT_W_PER_M2 * eccentricity * Math.max(0, meanCosZenith) * S_PER_DAY) / J_PER_MJ;
}
