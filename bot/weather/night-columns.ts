import { dewPointFromHumidityC } from '../../rules/index.ts';
import { type Bridged, bridged } from '../forecast/bridged.ts';
import type { ForecastColumns, HourlyColumn } from '../forecast/forecast.ts';
import { LONGEST_STEP_H } from '../forecast/night-low.ts';
import type { NightNote } from './night-weather.ts';

/** Dry enough to cool as on a usual clear night, when nothing is known of the air's moisture. */
const ASSUMED_DEW_POINT_DEPRESSION_K = 3;
const ASSUMED_CLOUD_FRACTION = 0;
const ASSUMED_WIND_M_PER_S = 1;
/** Drier air than any field has: a humidity near zero is a fault of the model. */
const LOWEST_DEW_POINT_C = -80;
/** Radiation bends too much over the day to be drawn straight over longer gaps. */
const LONGEST_SUN_STEP_H = 2;

/** The hours of a forecast that are used, by index: both ends belong to it. */
export interface HourRange {
  readonly start: number;
  readonly end: number;
}

export interface NightColumns {
  readonly screenC: readonly number[];
  readonly dewPointC: readonly number[];
  readonly cloudFraction: readonly number[];
  readonly wind10MPerS: readonly number[];
  readonly globalWPerM2?: readonly number[];
  readonly notes: readonly NightNote[];
}

/** Complete columns over the range, each on the cold side where the service is silent, and what was assumed for how many hours. */
export function completeColumns(columns: ForecastColumns, air: Bridged, range: HourRange): NightColumns {
  const { start, end } = range;
  const cut = <T>(values: readonly T[]): T[] => values.slice(start, end + 1);
  const screenC = cut(air.values).map((value) => value ?? Number.NaN);
  const moisture = dewPoints(columns, air);
  const dew = bridged(moisture.column, LONGEST_STEP_H);
  const cloud = bridged(columns.cloudFraction ?? silent(air), LONGEST_STEP_H);
  const wind = bridged(columns.wind10MPerS ?? silent(air), LONGEST_STEP_H);
  const sun = cut(bridged(columns.globalWPerM2 ?? silent(air), LONGEST_SUN_STEP_H).values);
  const notes: NightNote[] = [];
  const note = (
    code: 'dew-point-from-humidity' | 'dew-point-assumed' | 'cloud-assumed-clear' | 'wind-assumed-calm',
    hours: number,
  ) => {
    if (hours > 0) notes.push({ code, hours });
  };
  note('dew-point-from-humidity', cut(moisture.fromHumidity).filter(Boolean).length);
  note('dew-point-assumed', missing(cut(dew.values)));
  note('cloud-assumed-clear', missing(cut(cloud.values)));
  note('wind-assumed-calm', missing(cut(wind.values)));
  const filled = cut(
    air.bridgedH.map((_, i) => [air, dew, cloud, wind].some((column) => isSmallGap(column.bridgedH[i]))),
  );
  const gaps = filled.filter(Boolean).length;
  if (gaps > 0) notes.push({ code: 'gaps-filled', hours: gaps });
  return {
    screenC,
    dewPointC: cut(dew.values).map((value, i) => value ?? (screenC[i] ?? Number.NaN) - ASSUMED_DEW_POINT_DEPRESSION_K),
    cloudFraction: cut(cloud.values).map((value) => value ?? ASSUMED_CLOUD_FRACTION),
    wind10MPerS: cut(wind.values).map((value) => value ?? ASSUMED_WIND_M_PER_S),
    ...(sun.every((value) => value !== undefined) ? { globalWPerM2: sun } : {}),
    notes,
  };
}

function silent(like: Bridged): HourlyColumn {
  return like.values.map(() => undefined);
}

function missing(values: readonly (number | undefined)[]): number {
  return values.filter((value) => value === undefined).length;
}

function isSmallGap(distanceH = 0): boolean {
  return distanceH > 0 && distanceH < LONGEST_STEP_H;
}

function dewPoints(columns: ForecastColumns, air: Bridged): { column: HourlyColumn; fromHumidity: readonly boolean[] } {
  const fromHumidity = air.values.map(() => false);
  const column = air.values.map((airC, i) => {
    const stated = columns.dewPointC?.[i];
    const humidity = columns.humidityFraction?.[i];
    if (stated !== undefined || airC === undefined || humidity === undefined) return stated;
    fromHumidity[i] = true;
    return Math.max(LOWEST_DEW_POINT_C, dewPointFromHumidityC(airC, humidity));
  });
  return { column, fromHumidity };
}
