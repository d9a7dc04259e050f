import { saturationVapourHPa } from '../air/humidity.ts';
import { MS_PER_H, MS_PER_MIN } from '../durations.ts';
import type { NightSite, WeatherSeries } from '../site-and-weather.ts';
import { isBehindHorizon } from '../sun/horizon.ts';
import { clearSkyGlobalWPerM2, cloudedGlobalWPerM2, diffuseFraction } from '../sun/radiation.ts';
import { type SolarPosition, solarPosition } from '../sun/solar-position.ts';
import { inversionStrengthFraction } from './inversion.ts';
import { skyLongwaveWPerM2 } from './sky-longwave.ts';
import { checkedWeather } from './weather-check.ts';
import { windFactor } from './wind-profile.ts';

const LOWEST_COS_ZENITH = 0.01;

/** The weather outside at one instant, with what every bed of the place needs from it. */
export interface OutsideInstant {
  readonly atMs: number;
  readonly screenC: number;
  readonly vapourHPa: number;
  readonly wind10MPerS: number;
  /** `windFactor` of the wind at 10 m. */
  readonly windFactor: number;
  readonly skyWPerM2: number;
  /** Cooling of the lowest air per kelvin of the site's inversion number. */
  readonly inversionFraction: number;
  readonly globalWPerM2: number;
  readonly sun: SolarPosition;
}

/** Where the weather is looked at, and what hides the sun there. */
type WeatherPlace = Pick<NightSite, 'latitudeDeg' | 'longitudeDeg' | 'horizonDeg'>;

/** Weather of one place worked out once and shared by all its beds. */
export interface PreparedWeather {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly horizonDeg?: readonly number[];
  readonly series: WeatherSeries;
  readonly firstMs: number;
  readonly stepMin: number;
  readonly instants: readonly OutsideInstant[];
}

/**
 * Works out the weather at even steps for all beds of one place: sky, sun, vapour and inversion.
 *
 * @param place - Where; only latitude, longitude and horizon matter, so that beds with other shelter share the result.
 * @param series - The forecast.
 * @param start - First instant.
 * @param end - Last instant.
 * @param stepMin - Distance of the instants. [min, 1…30]
 * @returns Weather that `nightRun` accepts instead of working it out again.
 * @throws RangeError when the series is malformed or does not cover `start` to `end`.
 */
export function preparedWeather(
  place: WeatherPlace,
  series: WeatherSeries,
  start: Date,
  end: Date,
  stepMin = 10,
): PreparedWeather {
  checkedWeather(series, start, end);
  if (!(stepMin >= 1 && stepMin <= 30)) throw new RangeError(`stepMin ${stepMin} is outside 1…30`);
  const firstMs = start.getTime();
  const stepMs = stepMin * MS_PER_MIN;
  const count = Math.floor((end.getTime() - firstMs) / stepMs) + 1;
  const instants = Array.from({ length: count }, (_, i) => outsideInstant(place, series, firstMs + i * stepMs));
  const { latitudeDeg, longitudeDeg, horizonDeg } = place;
  return { latitudeDeg, longitudeDeg, ...(horizonDeg && { horizonDeg }), series, firstMs, stepMin, instants };
}

/**
 * Other weather of the same place and instants: the sun, the dear part, is taken over.
 *
 * @param prepared - Weather of the place and instants.
 * @param series - The other forecast.
 * @returns What {@link preparedWeather} makes of it.
 * @throws RangeError when the series is malformed or does not cover the instants.
 */
export function underSameSun(prepared: PreparedWeather, series: WeatherSeries): PreparedWeather {
  const { instants } = prepared;
  const lastMs = instants[instants.length - 1]?.atMs ?? prepared.firstMs;
  checkedWeather(series, new Date(prepared.firstMs), new Date(lastMs));
  return { ...prepared, series, instants: instants.map(({ atMs, sun }) => outsideUnder(sun, prepared, series, atMs)) };
}

/**
 * The weather at one instant, from the prepared steps or, between them, from the forecast.
 *
 * @param weather - Prepared weather.
 * @param atMs - Instant, within the forecast. [ms since 1970]
 * @returns Weather at that instant.
 */
export function outsideAt(weather: PreparedWeather, atMs: number): OutsideInstant {
  const position = (atMs - weather.firstMs) / (weather.stepMin * MS_PER_MIN);
  const index = Math.floor(position);
  const prepared = index === position ? weather.instants[index] : undefined;
  return prepared ?? outsideInstant(weather, weather.series, atMs);
}

function outsideInstant(place: WeatherPlace, series: WeatherSeries, atMs: number): OutsideInstant {
  return outsideUnder(solarPosition(new Date(atMs), place.latitudeDeg, place.longitudeDeg), place, series, atMs);
}

function outsideUnder(sun: SolarPosition, place: WeatherPlace, series: WeatherSeries, atMs: number): OutsideInstant {
  const position = (atMs - series.first.getTime()) / (series.stepH * MS_PER_H);
  const before = Math.min(Math.max(0, series.screenC.length - 2), Math.floor(position));
  const share = position - before;
  const screenC = between(series.screenC, before, share);
  const cloudFraction = between(series.cloudFraction, before, share);
  const wind10MPerS = between(series.wind10MPerS, before, share);
  const vapourHPa = saturationVapourHPa(Math.min(screenC, between(series.dewPointC, before, share)));
  const skyWPerM2 = skyLongwaveWPerM2(screenC, vapourHPa, cloudFraction);
  const given = series.globalWPerM2;
  const modelled = given === undefined ? undefined : between(given, before, share);
  return {
    atMs,
    screenC,
    vapourHPa,
    wind10MPerS,
    windFactor: windFactor(wind10MPerS),
    skyWPerM2,
    inversionFraction: inversionStrengthFraction(screenC, skyWPerM2, wind10MPerS, sun.elevationDeg),
    globalWPerM2: unshadedWPerM2(globalWPerM2(sun.cosZenith, cloudFraction, modelled), sun, place.horizonDeg ?? []),
    sun,
  };
}

function globalWPerM2(cosZenith: number, cloudFraction: number, givenWPerM2: number | undefined): number {
  if (cosZenith <= LOWEST_COS_ZENITH) return 0;
  return givenWPerM2 ?? cloudedGlobalWPerM2(clearSkyGlobalWPerM2(cosZenith), cloudFraction);
}

/**
 * What is left where something stands before the sun: the light of the sky. Later it counts as nearly all diffuse, since it is so little;
 * the sky that the thing itself hides is left in (judgement: the exposure of the site counts for that).
 */
function unshadedWPerM2(levelWPerM2: number, sun: SolarPosition, horizonDeg: readonly number[]): number {
  if (levelWPerM2 === 0 || !isBehindHorizon(sun, horizonDeg)) return levelWPerM2;
  return levelWPerM2 * diffuseFraction(levelWPerM2, sun.cosZenith, sun.eccentricity);
}

function between(values: readonly number[], before: number, share: number): number {
  const left = values[before] ?? Number.NaN;
  if (share === 0) return left;
  const right = values[before + 1] ?? Number.NaN;
  return left + share * (right - left);
}
