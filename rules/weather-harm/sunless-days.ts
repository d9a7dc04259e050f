import type { NightSite, WeatherSeries } from '../site-and-weather.ts';
import { preparedWeather } from '../sky/prepared-weather.ts';
import { clearSkyGlobalWPerM2 } from '../sun/radiation.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
/** Fine enough for the sum of a day. */
const STEP_MIN = 30;
const J_PER_MJ = 1e6;
/** A day with less than this share of a clear day's sun warms no bed (judgement: an overcast sky leaves a quarter). */
const SUNLESS_BELOW_FRACTION = 0.4;

/** Sun of one day on level ground. */
export interface DaySun {
  /** [MJ m⁻²] */
  readonly sunMJPerM2: number;
  /** Under a clear sky all day. [MJ m⁻²] */
  readonly clearMJPerM2: number;
}

/**
 * Sun of the whole days behind an instant, the latest first.
 *
 * @param place - Where.
 * @param weather - Hours gone by.
 * @param before - The days end here; each is 24 hours long.
 * @returns A day for every 24 hours that the weather reaches back; none when it does not reach back a day.
 * @see Radiation as in the energy balance
 */
export function pastDaysSun(
  place: Pick<NightSite, 'latitudeDeg' | 'longitudeDeg' | 'horizonDeg'>,
  weather: WeatherSeries,
  before: Date,
): readonly DaySun[] {
  const dayCount = Math.floor((before.getTime() - weather.first.getTime()) / DAY_MS);
  const endOfSeries = weather.first.getTime() + (weather.screenC.length - 1) * weather.stepH * HOUR_MS;
  if (dayCount < 1 || before.getTime() > endOfSeries) return [];
  const start = new Date(before.getTime() - dayCount * DAY_MS);
  const { instants } = preparedWeather(place, weather, start, before, STEP_MIN);
  const perDay = (DAY_MS / HOUR_MS) * (60 / STEP_MIN);
  const stepMJPerWPerM2 = (STEP_MIN * 60) / J_PER_MJ;
  return Array.from({ length: dayCount }, (_, day) => {
    const hours = instants.slice((dayCount - 1 - day) * perDay, (dayCount - day) * perDay);
    const sum = (of: (instant: (typeof hours)[number]) => number) => hours.reduce((total, each) => total + of(each), 0);
    return {
      sunMJPerM2: stepMJPerWPerM2 * sum(({ globalWPerM2 }) => globalWPerM2),
      clearMJPerM2: stepMJPerWPerM2 * sum(({ sun }) => clearSkyGlobalWPerM2(sun.cosZenith)),
    };
  });
}

/**
 * How many sunless days there have been one after the other.
 *
 * @param days - The latest first, as from {@link pastDaysSun}.
 * @returns Days with less than two fifths of a clear day's sun, up to the first sunny one.
 * @see Covers gave little after an overcast cold day, and less through a run of them (`sunless-covers`)
 */
export function sunlessDays(days: readonly DaySun[]): number {
  const sunny = days.findIndex(({ sunMJPerM2, clearMJPerM2 }) => sunMJPerM2 >= SUNLESS_BELOW_FRACTION * clearMJPerM2);
  return sunny < 0 ? days.length : sunny;
}
