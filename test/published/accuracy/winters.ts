import {
  type BedNight,
  bedNight,
  type CoverKey,
  exposedSite,
  nightFrom,
  soilStart,
  sunTimes,
  windowHigh,
} from '../../../rules/index.ts';
import { dailyCurveC } from '../../../rules/night/daily-curve.ts';
import records from '../../fixtures/winters/daily-records.json' with { type: 'json' };

/**
 * Winters made of daily records: real highs, lows, wind and weather of the day; the hours between them follow the course of the day,
 * the dew point lies a kelvin below the low (common practice), and a day counts as clear or closed by its weather.
 */

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const PEAK_AFTER_NOON_H = 2;
const DEW_POINT_BELOW_LOW_K = 1;
/** "Sun" in a daily record means no rain, snow or fog: few clouds or many. All judgement. */
const CLOUD_FRACTION: Readonly<Record<string, number>> = { sun: 0.3, drizzle: 0.95, rain: 0.95, snow: 0.95, fog: 0.8 };
const WEEK_DAYS = 7;
/** From the sunrise before the night to the evening after it. */
const RUN_H = 36;

interface Day {
  readonly highC: number;
  readonly lowC: number;
  readonly windMPerS: number;
  readonly weather: string;
}

/** The night that ends on the morning of a day of the records. */
export interface WinterNight {
  readonly place: string;
  readonly at: Date;
  readonly lowC: number;
  readonly windMPerS: number;
  readonly weather: string;
  readonly weatherBefore: string;
  readonly night: BedNight;
  /** Highest thermometer among the leaves on the day after, everything shut. [°C] */
  readonly thermometerHighC: number;
}

/** The nights of all winters under one stack, down to the lows that are wanted. */
export function winterNights(
  covers: readonly CoverKey[],
  lowAtMostC = Number.POSITIVE_INFINITY,
): readonly WinterNight[] {
  return records.places.flatMap((place) =>
    place.winters.flatMap(({ first, days: rows }) => {
      const days = rows.map(dayOf);
      return days.flatMap(({ lowC }, index) =>
        lowC > lowAtMostC ? [] : (winterNight(place, new Date(`${first}T12:00:00Z`), days, index, covers) ?? []),
      );
    }),
  );
}

function dayOf(row: readonly (number | string)[]): Day {
  const [highC, lowC, windMPerS, weather] = row;
  if (typeof weather !== 'string') throw new Error('the fourth column is the weather of the day');
  return { highC: Number(highC), lowC: Number(lowC), windMPerS: Number(windMPerS), weather };
}

type Place = (typeof records.places)[number];

function winterNight(
  place: Place,
  firstNoonUtc: Date,
  days: readonly Day[],
  index: number,
  covers: readonly CoverKey[],
): WinterNight | undefined {
  const [before, day, after] = [days[index - 1], days[index], days[index + 1]];
  if (before === undefined || day === undefined || after === undefined || index < WEEK_DAYS) return undefined;
  const { latitudeDeg, longitudeDeg } = place;
  const noonBefore = new Date(firstNoonUtc.getTime() + (index - 1) * DAY_MS - (longitudeDeg / 15) * HOUR_MS);
  const sun = sunTimes(noonBefore, latitudeDeg, longitudeDeg);
  const night = nightFrom(noonBefore, latitudeDeg, longitudeDeg);
  if (sun.kind !== 'rises' || night === undefined) return undefined;
  const peakAfterH = sun.dayLengthH / 2 + PEAK_AFTER_NOON_H;
  const hours = Array.from({ length: RUN_H + 1 }, (_, hour) => hour);
  const dayAt = (hour: number) => (hour < 24 ? before : day);
  const screenC = hours.map((hour) => {
    const [from, to] = hour < 24 ? [before, day] : [day, after];
    // Up from its own low, down to the next one.
    const lowC = hour % 24 <= peakAfterH ? from.lowC : to.lowC;
    return dailyCurveC({ lowC, rangeK: Math.max(0, from.highC - lowC), peakAfterH }, hour % 24);
  });
  const site = exposedSite('open', place);
  const week = days.slice(index - WEEK_DAYS, index);
  const weekMeanC = week.reduce((sum, { highC, lowC }) => sum + (highC + lowC) / 2, 0) / WEEK_DAYS;
  const bed = { covers };
  const computed = bedNight({
    site,
    weather: {
      first: sun.sunrise,
      stepH: 1,
      screenC,
      dewPointC: hours.map((hour) => Math.min(dayAt(hour).lowC, day.lowC) - DEW_POINT_BELOW_LOW_K),
      cloudFraction: hours.map((hour) => cloudOf(dayAt(hour))),
      wind10MPerS: hours.map((hour) => dayAt(hour).windMPerS),
    },
    soil: soilStart({ site, at: night.sunset, weekMeanC, coveredForWeeks: covers }),
    bed,
    window: { from: night.sunset, to: new Date(night.sunrise.getTime() + HOUR_MS) },
    forecast: { kind: 'stated' },
  });
  if (computed.kind !== 'night') throw new Error(computed.problem);
  const lastMs = computed.run.timesMs[computed.run.timesMs.length - 1] ?? Number.NaN;
  return {
    place: place.name,
    at: night.sunrise,
    lowC: day.lowC,
    windMPerS: day.windMPerS,
    weather: day.weather,
    weatherBefore: before.weather,
    night: computed,
    thermometerHighC: windowHigh(computed.run, 'thermometerC', night.sunrise, new Date(lastMs)).valueC,
  };
}

function cloudOf({ weather }: Day): number {
  const cloudFraction = CLOUD_FRACTION[weather];
  if (cloudFraction === undefined) throw new Error(`no cloud is known of the weather "${weather}"`);
  return cloudFraction;
}
