import { MS_PER_DAY, MS_PER_H, MS_PER_MIN } from '../durations.ts';
import { almanacSun } from './almanac-sun.ts';
import { refusePlaceOffTheGlobe } from './place.ts';

const RAD_PER_DEG = Math.PI / 180;
/** Centre of the sun when its upper edge touches a level horizon: 34′ of refraction and 16′ of radius. */
const RISING_DEG = -0.833;
/** Common practice: covers are shut two hours before sunset, to keep some of the day's warmth. */
const SHUT_BEFORE_SUNSET_H = 2;
const SEARCH_STEP_MS = 500;

/** How the sun behaves on one solar day: it rises and sets, or it stays below or above the horizon. */
export type SunTimes =
  | { readonly kind: 'rises'; readonly sunrise: Date; readonly sunset: Date; readonly dayLengthH: number }
  | { readonly kind: 'polar-night' }
  | { readonly kind: 'polar-day' };

/** One night, from sunset to sunrise, and when to have the covers shut for it. */
export interface NightSpan {
  /** Two hours before sunset, but not before solar noon. */
  readonly shutBy: Date;
  readonly sunset: Date;
  readonly sunrise: Date;
}

/**
 * Sunrise and sunset of the local solar day (solar midnight to solar midnight) in which an instant lies.
 *
 * @param at - Any instant of that day. [1950…2050 for full accuracy]
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param longitudeDeg - East positive. [°, −180…180]
 * @returns Times for a level horizon and standard refraction, within a minute of the almanac between 65° S and 65° N;
 * `polar-day` also on the few days at high latitude when the sun fails to set either before or after noon.
 * @throws RangeError when the instant is invalid or the place is off the globe.
 *
 * @see Standard altitude −0.833° as in NOAA's solar calculations (`noaa-solar`), sun from `almanacSun`
 */
export function sunTimes(at: Date, latitudeDeg: number, longitudeDeg: number): SunTimes {
  refusePlaceOffTheGlobe(at, latitudeDeg, longitudeDeg);
  const place = { latitudeDeg, longitudeDeg };
  const day = solarDayNumber(at, longitudeDeg);
  const noonMs = transitMs(day + 0.5, longitudeDeg);
  const midnightBeforeMs = transitMs(day, longitudeDeg);
  const midnightAfterMs = transitMs(day + 1, longitudeDeg);
  if (!isUp(noonMs, place)) return { kind: 'polar-night' };
  if (isUp(midnightBeforeMs, place) || isUp(midnightAfterMs, place)) return { kind: 'polar-day' };
  const sunriseMs = crossingMs(midnightBeforeMs, noonMs, place);
  const sunsetMs = crossingMs(noonMs, midnightAfterMs, place);
  return {
    kind: 'rises',
    sunrise: new Date(sunriseMs),
    sunset: new Date(sunsetMs),
    dayLengthH: (sunsetMs - sunriseMs) / MS_PER_H,
  };
}

/**
 * The night in which an instant lies or, by day, the one that follows.
 *
 * @param at - The instant.
 * @param latitudeDeg - North positive. [°, −90…90]
 * @param longitudeDeg - East positive. [°, −180…180]
 * @returns Sunset, sunrise and shutting time; `undefined` when the sun stays up through that night (polar day). While the sun stays
 * down (polar night) the span runs from one solar noon to the next.
 * @throws RangeError when the instant is invalid or the place is off the globe.
 *
 * @remarks Two hours before sunset is common practice, no source; on days under four hours it would fall before noon and is moved there.
 */
export function nightFrom(at: Date, latitudeDeg: number, longitudeDeg: number): NightSpan | undefined {
  refusePlaceOffTheGlobe(at, latitudeDeg, longitudeDeg);
  const place = { latitudeDeg, longitudeDeg };
  const day = solarDayNumber(at, longitudeDeg);
  const beforeNoon = at.getTime() < transitMs(day + 0.5, longitudeDeg);
  const night = nightAfterNoon(beforeNoon ? day - 1 : day, place);
  if (night !== undefined && at.getTime() < night.sunrise.getTime()) return night;
  return beforeNoon ? nightAfterNoon(day, place) : undefined;
}

interface Place {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

function nightAfterNoon(day: number, place: Place): NightSpan | undefined {
  const noonMs = transitMs(day + 0.5, place.longitudeDeg);
  const midnightMs = transitMs(day + 1, place.longitudeDeg);
  const nextNoonMs = transitMs(day + 1.5, place.longitudeDeg);
  if (isUp(midnightMs, place)) return undefined;
  const sunsetMs = isUp(noonMs, place) ? crossingMs(noonMs, midnightMs, place) : noonMs;
  const sunriseMs = isUp(nextNoonMs, place) ? crossingMs(midnightMs, nextNoonMs, place) : nextNoonMs;
  return {
    shutBy: new Date(Math.max(noonMs, sunsetMs - SHUT_BEFORE_SUNSET_H * MS_PER_H)),
    sunset: new Date(sunsetMs),
    sunrise: new Date(sunriseMs),
  };
}

/** Solar days since 1970 at this longitude, counted from solar midnight. */
function solarDayNumber(at: Date, longitudeDeg: number): number {
  const solarMin = 4 * longitudeDeg + almanacSun(at).equationOfTimeMin;
  return Math.floor((at.getTime() + solarMin * MS_PER_MIN) / MS_PER_DAY);
}

/** Instant of a solar midnight (whole number) or noon (half). */
function transitMs(solarDays: number, longitudeDeg: number): number {
  const meanMs = solarDays * MS_PER_DAY - 4 * longitudeDeg * MS_PER_MIN;
  return meanMs - almanacSun(new Date(meanMs)).equationOfTimeMin * MS_PER_MIN;
}

function isUp(atMs: number, place: Place): boolean {
  const at = new Date(atMs);
  const { declinationRad, equationOfTimeMin } = almanacSun(at);
  const solarMin = atMs / MS_PER_MIN + equationOfTimeMin + 4 * place.longitudeDeg;
  const hourAngleRad = (solarMin / 4 - 180) * RAD_PER_DEG;
  const latitudeRad = place.latitudeDeg * RAD_PER_DEG;
  const sinElevation =
    Math.sin(latitudeRad) * Math.sin(declinationRad) +
    Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.cos(hourAngleRad);
  return sinElevation > Math.sin(RISING_DEG * RAD_PER_DEG);
}

/** Halves the stretch between an instant with the sun up and one with it down until half a second is left. */
function crossingMs(fromMs: number, toMs: number, place: Place): number {
  const startsUp = isUp(fromMs, place);
  let beforeMs = fromMs;
  let afterMs = toMs;
  while (afterMs - beforeMs > SEARCH_STEP_MS) {
    const middleMs = (beforeMs + afterMs) / 2;
    if (isUp(middleMs, place) === startsUp) beforeMs = middleMs;
    else afterMs = middleMs;
  }
  return Math.round((beforeMs + afterMs) / 2);
}
