import { MS_PER_H, MS_PER_MIN } from '../durations.ts';
import type { NightSite, WeatherSeries } from '../site-and-weather.ts';
import { clearSkyGlobalWPerM2, cloudedGlobalWPerM2 } from '../sun/radiation.ts';
import { solarPosition } from '../sun/solar-position.ts';
import { sunTimes } from '../sun/sunrise-sunset.ts';
import { dailyCurveC } from './daily-curve.ts';

/** Warmest hour after solar noon (judgement). */
const PEAK_AFTER_NOON_H = 2;
/** Range of a clear day, and what a closed sky takes of it: those of the ordinary night. */
const CLEAR_RANGE_K = 12;
const CLOUD_TAKES_K = 7;
/** Sky and wind of the missing hours are those of so many hours after them. */
const FIRST_HOURS = 6;
/** With less of the day's warmth left than this, the first hour tells nothing of how warm it was. */
const TELLING_FRACTION = 0.2;
const MOST_RANGE_RATIO = 1.5;

/**
 * Weather that begins at the sunrise before a night, with the hours that are missing made up: a forecast that begins after dark has lost the
 * day, without which covers look colder than no cover.
 *
 * @param site - Where.
 * @param series - The forecast, in steps of an hour.
 * @param sunset - Of the night.
 * @returns The series itself where it reaches back to the sunrise; otherwise a longer one whose `assumedH` tells how much of it is made up.
 *
 * @remarks
 * A day of the usual course (see `dailyCurveC`) that runs into the first known hour: as high as that hour and the coming low let one guess,
 * within two thirds and one and a half of the usual range under such a sky; dew point, cloud and wind of the first hours.
 */
export function withDayBefore(site: NightSite, series: WeatherSeries, sunset: Date): WeatherSeries {
  const sun = sunTimes(new Date(sunset.getTime() - MS_PER_MIN), site.latitudeDeg, site.longitudeDeg);
  if (sun.kind !== 'rises' || series.stepH !== 1) return series;
  const sinceSunriseH = (series.first.getTime() - sun.sunrise.getTime()) / MS_PER_H;
  const missing = Math.ceil(sinceSunriseH);
  if (missing < 1) return series;
  const cloudFraction = meanOf(series.cloudFraction);
  const shape = { lowC: 0, rangeK: 1, peakAfterH: sun.dayLengthH / 2 + PEAK_AFTER_NOON_H };
  const firstC = series.screenC[0] ?? Number.NaN;
  const left = dailyCurveC(shape, sinceSunriseH);
  const rangeK = rangeOfDayK(firstC - Math.min(...series.screenC.slice(0, 24)), left, cloudFraction);
  const hours = Array.from({ length: missing }, (_, i) => sinceSunriseH - missing + i);
  const before = (values: readonly number[], value: number) => [...hours.map(() => value), ...values];
  const atMs = (hour: number) => sun.sunrise.getTime() + hour * MS_PER_H;
  return {
    ...series,
    first: new Date(atMs(sinceSunriseH - missing)),
    assumedH: missing,
    screenC: [...hours.map((hour) => firstC + rangeK * (dailyCurveC(shape, hour) - left)), ...series.screenC],
    dewPointC: before(series.dewPointC, meanOf(series.dewPointC)),
    cloudFraction: before(series.cloudFraction, cloudFraction),
    wind10MPerS: before(series.wind10MPerS, meanOf(series.wind10MPerS)),
    ...(series.globalWPerM2 && {
      globalWPerM2: [
        ...hours.map((hour) => sunAtWPerM2(site, new Date(atMs(hour)), cloudFraction)),
        ...series.globalWPerM2,
      ],
    }),
  };
}

/** How much warmer than its low the day was. */
function rangeOfDayK(aboveLowK: number, left: number, cloudFraction: number): number {
  const usualK = CLEAR_RANGE_K - CLOUD_TAKES_K * cloudFraction;
  if (left < TELLING_FRACTION) return usualK;
  return Math.max(usualK / MOST_RANGE_RATIO, Math.min(MOST_RANGE_RATIO * usualK, aboveLowK / left));
}

function sunAtWPerM2({ latitudeDeg, longitudeDeg }: NightSite, at: Date, cloudFraction: number): number {
  const { cosZenith } = solarPosition(at, latitudeDeg, longitudeDeg);
  return cosZenith > 0 ? cloudedGlobalWPerM2(clearSkyGlobalWPerM2(cosZenith), cloudFraction) : 0;
}

function meanOf(values: readonly number[]): number {
  const first = values.slice(0, FIRST_HOURS);
  return first.reduce((sum, value) => sum + value, 0) / first.length;
}
