import {
  type BedDay,
  bedDay,
  type DaySpan,
  dayFrom,
  type HarmfulWeather,
  liftsPropped,
  MS_PER_MIN,
  type NightSite,
  type Planting,
  type SharedDay,
  sharedDay,
  type WeatherHarm,
  weatherHarms,
} from '../../rules/index.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { type DayWeather, dayWeather } from '../weather/day-weather.ts';
import { type HarmfulHours, harmfulHours } from '../weather/harmful-weather.ts';
import { plantingOf } from './bed-planting.ts';
import type { Garden, GardenBed, GardenPlanting } from './garden.ts';
import { gardenSite, laidAs } from './night-outlook.ts';
import { type SoilBehind, soilBehind } from './soil-behind.ts';

/** A garden's day: when to open and shut what, and when to pick. */
export interface OpeningPlan {
  readonly garden: Garden;
  readonly day: DaySpan;
  readonly forecast: HourlyForecast;
  readonly weather: DayWeather;
  readonly harmful: HarmfulHours & HarmfulWeather;
  /** In the order in which there is something to do. */
  readonly beds: readonly BedOpening[];
}

export interface BedOpening {
  readonly bed: GardenBed;
  readonly plantings: readonly Planting[];
  readonly day: BedDay;
  readonly harms: readonly WeatherHarm[];
  /** A gust of the day would lift its light when it is propped. */
  readonly liftsPropped: boolean;
}

/** Today until its shutting time, then tomorrow; undefined where the sun does not rise and set. */
export function nextDay(now: Date, { latitudeDeg, longitudeDeg }: Pick<Garden, 'latitudeDeg' | 'longitudeDeg'>) {
  const today = dayFrom(now, latitudeDeg, longitudeDeg);
  if (today === undefined || now < today.shutBy) return today;
  return dayAfter(today, { latitudeDeg, longitudeDeg });
}

/** The day after a day. */
export function dayAfter(
  { sunset }: DaySpan,
  { latitudeDeg, longitudeDeg }: Pick<Garden, 'latitudeDeg' | 'longitudeDeg'>,
): DaySpan | undefined {
  return dayFrom(new Date(sunset.getTime() + MS_PER_MIN), latitudeDeg, longitudeDeg);
}

/**
 * What to do by day in every bed of a garden that has a crop in it.
 *
 * @param now - What time it is; nothing is advised for before it.
 * @throws NightForecastError when the forecast does not carry the day.
 */
export function openingPlan(garden: Garden, forecast: HourlyForecast, day: DaySpan, now: Date): OpeningPlan {
  const weather = dayWeather(forecast, day, now);
  const site = gardenSite(garden, garden.elevationM ?? forecast.gridElevationM ?? 0);
  const shared = sharedDay(site, weather.series, day);
  const cloudKnown = !weather.notes.some(({ code }) => code === 'cloud-assumed-clear');
  const soil = soilBehind(site, weather.series, { runFrom: shared.start, at: day.sunset, now, cloudKnown });
  const hours = harmfulHours(forecast, later(now, day.sunrise), day.sunset);
  const bench = { site, weather, soil, shared, from: later(now, day.sunrise) };
  const harmful = { ...hours, sunlessDays: soil.sunlessDays };
  const beds = garden.beds
    .filter(({ plantings }) => plantings.length > 0)
    .flatMap((bed) => bedOpening(bed, bench, harmful) ?? []);
  return { garden, day, forecast, weather, harmful, beds: beds.toSorted((a, b) => firstMs(a) - firstMs(b)) };
}

interface Bench {
  readonly site: NightSite;
  readonly weather: DayWeather;
  readonly soil: SoilBehind;
  readonly shared: SharedDay;
  readonly from: Date;
}

/** Undefined where a kept bed has covers that cannot lie so. */
function bedOpening(bed: GardenBed, bench: Bench, harmful: HarmfulWeather): BedOpening | undefined {
  const { site, weather, soil, shared, from } = bench;
  const { covers, learned } = bed;
  const plantings = bed.plantings.flatMap(followed);
  const laid = laidAs(bed);
  const input = {
    site,
    weather: weather.series,
    soil: soil.under(laid),
    bed: laid,
    plantings,
    from,
    ...(learned && { learned }),
  };
  const day = bedDay(input, shared);
  if (day.kind !== 'day') return undefined;
  const { openable } = day.opening ?? {};
  return {
    ...{ bed, plantings, day },
    harms: weatherHarms(covers, harmful, site.shelterFraction),
    liftsPropped: openable !== undefined && liftsPropped(openable.cover, harmful.gustMPerS ?? 0, site.shelterFraction),
  };
}

/** Only hardness that is known is worth keeping by opening early; what is assumed for a frost night counts for nothing here. */
function followed(planting: GardenPlanting): Planting[] {
  return plantingOf({ ...planting, hardeningIndex: planting.hardeningIndex ?? 0 }, false);
}

/** When hands are wanted first; beds with nothing to do come last. */
function firstMs({ day: { opening, takenOff } }: BedOpening): number {
  const openMs = opening === undefined || opening.advice.kind === 'stay-shut' ? undefined : opening.advice.openAt;
  return Math.min(openMs?.getTime() ?? Number.MAX_VALUE, takenOff?.at.getTime() ?? Number.MAX_VALUE);
}

function later(one: Date, other: Date): Date {
  return one > other ? one : other;
}
