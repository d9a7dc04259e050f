import {
  bedNight,
  dewPointFromHumidityC,
  EIGHTY_PERCENT_SDS,
  exposedSite,
  nightFrom,
  sharedPast,
  soilAfterDays,
  soilStart,
  solarPosition,
  sunTimes,
  USUAL_SUN_FRACTION,
  type WeatherSeries,
} from '../../../rules/index.ts';
import series from '../../fixtures/measured/cold-frame-2018.json' with { type: 'json' };
import type { ComparedRow, Comparison } from './comparison.ts';
import { HARD_AT_MOST_C } from './trials.ts';

const BEYOND = 'One night in five may lie beyond the range; cloud, snow and opening of this frame are not told.';
const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const WEEK_DAYS = 7;
const SOLAR_CONSTANT_W_PER_M2 = 1367;
const PLACE = { latitudeDeg: 44.08, longitudeDeg: -91.7, elevationM: 200 };
const SITE = exposedSite('open', PLACE);
const FIRST = new Date(series.first);

/** A frost night of the frame. */
export interface FrameNight {
  /** Of the morning, `2018-04-01`. */
  readonly date: string;
  readonly outsideLowC: number;
  readonly measuredLowC: number;
  readonly oursLowC: number;
  /** Of the whole answer, without the part of the forecast. */
  readonly sdK: number;
  readonly soil10CmC: number;
}

/**
 * The weather as the airport told it. Cloud is not told: by night a clear sky is taken, as for every forecast without cloud, and by day the usual
 * sun of the season, as where a week's sun is not known.
 */
const WEATHER: WeatherSeries = {
  first: FIRST,
  stepH: series.stepH,
  screenC: series.airC,
  dewPointC: series.airC.map((airC, step) => dewPointFromHumidityC(airC, (series.humidityPercent[step] ?? 100) / 100)),
  cloudFraction: series.airC.map(() => 0),
  wind10MPerS: series.wind10MPerS,
  globalWPerM2: series.airC.map((_, step) => {
    const sun = solarPosition(atHour(step * series.stepH), PLACE.latitudeDeg, PLACE.longitudeDeg);
    return USUAL_SUN_FRACTION * SOLAR_CONSTANT_W_PER_M2 * sun.eccentricity * Math.max(0, sun.cosZenith);
  }),
};

/** Every night with an outside low at or below freezing that has seven days of hours before it: a glass frame, opened by our own rule. */
export function frameNights(): readonly FrameNight[] {
  const days = Math.floor((series.airC.length * series.stepH) / 24);
  return Array.from({ length: days }, (_, day) => day).flatMap((day) => frameNight(day) ?? []);
}

/** Its nights down to −5 °C outside as a line of their own, the colder ones for the line of hard nights. */
export function frameComparison(nights: readonly FrameNight[]): {
  readonly mild: Comparison;
  readonly hard: readonly ComparedRow[];
} {
  const isHard = ({ outsideLowC }: FrameNight) => outsideLowC <= HARD_AT_MOST_C;
  return {
    mild: {
      quantity: 'Measured low in a wooden frame, frost nights of a spring',
      unit: 'K',
      source: 'ColdFrameTemperature, Minnesota 2018 (CC0)',
      standing: 'read',
      tolerance: 'the 80 % range of the answer, without the part of the forecast',
      rows: nights.filter((night) => !isHard(night)).map(frameRow),
    },
    hard: nights.filter(isHard).map(frameRow),
  };
}

export function frameRow({ date, outsideLowC, oursLowC, measuredLowC, sdK }: FrameNight): ComparedRow {
  const tolerance = EIGHTY_PERCENT_SDS * sdK;
  return {
    id: `wooden frame, ${date}, outside ${outsideLowC} °C`,
    ours: oursLowC,
    theirs: measuredLowC,
    tolerance,
    ...(Math.abs(oursLowC - measuredLowC) > tolerance && { excuse: BEYOND }),
  };
}

function frameNight(day: number): FrameNight | undefined {
  const noon = new Date(FIRST.getTime() + day * DAY_MS + 11 * HOUR_MS);
  const sun = sunTimes(noon, PLACE.latitudeDeg, PLACE.longitudeDeg);
  const night = nightFrom(noon, PLACE.latitudeDeg, PLACE.longitudeDeg);
  if (sun.kind !== 'rises' || night === undefined) throw new Error('the sun rises and sets in Minnesota');
  const window = { from: night.sunset, to: new Date(night.sunrise.getTime() + HOUR_MS) };
  const runFrom = atHour(Math.floor(hourOf(sun.sunrise)));
  const weekFrom = new Date(runFrom.getTime() - WEEK_DAYS * DAY_MS);
  const outsideLowC = Math.min(...hoursWithin(series.airC, window));
  if (weekFrom < FIRST || outsideLowC > 0 || hourOf(window.to) > (series.airC.length - 1) * series.stepH)
    return undefined;
  const bed = { covers: ['cold-frame'] as const };
  const week = hoursWithin(series.airC, { from: weekFrom, to: runFrom });
  const weekMeanC = week.reduce((sum, value) => sum + value, 0) / week.length;
  const first = soilStart({ site: SITE, at: weekFrom, weekMeanC, coveredForWeeks: bed.covers });
  const soil = soilAfterDays(SITE, bed, first, sharedPast(SITE, WEATHER, weekFrom, runFrom));
  const computed = bedNight({ site: SITE, weather: WEATHER, soil, bed, window, forecast: { kind: 'stated' } });
  if (computed.kind !== 'night') throw new Error(computed.problem);
  return {
    date: night.sunrise.toISOString().slice(0, 10),
    outsideLowC,
    measuredLowC: Math.min(...hoursWithin(series.frameLowestC, window)),
    oursLowC: computed.thermometerLowC,
    sdK: computed.spread.sdK,
    soil10CmC: soil.soil10CmC,
  };
}

function atHour(hour: number): Date {
  return new Date(FIRST.getTime() + hour * HOUR_MS);
}

function hourOf(at: Date): number {
  return (at.getTime() - FIRST.getTime()) / HOUR_MS;
}

function hoursWithin(
  values: readonly number[],
  { from, to }: { readonly from: Date; readonly to: Date },
): readonly number[] {
  return values.slice(Math.ceil(hourOf(from) / series.stepH), Math.floor(hourOf(to) / series.stepH) + 1);
}
