import { Body, Equator, Horizon, HourAngle, Observer, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { getPosition, getTimes } from 'suncalc';
import { solarPosition, sunTimes } from '../../../rules/index.ts';
import { almanacSun } from '../../../rules/sun/almanac-sun.ts';
import { thisCentury } from '../../rules/sun/arbitrary-places.ts';
import type { ComparedRow, Comparison } from './comparison.ts';
import { evenly, sampled } from './sampled.ts';

const RAD_PER_DEG = Math.PI / 180;
const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/**
 * The NOAA series restarts each New Year and was fitted half a century ago: its declination is up to 0.61° late by 2049, its noon up to a
 * minute. Half a degree changes noon radiation at 50° N in December by 3 %.
 */
export const SERIES_DEG = 0.7;
/**
 * At 65° in June the sun sets so flatly that 0.01° of declination or of the sun's radius moves it by 15 s. Astronomy Engine takes the true
 * radius of the day, we take 16′ all year. Real refraction differs from the standard by minutes, so more would be false precision.
 */
export const RISE_SET_S = 30;
/** The almanac claims 0.01° and 0.1 min for 1950 to 2050; parallax adds 0.002°. */
export const DECLINATION_DEG = 0.02;
export const EQUATION_OF_TIME_MIN = 0.1;

const anywhere = fc.tuple(thisCentury, evenly(-90, 90), evenly(-180, 180));
/** Where people garden: the sun rises and sets on every day of the year. */
const inGardens = fc.tuple(thisCentury, evenly(-65, 65), evenly(-180, 180));

/** Angle between our sun and that of Astronomy Engine. [°] */
export function sunApartDeg([at, latitudeDeg, longitudeDeg]: readonly [Date, number, number]): number {
  const observer = new Observer(latitudeDeg, longitudeDeg, 0);
  const place = Equator(Body.Sun, at, observer, true, true);
  const theirs = Horizon(at, observer, place.ra, place.dec);
  const ours = solarPosition(at, latitudeDeg, longitudeDeg);
  const theirCos = Math.cos(theirs.altitude * RAD_PER_DEG);
  const cosBetween =
    ours.cosZenith * Math.sin(theirs.altitude * RAD_PER_DEG) +
    ours.east * theirCos * Math.sin(theirs.azimuth * RAD_PER_DEG) +
    ours.north * theirCos * Math.cos(theirs.azimuth * RAD_PER_DEG);
  return Math.acos(Math.min(1, cosBetween)) / RAD_PER_DEG;
}

/** Height of our sun less that of SunCalc; it adds refraction, below 0.05° above 20°. [°; absent with the sun below 20°] */
export function heightOffDeg([at, latitudeDeg, longitudeDeg]: readonly [Date, number, number]): number | undefined {
  const theirs = getPosition(at, latitudeDeg, longitudeDeg);
  return theirs.altitude > 20 ? solarPosition(at, latitudeDeg, longitudeDeg).elevationDeg - theirs.altitude : undefined;
}

/** Almanac sun less that of Astronomy Engine. [°, min] */
export function almanacOff(at: Date): { readonly declinationDeg: number; readonly equationOfTimeMin: number } {
  const observer = new Observer(0, 0, 0);
  const ours = almanacSun(at);
  const theirsMin = HourAngle(Body.Sun, at, observer) * 60 - ((at.getTime() % DAY_MS) / 60_000 - 720);
  const apartMin = (((ours.equationOfTimeMin - theirsMin + 720) % 1440) + 1440) % 1440;
  return {
    declinationDeg: ours.declinationRad / RAD_PER_DEG - Equator(Body.Sun, at, observer, true, true).dec,
    equationOfTimeMin: apartMin - 720,
  };
}

export interface RiseSetOff {
  readonly sunriseS: number;
  readonly sunsetS: number;
  readonly dayLengthS: number;
}

/** Our sunrise and sunset less those of Astronomy Engine. [s] */
export function engineRiseSetOff([at, latitudeDeg, longitudeDeg]: readonly [Date, number, number]): RiseSetOff {
  const day = risingDay(at, latitudeDeg, longitudeDeg);
  const observer = new Observer(latitudeDeg, longitudeDeg, 0);
  const theirs = (direction: 1 | -1, near: Date) =>
    SearchRiseSet(Body.Sun, observer, direction, new Date(near.getTime() - HOUR_MS), 1)?.date;
  return riseSetOff(day, theirs(1, day.sunrise), theirs(-1, day.sunset));
}

/** Our sunrise and sunset less those of SunCalc. [s] */
export function suncalcRiseSetOff([at, latitudeDeg, longitudeDeg]: readonly [Date, number, number]): RiseSetOff {
  const day = risingDay(at, latitudeDeg, longitudeDeg);
  const noon = new Date((day.sunrise.getTime() + day.sunset.getTime()) / 2);
  const theirs = getTimes(noon, latitudeDeg, longitudeDeg);
  return riseSetOff(day, theirs.sunrise, theirs.sunset);
}

export function sunComparisons(): readonly Comparison[] {
  return [
    libraryLine('Position of the sun, 2000 to 2050', '°', 'Astronomy Engine 2.1', SERIES_DEG, SERIES_REASON, () =>
      sampled(anywhere).map(([draw, place]) => [idOf(draw, place), sunApartDeg(place)]),
    ),
    libraryLine('Height of the sun above 20°', '°', 'SunCalc 2.0', SERIES_DEG, SERIES_REASON, () =>
      sampled(anywhere).flatMap(([draw, place]) => {
        const offDeg = heightOffDeg(place);
        return offDeg === undefined ? [] : [[idOf(draw, place), offDeg] as const];
      }),
    ),
    libraryLine(
      'Declination, for seasons',
      '°',
      'Astronomy Engine 2.1',
      DECLINATION_DEG,
      'what the almanac claims',
      () => sampled(thisCentury).map(([draw, at]) => [`${draw}, ${at.toISOString()}`, almanacOff(at).declinationDeg]),
    ),
    libraryLine('Sunrise and sunset', 's', 'Astronomy Engine 2.1', RISE_SET_S, RISE_SET_REASON, () =>
      sampled(inGardens).flatMap(([draw, place]) => both(idOf(draw, place), engineRiseSetOff(place))),
    ),
    libraryLine('Sunrise and sunset', 's', 'SunCalc 2.0', RISE_SET_S, RISE_SET_REASON, () =>
      sampled(inGardens).flatMap(([draw, place]) => both(idOf(draw, place), suncalcRiseSetOff(place))),
    ),
    libraryLine('Length of the day', 's', 'SunCalc 2.0', 2 * RISE_SET_S, RISE_SET_REASON, () =>
      sampled(inGardens).map(([draw, place]) => [idOf(draw, place), suncalcRiseSetOff(place).dayLengthS]),
    ),
  ];
}

const SERIES_REASON = 'the NOAA series drifts: 0.7° at most, 3 % of December noon sun at 50° N';
const RISE_SET_REASON =
  'half a minute: the sun’s radius and a hundredth of a degree at 65°; real refraction differs by minutes';

function libraryLine(
  quantity: string,
  unit: string,
  source: string,
  tolerance: number,
  reason: string,
  offs: () => readonly (readonly [id: string, off: number])[],
): Comparison {
  const rows: readonly ComparedRow[] = offs().map(([id, ours]) => ({ id, ours, theirs: 0, tolerance }));
  return { quantity, unit, source, standing: 'library', tolerance: reason, rows };
}

function both(id: string, { sunriseS, sunsetS }: RiseSetOff): readonly (readonly [string, number])[] {
  return [
    [`${id}, sunrise`, sunriseS],
    [`${id}, sunset`, sunsetS],
  ];
}

function idOf(draw: string, [at, latitudeDeg, longitudeDeg]: readonly [Date, number, number]): string {
  return `${draw}, ${at.toISOString()} ${latitudeDeg.toFixed(1)}, ${longitudeDeg.toFixed(1)}`;
}

function risingDay(at: Date, latitudeDeg: number, longitudeDeg: number) {
  const day = sunTimes(at, latitudeDeg, longitudeDeg);
  if (day.kind !== 'rises') throw new Error(`${day.kind} at ${latitudeDeg}`);
  return day;
}

function riseSetOff(
  day: { readonly sunrise: Date; readonly sunset: Date; readonly dayLengthH: number },
  sunrise: Date | null | undefined,
  sunset: Date | null | undefined,
): RiseSetOff {
  const offS = (ours: Date, theirs: Date | null | undefined) =>
    theirs === null || theirs === undefined ? Number.POSITIVE_INFINITY : (ours.getTime() - theirs.getTime()) / 1000;
  const sunriseS = offS(day.sunrise, sunrise);
  const sunsetS = offS(day.sunset, sunset);
  const theirLengthS = ((sunset?.getTime() ?? Number.NaN) - (sunrise?.getTime() ?? Number.NaN)) / 1000;
  return { sunriseS, sunsetS, dayLengthS: day.dayLengthH * 3600 - theirLengthS };
}
