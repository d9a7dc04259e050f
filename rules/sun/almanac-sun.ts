import { MS_PER_DAY } from '../durations.ts';

const RAD_PER_DEG = Math.PI / 180;
const NOON_OF_2000_MS = Date.UTC(2000, 0, 1, 12);

/** The sun's place among the stars at one instant, as sunrise and the seasons need it. */
export interface AlmanacSun {
  /** Latitude over which the sun stands. [rad] */
  readonly declinationRad: number;
  /** Sundial time minus clock time of the mean sun. [min] */
  readonly equationOfTimeMin: number;
  /** Mean distance of the sun over its present distance, squared. [0.966…1.035] */
  readonly eccentricity: number;
}

/**
 * Declination, equation of time and distance from the sun's mean motion since 2000, good to 0.02° from 1950 to 2050.
 *
 * @param at - The instant.
 * @returns Declination, equation of time and squared distance ratio.
 *
 * @remarks The shorter series of `solarPosition` restarts each New Year and strays by up to half a degree between leap years.
 * Near the equinoxes that shifts sunrise by minutes and a ten-hour day by up to two days.
 * @see Astronomical Almanac, low-precision formulas for the Sun (`almanac-sun`)
 */
export function almanacSun(at: Date): AlmanacSun {
  const days = (at.getTime() - NOON_OF_2000_MS) / MS_PER_DAY;
  const meanLongitudeRad = (280.46 + 0.9856474 * days) * RAD_PER_DEG;
  const anomalyRad = (357.528 + 0.9856003 * days) * RAD_PER_DEG;
  const longitudeRad =
    meanLongitudeRad + (1.915 * Math.sin(anomalyRad) + 0.02 * Math.sin(2 * anomalyRad)) * RAD_PER_DEG;
  const tiltRad = (23.439 - 0.0000004 * days) * RAD_PER_DEG;
  const ascensionRad = Math.atan2(Math.cos(tiltRad) * Math.sin(longitudeRad), Math.cos(longitudeRad));
  const distance = 1.00014 - 0.01671 * Math.cos(anomalyRad) - 0.00014 * Math.cos(2 * anomalyRad);
  const lagRad = meanLongitudeRad - ascensionRad;
  return {
    declinationRad: Math.asin(Math.sin(tiltRad) * Math.sin(longitudeRad)),
    // Sine and cosine fold the difference of two angles back to the nearest turn.
    equationOfTimeMin: (4 * Math.atan2(Math.sin(lagRad), Math.cos(lagRad))) / RAD_PER_DEG,
    eccentricity: 1 / distance ** 2,
  };
}
