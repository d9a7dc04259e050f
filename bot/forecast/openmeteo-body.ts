import { z } from 'zod';
import { MS_PER_H } from '../../rules/index.ts';
import { type AnswerContext, assembled, type RawLayer, type RawValue, shaped } from './answer-body.ts';
import type { ForecastColumnName, ForecastNote, HourlyColumn, HourlyForecast } from './forecast.ts';
import { ForecastBodyError } from './forecast-error.ts';
import type { Quantity } from './quantity.ts';

/** How a column's value relates to its time: the state then, or the sum, mean or maximum of the hour before. */
type Timing = 'instant' | 'hour-before' | 'mean-before';

/** Columns by name, with the older names that saved files still carry. */
const LAYERS: readonly (readonly [ForecastColumnName, Quantity, Timing, readonly string[]])[] = [
  ['screenC', 'temperature', 'instant', ['temperature_2m']],
  ['dewPointC', 'temperature', 'instant', ['dew_point_2m', 'dewpoint_2m']],
  ['humidityFraction', 'fraction', 'instant', ['relative_humidity_2m', 'relativehumidity_2m']],
  ['cloudFraction', 'fraction', 'instant', ['cloud_cover', 'cloudcover']],
  ['wind10MPerS', 'speed', 'instant', ['wind_speed_10m', 'windspeed_10m']],
  ['gustMPerS', 'speed', 'hour-before', ['wind_gusts_10m', 'windgusts_10m']],
  ['precipitationMm', 'water', 'hour-before', ['precipitation']],
  ['newSnowM', 'snow', 'hour-before', ['snowfall']],
  ['snowDepthM', 'snow', 'instant', ['snow_depth']],
  ['globalWPerM2', 'radiation', 'mean-before', ['shortwave_radiation']],
  ['soil0C', 'temperature', 'instant', ['soil_temperature_0cm']],
  ['soil6C', 'temperature', 'instant', ['soil_temperature_6cm']],
  ['soil18C', 'temperature', 'instant', ['soil_temperature_18cm']],
];

/** `2026-03-08T02:00`, without an offset: the offset of the whole answer applies, even across a change of clocks. */
const localTime = z.iso.datetime({ local: true });
const times = z.union([z.array(localTime), z.array(z.number().int())]);

const bodySchema = z.looseObject({
  latitude: z.number(),
  longitude: z.number(),
  elevation: z.number().optional().catch(undefined),
  utc_offset_seconds: z.number().int().min(-86_400).max(86_400).default(0),
  timezone: z.string().max(60).optional(),
  hourly: z.record(z.string(), z.array(z.unknown())).optional(),
  hourly_units: z.record(z.string(), z.unknown()).default({}),
});

/**
 * A forecast of Open-Meteo for one place.
 *
 * @throws ForecastBodyError when no temperatures can be had. Any other faulty column costs only itself.
 */
export function readOpenMeteo(sent: unknown, context: AnswerContext): HourlyForecast {
  const body = shaped(bodySchema, sent, 'The Open-Meteo forecast');
  const { hourly } = body;
  if (hourly === undefined) {
    throw new ForecastBodyError(
      'no-data',
      'The Open-Meteo file has no hourly values; save it again with hourly=temperature_2m and more.',
    );
  }
  const atMs = instantsMs(shaped(times, hourly['time'], 'The list of times'), body.utc_offset_seconds);
  const faults: ForecastNote[] = [];
  const layers = LAYERS.flatMap(([column, quantity, timing, names]): RawLayer[] => {
    const name = names.find((candidate) => Object.hasOwn(hourly, candidate));
    const values = name === undefined ? undefined : hourly[name];
    if (name === undefined || values === undefined) return [];
    if (values.length !== atMs.length) {
      faults.push({ code: 'layer-refused', layer: name, reason: 'bad-values' });
      return [];
    }
    return [{ column, name, quantity, unit: body.hourly_units[name], values: timed(values, atMs, timing) }];
  });
  const forecast = assembled({
    service: 'openmeteo',
    updatedAt: context.fetchedAt,
    context,
    place: { latitudeDeg: body.latitude, longitudeDeg: body.longitude },
    gridElevationM: body.elevation,
    timeZone: body.timezone?.includes('/') ? body.timezone : undefined,
    phaseMs: atMs[0],
    layers,
    faults,
  });
  const { globalWPerM2, ...columns } = forecast.columns;
  return globalWPerM2 === undefined
    ? forecast
    : { ...forecast, columns: { ...columns, globalWPerM2: atHours(globalWPerM2) } };
}

function instantsMs(sent: z.output<typeof times>, offsetS: number): number[] {
  return sent.map((time) => (typeof time === 'number' ? time * 1000 : Date.parse(`${time}Z`) - offsetS * 1000));
}

/** Amounts and maxima move to the hour that they belong to, which ends at the stated time. */
function timed(values: readonly unknown[], atMs: readonly number[], timing: Timing): RawValue[] {
  const shiftMs = timing === 'hour-before' ? MS_PER_H : 0;
  return atMs.map((stated, i) => ({ fromMs: stated - shiftMs, toMs: stated - shiftMs + 1, value: values[i] }));
}

/** Means of the hour before each instant become values at the instants: halfway between the hour before and the hour after. */
function atHours(meanBefore: HourlyColumn): HourlyColumn {
  return meanBefore.map((before, i) => {
    const after = meanBefore[i + 1];
    return before === undefined || after === undefined ? undefined : (before + after) / 2;
  });
}
