import {
  type CoverKey,
  MS_PER_H,
  type NightSite,
  pastDaysSun,
  type SoilStart,
  soilStart,
  sunlessDays,
  type WeatherSeries,
} from '../../rules/index.ts';

const HOURS_PER_DAY = 24;
const HOURS_PER_WEEK = 168;
const DAYS_PER_WEEK = 7;
/** With less than a day of weather behind it, the soil is a guess from the days ahead. */
const FEWEST_PAST_H = HOURS_PER_DAY;
/** Then it may be this far off (judgement). [K] */
const GUESSED_SOIL_SD_K = 2.5;

/** What the days gone by have left in the soil. */
export interface SoilBehind {
  /** One after the other, up to now. */
  readonly sunlessDays: number;
  /** Soil that a run begins with, under what has lain on the bed for weeks. */
  under(covers: readonly CoverKey[]): SoilStart;
}

/**
 * The soil as the weather behind has left it.
 *
 * @param at - When the run is about; the deep soil follows the season.
 * @param now - Tells past hours from coming ones.
 */
export function soilBehind(site: NightSite, series: WeatherSeries, at: Date, now: Date): SoilBehind {
  const { weekMeanC, known } = weekMean(series, now);
  const { dailySunMJPerM2, sunless } = sunBehind(site, series, now);
  return {
    sunlessDays: sunless,
    under(coveredForWeeks) {
      const start = soilStart({
        site,
        at,
        weekMeanC,
        coveredForWeeks,
        ...(dailySunMJPerM2 !== undefined && { dailySunMJPerM2 }),
      });
      return known ? start : { ...start, sdK: GUESSED_SOIL_SD_K };
    },
  };
}

/** Mean air of the last seven days, as far back as the weather goes; of the next day where hardly anything lies behind. */
function weekMean({ first, screenC }: WeatherSeries, now: Date): { weekMeanC: number; known: boolean } {
  const pastH = Math.floor((now.getTime() - first.getTime()) / MS_PER_H);
  const known = pastH >= FEWEST_PAST_H;
  const hours = known ? screenC.slice(Math.max(0, pastH - HOURS_PER_WEEK), pastH) : screenC.slice(0, FEWEST_PAST_H);
  return { weekMeanC: hours.reduce((sum, value) => sum + value, 0) / hours.length, known };
}

/** Mean sun of the last days, or of the next one; undefined where less than a day is known. */
function sunBehind(site: NightSite, series: WeatherSeries, now: Date) {
  const onHour = new Date(Math.floor(now.getTime() / MS_PER_H) * MS_PER_H);
  const behind = pastDaysSun(site, series, onHour).slice(0, DAYS_PER_WEEK);
  const ahead = new Date(series.first.getTime() + HOURS_PER_DAY * MS_PER_H);
  const days = behind.length > 0 ? behind : pastDaysSun(site, series, ahead);
  const sum = days.reduce((total, { sunMJPerM2 }) => total + sunMJPerM2, 0);
  return {
    dailySunMJPerM2: days.length === 0 ? undefined : sum / days.length,
    sunless: sunlessDays(behind),
  };
}
