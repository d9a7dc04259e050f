import type { CoverKey } from '../covers/cover-key.ts';
import type { NightSite, WeatherSeries } from '../site-and-weather.ts';
import { sunTimes } from '../sun/sunrise-sunset.ts';
import { assumedClimate, type Climate, climateGroundC } from './climate.ts';
import { dailyCurveC } from './daily-curve.ts';
import { coldestSoilC, measuredSoil, type SoilStart, soilAt, soilStart, usualWeekC } from './soil-start.ts';

export const NIGHT_SKIES = ['clear', 'half', 'overcast'] as const;
export type NightSky = (typeof NIGHT_SKIES)[number];

export const NIGHT_WINDS = ['calm', 'light', 'breezy', 'windy'] as const;
export type NightWind = (typeof NIGHT_WINDS)[number];

const HOUR_MS = 3_600_000;
/** Overcast skies have gaps, and the last twentieth is worth most: the colder side. All judgement. */
const CLOUD_FRACTION: Readonly<Record<NightSky, number>> = { clear: 0, half: 0.5, overcast: 0.95 };
/** Clouds flatten the day. */
const RANGE_K: Readonly<Record<NightSky, number>> = { clear: 12, half: 9, overcast: 5 };
const WIND_10_M_PER_S: Readonly<Record<NightWind, number>> = { calm: 1, light: 2, breezy: 4, windy: 7 };
const DEW_POINT_BELOW_LOW_K = 3;
/** Warmest hour after solar noon. */
const PEAK_AFTER_NOON_H = 2;
const HOURS_AFTER_SUNRISE = 9;
/** From sunset until the sun has warmed the leaf again. */
const WINDOW_AFTER_SUNRISE_H = 1;

/** An open garden in the middle of the temperate zone (judgement). */
const ORDINARY_SITE: NightSite = {
  latitudeDeg: 40,
  longitudeDeg: -75,
  elevationM: 0,
  skyViewFraction: 1,
  shelterFraction: 0.8,
  inversionK: 3,
};
/** Beyond this the sun may not rise; the ordinary night is that of this latitude. */
const FARTHEST_LATITUDE_DEG = 60;
const SNOW_INVERSION_K = 5;

/** Air this warm on average brings no frost worth asking about: then the first of December (June) is meant. */
const FROST_SEASON_BELOW_C = 14;
const ORDINARY_YEAR = 2025;

/** Under snow the top soil hovers just above freezing. */
const SNOW_SOIL_C = 1.5;
const DEEP_PER_LOW = 0.25;
const REFERENCE_LOW_C = -4;
const MOST_DEEP_SHIFT_K = 4;
const SOIL_SD_K = 2;

export interface OrdinaryNightOptions {
  readonly sky?: NightSky;
  readonly wind?: NightWind;
  /** In figures, instead of `wind`. [m s⁻¹ at 10 m, 0…60] */
  readonly windMPerS?: number;
  /** Snow lies round the bed: colder air at the ground, soil near freezing. */
  readonly snowLying?: boolean;
  /** What is known of the place. */
  readonly site?: Partial<NightSite>;
  /** What has lain on the bed for weeks: soil under film is warmer. */
  readonly coveredForWeeks?: readonly CoverKey[];
  /** Mean air of the week before, where it is known. [°C] */
  readonly weekMeanC?: number;
  /** A day of the season that is meant; outside the frost season, or absent, the first of December (June in the south). */
  readonly date?: Date;
  readonly measured10CmC?: number;
}

/** A night made up from its low, ready for `bedNight`. */
export interface OrdinaryNight {
  readonly site: NightSite;
  readonly weather: WeatherSeries;
  /** Under what has lain there for weeks. */
  readonly soil: SoilStart;
  /** The same under anything else. */
  soilUnder(coveredForWeeks: readonly CoverKey[]): SoilStart;
  readonly window: { readonly from: Date; readonly to: Date };
  readonly forecast: { readonly kind: 'stated' };
  /** What was assumed, for the answer to say. */
  readonly assumed: {
    readonly sky: NightSky;
    readonly wind: NightWind;
    readonly dayRangeK: number;
    readonly windMPerS: number;
    readonly night: Date;
    readonly seasonGiven: boolean;
  };
}

/**
 * The night assumed when only its low is named.
 *
 * @param lowC - Outside low, as a thermometer at 2 m or a forecast gives it. [°C, −45…25]
 * @param options - What else is known.
 * @returns Clear, 2 m s⁻¹ and moist soil of the season unless told otherwise; weather from the sunrise before to nine hours
 * after the next, with the same low on both mornings.
 * @throws RangeError when `lowC` is out of range.
 *
 * @remarks
 * All judgement: range of the day 12 K (clear), 9 K (half), 5 K (overcast); dew point 3 K below the low; colder lows go with
 * colder soil, see {@link usualWeekC}. A night after sunless days has colder soil, a windy cold snap warmer.
 */
export function ordinaryNight(lowC: number, options: OrdinaryNightOptions = {}): OrdinaryNight {
  const site = ordinarySite(options);
  const climate = assumedClimate(site.latitudeDeg, site.elevationM);
  const { night, seasonGiven } = seasonOf(options.date, climate, site.latitudeDeg);
  return nightLike(lowC, night, seasonGiven, options);
}

/**
 * The night of a low on a day that is known, in any season.
 *
 * @param lowC - As for {@link ordinaryNight}. [°C, −45…25]
 * @param day - The day before the night, by its noon.
 * @param options - What else is known.
 */
export function datedNight(lowC: number, day: Date, options: Omit<OrdinaryNightOptions, 'date'> = {}): OrdinaryNight {
  return nightLike(lowC, day, true, options);
}

function nightLike(lowC: number, night: Date, seasonGiven: boolean, options: OrdinaryNightOptions): OrdinaryNight {
  if (!(lowC >= -45 && lowC <= 25)) throw new RangeError(`lowC ${lowC} is outside −45…25`);
  const { sky = 'clear' } = options;
  const windMPerS = options.windMPerS ?? WIND_10_M_PER_S[options.wind ?? 'light'];
  if (!(windMPerS >= 0 && windMPerS <= 60)) throw new RangeError(`windMPerS ${windMPerS} is outside 0…60`);
  const wind = options.windMPerS === undefined ? (options.wind ?? 'light') : windOf(windMPerS);
  const site = ordinarySite(options);
  const { sunrise, sunset, dayLengthH } = sunOn(night, site);
  const curve = { lowC, rangeK: RANGE_K[sky], peakAfterH: dayLengthH / 2 + PEAK_AFTER_NOON_H };
  const nextSunrise = new Date(sunrise.getTime() + 24 * HOUR_MS);
  const soilUnder = (covers: readonly CoverKey[]) => ordinarySoil(lowC, sunset, site, covers, options);
  const hours = Array.from({ length: 24 + HOURS_AFTER_SUNRISE + 1 }, (_, hour) => hour);
  return {
    site,
    weather: {
      first: sunrise,
      stepH: 1,
      screenC: hours.map((hour) => dailyCurveC(curve, hour)),
      dewPointC: hours.map(() => lowC - DEW_POINT_BELOW_LOW_K),
      cloudFraction: hours.map(() => CLOUD_FRACTION[sky]),
      wind10MPerS: hours.map(() => windMPerS),
    },
    soil: soilUnder(options.coveredForWeeks ?? []),
    soilUnder,
    window: { from: sunset, to: new Date(nextSunrise.getTime() + WINDOW_AFTER_SUNRISE_H * HOUR_MS) },
    forecast: { kind: 'stated' },
    assumed: { sky, wind, dayRangeK: curve.rangeK, windMPerS, night, seasonGiven },
  };
}

/** The word for a wind in figures: half-way between two. */
function windOf(windMPerS: number): NightWind {
  if (windMPerS < 1.6) return 'calm';
  if (windMPerS < 3) return 'light';
  return windMPerS < 5.5 ? 'breezy' : 'windy';
}

function ordinarySite({ site, snowLying }: OrdinaryNightOptions): NightSite {
  const known = { ...ORDINARY_SITE, ...site };
  const latitudeDeg = Math.max(-FARTHEST_LATITUDE_DEG, Math.min(FARTHEST_LATITUDE_DEG, known.latitudeDeg));
  return {
    ...known,
    latitudeDeg,
    inversionK: snowLying ? Math.max(known.inversionK, SNOW_INVERSION_K) : known.inversionK,
  };
}

function seasonOf(date: Date | undefined, climate: Climate, latitudeDeg: number) {
  if (date !== undefined && climateGroundC(climate, date, 0) <= FROST_SEASON_BELOW_C) {
    return { night: date, seasonGiven: true };
  }
  return { night: firstOfWinter(latitudeDeg), seasonGiven: false };
}

/** Noon, UTC, of the first of December, in the south of June. */
function firstOfWinter(latitudeDeg: number): Date {
  return new Date(Date.UTC(ORDINARY_YEAR, latitudeDeg < 0 ? 5 : 11, 1, 12));
}

function sunOn(night: Date, site: NightSite): { sunrise: Date; sunset: Date; dayLengthH: number } {
  const sun = sunTimes(night, site.latitudeDeg, site.longitudeDeg);
  if (sun.kind !== 'rises') throw new RangeError(`The sun does not rise and set at latitudeDeg ${site.latitudeDeg}`);
  return sun;
}

function ordinarySoil(
  lowC: number,
  at: Date,
  site: NightSite,
  coveredForWeeks: readonly CoverKey[],
  { weekMeanC, measured10CmC, snowLying = false }: OrdinaryNightOptions,
): SoilStart {
  const climate = assumedClimate(site.latitudeDeg, site.elevationM);
  const guess = soilStart({
    ...{ site, at, climate, coveredForWeeks },
    weekMeanC: weekMeanC ?? usualWeekC(lowC, at, climate),
    ...(weekMeanC === undefined && { guessSdK: SOIL_SD_K }),
  });
  const shiftK = DEEP_PER_LOW * (lowC - REFERENCE_LOW_C);
  const shiftedC = guess.deepC + Math.max(-MOST_DEEP_SHIFT_K, Math.min(0, shiftK));
  const deepC = Math.max(coldestSoilC(coveredForWeeks), shiftedC);
  if (measured10CmC !== undefined) return measuredSoil(measured10CmC, deepC);
  return soilAt(snowLying ? Math.min(guess.soil10CmC, SNOW_SOIL_C) : guess.soil10CmC, deepC, guess.sdK);
}
