import {
  assumedClimate,
  type BedAsLaid,
  MS_PER_H,
  type NightSite,
  pastDaysSun,
  type SharedPast,
  type SoilStart,
  sharedPast,
  soilAfterDays,
  soilStart,
  sunlessDays,
  usualWeekC,
  type WeatherSeries,
} from '../../rules/index.ts';

const HOURS_PER_DAY = 24;
const HOURS_PER_WEEK = 168;
const DAYS_PER_WEEK = 7;
/** So many hours at least must lie before the night for the bed to be followed through them: the top soil forgets within two days (judgement). */
const FEWEST_FOLLOWED_H = 2 * HOURS_PER_DAY;
/** With less than a day of weather behind it, the soil is a guess from the night that comes. */
const FEWEST_PAST_H = HOURS_PER_DAY;
/** Then it may be this far off (judgement). [K] */
const GUESSED_SOIL_SD_K = 2.5;

/** What the days gone by have left in the soil. */
export interface SoilBehind {
  /** One after the other, up to now. */
  readonly sunlessDays: number;
  /** Soil that a run begins with, under what has lain on the bed; worked out once for beds that lie alike. */
  under(bed: BedAsLaid): SoilStart;
}

export interface SoilWish {
  /** When the run of the night begins. */
  readonly runFrom: Date;
  /** Sunset of the night: the deep soil follows the season. */
  readonly at: Date;
  /** Tells past hours from coming ones. */
  readonly now: Date;
  /** False where the clouds of the days behind are not told: then their sun is not known either. */
  readonly cloudKnown: boolean;
}

/** The soil as the weather behind has left it: the bed run through the last seven days where they are known, otherwise guessed from their mean. */
export function soilBehind(
  site: NightSite,
  series: WeatherSeries,
  { runFrom, at, now, cloudKnown }: SoilWish,
): SoilBehind {
  const { weekMeanC, known } = weekMean(site, series, at, now);
  const { dailySunMJPerM2, sunless } = sunBehind(site, series, now);
  const start = followedFrom(series, runFrom);
  const isFollowed = cloudKnown && runFrom.getTime() - start.getTime() >= FEWEST_FOLLOWED_H * MS_PER_H;
  const found = new Map<string, SoilStart>();
  let past: SharedPast | undefined;
  const guessed = (coveredForWeeks: BedAsLaid['covers']): SoilStart => {
    const sun = dailySunMJPerM2 === undefined ? {} : { dailySunMJPerM2 };
    return soilStart({ site, at, weekMeanC, coveredForWeeks, ...sun, ...(!known && { guessSdK: GUESSED_SOIL_SD_K }) });
  };
  const followed = (bed: BedAsLaid): SoilStart => {
    past ??= sharedPast(site, series, start, runFrom);
    return soilAfterDays(site, bed, guessed(bed.covers), past);
  };
  return {
    sunlessDays: sunless,
    under(bed) {
      const key = JSON.stringify(bed);
      const soil = found.get(key) ?? (isFollowed ? followed(bed) : guessed(bed.covers));
      found.set(key, soil);
      return soil;
    },
  };
}

/** The first known hour of the seven days before a run. */
function followedFrom({ first, assumedH = 0 }: WeatherSeries, runFrom: Date): Date {
  const weekBefore = runFrom.getTime() - HOURS_PER_WEEK * MS_PER_H;
  return new Date(Math.max(weekBefore, first.getTime() + assumedH * MS_PER_H));
}

/** Mean air of the last seven days; hours that are not known count as usual before a night with such a low. */
function weekMean(site: NightSite, series: WeatherSeries, at: Date, now: Date): { weekMeanC: number; known: boolean } {
  const assumed = series.assumedH ?? 0;
  const pastH = Math.floor((now.getTime() - series.first.getTime()) / MS_PER_H);
  const hours = series.screenC.slice(Math.max(assumed, pastH - HOURS_PER_WEEK), Math.max(assumed, pastH));
  const sunsetH = Math.max(0, Math.floor((at.getTime() - series.first.getTime()) / MS_PER_H));
  const lowC = Math.min(...series.screenC.slice(sunsetH, sunsetH + HOURS_PER_DAY));
  const usualC = usualWeekC(lowC, at, assumedClimate(site.latitudeDeg, site.elevationM));
  const sum = hours.reduce((total, value) => total + value, 0);
  return {
    weekMeanC: (sum + (HOURS_PER_WEEK - hours.length) * usualC) / HOURS_PER_WEEK,
    known: hours.length >= FEWEST_PAST_H,
  };
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
