import { MS_PER_DAY } from '../durations.ts';
import { refusePlaceOffTheGlobe } from './place.ts';

const RAD_PER_DEG = Math.PI / 180;
const MIN_PER_DAY = 1440;

/** Where the sun stands, seen from one place at one instant. */
export interface SolarPosition {
  /** Height of the sun's centre above the horizon, without refraction. [°, −90…90] */
  readonly elevationDeg: number;
  /** Cosine of the angle from overhead; negative below the horizon. [−1…1] */
  readonly cosZenith: number;
  /** Horizontal part of the unit vector to the sun, towards the east. [−1…1] */
  readonly east: number;
  /** Horizontal part of the unit vector to the sun, towards the north. [−1…1] */
  readonly north: number;
  /** Sundial time minus clock time of the mean sun. [min, −15…17] */
  readonly equationOfTimeMin: number;
  /** Latitude over which the sun stands. [rad, −0.41…0.41] */
  readonly declinationRad: number;
  /** Mean distance of the sun over its present distance, squared. [0.966…1.035] */
  readonly eccentricity: number;
}

/**
 * Position of the sun by the NOAA general equations, good to about half a degree in this century: enough for warmth and light.
 * Sunrise and sunset need better and use `sunTimes`.
 *
 * @param at - The instant.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param longitudeDeg - East positive. [°, −180…180]
 * @returns Position without refraction, with the quantities of the day that follow from the same series.
 * @throws RangeError when the instant is invalid or the place is off the globe.
 *
 * @see NOAA Global Monitoring Division, General Solar Position Calculations (`noaa-solar`); eccentricity: Spencer 1971
 * (`spencer-1971`)
 */
export function solarPosition(at: Date, latitudeDeg: number, longitudeDeg: number): SolarPosition {
  refusePlaceOffTheGlobe(at, latitudeDeg, longitudeDeg);
  const yearRad = fractionalYearRad(at);
  const cos1 = Math.cos(yearRad);
  const sin1 = Math.sin(yearRad);
  const cos2 = Math.cos(2 * yearRad);
  const sin2 = Math.sin(2 * yearRad);

  const equationOfTimeMin = 229.18 * (0.000075 + 0.001868 * cos1 - 0.032077 * sin1 - 0.014615 * cos2 - 0.040849 * sin2);
  const declinationRad =
    0.006918 -
    0.399912 * cos1 +
    0.070257 * sin1 -
    0.006758 * cos2 +
    0.000907 * sin2 -
    0.002697 * Math.cos(3 * yearRad) +
    0.00148 * Math.sin(3 * yearRad);
  const eccentricity = 1.00011 + 0.034221 * cos1 + 0.00128 * sin1 + 0.000719 * cos2 + 0.000077 * sin2;

  const utcMin = (positiveRemainder(at.getTime(), MS_PER_DAY) / MS_PER_DAY) * MIN_PER_DAY;
  const trueSolarMin = utcMin + equationOfTimeMin + 4 * longitudeDeg;
  const hourAngleRad = (trueSolarMin / 4 - 180) * RAD_PER_DEG;
  const latitudeRad = latitudeDeg * RAD_PER_DEG;
  const sinLatitude = Math.sin(latitudeRad);
  const cosLatitude = Math.cos(latitudeRad);
  const sinDeclination = Math.sin(declinationRad);
  const cosDeclination = Math.cos(declinationRad);
  const cosHour = Math.cos(hourAngleRad);

  const cosZenith = clampCosine(sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour);
  return {
    elevationDeg: Math.asin(cosZenith) / RAD_PER_DEG,
    cosZenith,
    east: -cosDeclination * Math.sin(hourAngleRad),
    north: cosLatitude * sinDeclination - sinLatitude * cosDeclination * cosHour,
    equationOfTimeMin,
    declinationRad,
    eccentricity,
  };
}

function fractionalYearRad(at: Date): number {
  const year = at.getUTCFullYear();
  const yearStart = Date.UTC(year, 0, 1);
  const daysInYear = (Date.UTC(year + 1, 0, 1) - yearStart) / MS_PER_DAY;
  // NOAA's "day − 1 + (hour − 12)/24" is the time since New Year less half a day.
  const sinceNewYearDays = (at.getTime() - yearStart) / MS_PER_DAY;
  return ((2 * Math.PI) / daysInYear) * (sinceNewYearDays - 0.5);
}

function positiveRemainder(value: number, divisor: number): number {
  return ((value % divisor) + divisor) % divisor;
}

function clampCosine(value: number): number {
  return Math.min(1, Math.max(-1, value));
}
