import {
  type BedNight,
  bedNight,
  type CoverKey,
  forecastLowSdK,
  type NightInput,
  type NightSite,
  nightRun,
  preparedWeather,
  type SoilStart,
  soilOf,
  soilStart,
  sunTimes,
  type WeatherSeries,
} from '../../../rules/index.ts';
import { dailyCurveC } from '../../../rules/night/daily-curve.ts';
import { type HiddenGarden, type NightErrors, nightErrors, STEP, trueStack } from './hidden-garden.ts';
import type { Random } from './random.ts';

const HOUR_MS = 3_600_000;
/** To an hour after the second sunrise. */
const RUN_H = 26;
const SITE: NightSite = {
  latitudeDeg: 43,
  longitudeDeg: -76,
  elevationM: 150,
  skyViewFraction: 1,
  shelterFraction: 0.8,
  inversionK: 3,
};

/** A night as forecast. */
export interface ForecastNight {
  readonly weather: WeatherSeries;
  readonly sunset: Date;
  readonly window: { readonly from: Date; readonly to: Date };
  readonly lowC: number;
  readonly errors: NightErrors;
}

/** A night as it was, beside what the book says of it. */
export interface TrueNight {
  readonly book: BedNight;
  /** The book's lows had the night been better forecast. */
  readonly known: () => KnownLows;
  readonly outsideLowC: number;
  readonly underCoverLowC: number;
  readonly leafLowC: number;
}

/** What the book says when it is told more. [°C] */
export interface KnownLows {
  /** The true low outside. */
  readonly givenOutsideC: number;
  /** The whole weather: air, dew point, cloud and wind. */
  readonly givenWeatherC: number;
}

/** One winter night in two, invented: lows about −3 °C, sky clear, broken or closed, wind about 2 m/s. */
export function forecastNight(day: number, chance: Random): ForecastNight {
  const sun = sunTimes(new Date(Date.UTC(2025, 10, 20 + day, 17)), SITE.latitudeDeg, SITE.longitudeDeg);
  if (sun.kind !== 'rises') throw new RangeError('the sun does not rise');
  const lowC = -3 + 4 * chance.normal();
  const cloud = skyOf(chance);
  const wind = Math.min(8, Math.exp(Math.log(2) + 0.5 * chance.normal()));
  const dewPointC = lowC - Math.abs(2.5 + 1.5 * chance.normal());
  const dayH = (sun.sunset.getTime() - sun.sunrise.getTime()) / HOUR_MS;
  const curve = { lowC, rangeK: 12 - 6 * cloud, peakAfterH: dayH / 2 + 2 };
  const hours = Array.from({ length: RUN_H + 1 }, (_, hour) => hour);
  const forecastSdK = forecastLowSdK(
    { kind: 'forecast', nightsAhead: 0 },
    { site: SITE, cloudFraction: cloud, windMPerS: wind },
  );
  return {
    weather: {
      first: sun.sunrise,
      stepH: 1,
      screenC: hours.map((hour) => dailyCurveC(curve, hour)),
      dewPointC: hours.map(() => dewPointC),
      cloudFraction: hours.map(() => cloud),
      wind10MPerS: hours.map(() => wind),
    },
    sunset: sun.sunset,
    window: { from: sun.sunset, to: new Date(sun.sunrise.getTime() + 25 * HOUR_MS) },
    lowC,
    errors: nightErrors(chance, forecastSdK),
  };
}

function skyOf(chance: Random): number {
  const kind = chance.even();
  if (kind < 0.45) return 0.2 * chance.even();
  return kind < 0.7 ? 0.3 + 0.5 * chance.even() : 0.85 + 0.15 * chance.even();
}

/** The same night in a garden that differs from the book in everything that the book does not know. */
export function trueNight(night: ForecastNight, covers: readonly CoverKey[], garden: HiddenGarden): TrueNight {
  const { weather, sunset, window, lowC, errors } = night;
  const soil = soilStart({ site: SITE, at: sunset, weekMeanC: lowC + 4, coveredForWeeks: covers });
  const common = { site: SITE, soil, bed: { covers }, window };
  const book = computed({ ...common, weather, forecast: { kind: 'forecast', nightsAhead: 0 } });
  const input = trueInput(night, book, soil, garden);
  const toldC = (told: WeatherSeries) =>
    computed({ ...common, weather: told, forecast: { kind: 'stated' } }).thermometerLowC;
  const prepared = preparedWeather(input.site, input.weather, input.start, input.end);
  const skyWPerM2 = garden.skyWPerM2 + errors.skyShare * skyStep(input.weather.cloudFraction[0] ?? 0);
  const run = nightRun(input, {
    prepared: {
      ...prepared,
      instants: prepared.instants.map((each) => ({ ...each, skyWPerM2: each.skyWPerM2 + skyWPerM2 })),
    },
  });
  const low = (values: Float64Array) => lowest(values, run.timesMs, window);
  return {
    book,
    known: () => ({
      givenOutsideC: toldC(warmer(weather, garden.siteOffsetK + errors.forecastK)),
      givenWeatherC: toldC(input.weather),
    }),
    outsideLowC: low(run.screenC),
    underCoverLowC: low(run.thermometerC) + garden.formOffsetK,
    leafLowC: low(run.leafC) + garden.formOffsetK,
  };
}

function computed(input: Parameters<typeof bedNight>[0]): BedNight {
  const night = bedNight(input);
  if (night.kind !== 'night') throw new RangeError('these covers cannot lie so');
  return night;
}

function trueInput(
  { weather, window, sunset, errors }: ForecastNight,
  { stack }: BedNight,
  { profile }: SoilStart,
  garden: HiddenGarden,
): NightInput {
  const soil = soilOf('moist');
  const soilK = garden.soilK + errors.soilK;
  const day = trueStack(stack.day, garden);
  return {
    site: {
      ...SITE,
      skyViewFraction: Math.max(0.3, SITE.skyViewFraction - garden.skyViewLostFraction),
      inversionK: Math.max(0, SITE.inversionK + garden.inversionK),
    },
    start: weather.first,
    end: new Date(weather.first.getTime() + RUN_H * HOUR_MS),
    weather: trueWeather(weather, garden, errors),
    soil: { ...soil, conductivityWPerMK: soil.conductivityWPerMK * garden.conductivityRatio },
    soilProfile: profile.map(({ depthM, soilC }) => ({ depthM, soilC: soilC + (depthM > 0.5 ? soilK / 2 : soilK) })),
    canopy: { leafAreaIndex: Math.max(0.05, Math.min(5, garden.leafAreaRatio)), leafSizeM: 0.05 },
    stack: day,
    ...(stack.day !== stack.night && {
      changes: [
        { at: new Date(sunset.getTime() - 2 * HOUR_MS), stack: trueStack(stack.night, garden) },
        { at: window.to, stack: day },
      ],
    }),
  };
}

function trueWeather(weather: WeatherSeries, garden: HiddenGarden, errors: NightErrors): WeatherSeries {
  const air = warmer(weather, garden.siteOffsetK + errors.forecastK);
  return {
    ...air,
    dewPointC: air.dewPointC.map((value, i) =>
      Math.min(air.screenC[i] ?? value, value + garden.dewPointK + errors.dewPointK),
    ),
    cloudFraction: air.cloudFraction.map((value) => Math.max(0, Math.min(1, value + errors.cloudFraction))),
    wind10MPerS: air.wind10MPerS.map((value) =>
      Math.max(0.2, Math.min(15, value * Math.exp(garden.windLog + errors.windLog))),
    ),
  };
}

function warmer(weather: WeatherSeries, byK: number): WeatherSeries {
  const moved = (values: readonly number[]) => values.map((value) => value + byK);
  return { ...weather, screenC: moved(weather.screenC), dewPointC: moved(weather.dewPointC) };
}

function skyStep(cloudFraction: number): number {
  return cloudFraction > 0.5 && cloudFraction < 0.95 ? STEP.brokenSkyWPerM2 : STEP.skyWPerM2;
}

function lowest(values: Float64Array, timesMs: Float64Array, { from, to }: ForecastNight['window']): number {
  return Math.min(...values.filter((_, i) => isWithin(timesMs[i] ?? Number.NaN, from, to)));
}

function isWithin(atMs: number, from: Date, to: Date): boolean {
  return atMs >= from.getTime() && atMs <= to.getTime();
}
