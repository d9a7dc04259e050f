import type { AlmanacSun } from './almanac-sun.ts';

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
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param sun - Declination [rad] and squared distance ratio at noon of that day, from `almanacSun` or `solarPosition`.
 * @returns Sum of the day. [MJ m⁻², 0…50]
 * @throws RangeError when the latitude is off the globe.
 *
 * @see FAO Irrigation & Drainage Paper 56, eq. 21 (`fao-56`)
 */
export function extraterrestrialMJPerM2(
  latitudeDeg: number,
  sun: Pick<AlmanacSun, 'declinationRad' | 'eccentricity'>,
): number {
  if (!(Math.abs(latitudeDeg) <= 90)) throw new RangeError(`latitudeDeg ${latitudeDeg} is outside −90…90`);
  const latitudeRad = latitudeDeg * RAD_PER_DEG;
  const sunsetRad = sunsetHourAngleRad(latitudeDeg, sun.declinationRad);
  const meanCosZenith =
    (sunsetRad * Math.sin(latitudeRad) * Math.sin(sun.declinationRad) +
      Math.cos(latitudeRad) * Math.cos(sun.declinationRad) * Math.sin(sunsetRad)) /
    Math.PI;
  return (SOLAR_CONSTANT_W_PER_M2 * sun.eccentricity * Math.max(0, meanCosZenith) * S_PER_DAY) / J_PER_MJ;
}
