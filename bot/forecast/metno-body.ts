import { z } from 'zod';
import { MS_PER_H } from '../../rules/index.ts';
import { type AnswerContext, assembled, instant, type RawLayer, type RawValue, shaped } from './answer-body.ts';
import type { ForecastColumnName, ForecastPlace, HourlyForecast } from './forecast.ts';
import type { Quantity } from './quantity.ts';

/** States at the instant; everything but the time may be missing. */
const INSTANT_LAYERS: Readonly<Record<string, readonly [ForecastColumnName, Quantity]>> = {
  air_temperature: ['screenC', 'temperature'],
  dew_point_temperature: ['dewPointC', 'temperature'],
  relative_humidity: ['humidityFraction', 'fraction'],
  cloud_area_fraction: ['cloudFraction', 'fraction'],
  wind_speed: ['wind10MPerS', 'speed'],
  wind_speed_of_gust: ['gustMPerS', 'speed'],
};
const RAIN = 'precipitation_amount';
const LOW = 'air_temperature_min';

const details = z.looseObject({ details: z.record(z.string(), z.unknown()).optional() }).optional();

const bodySchema = z.looseObject({
  geometry: z
    .looseObject({ coordinates: z.array(z.number()).min(2) })
    .optional()
    .catch(undefined),
  properties: z.looseObject({
    meta: z.looseObject({ updated_at: instant, units: z.record(z.string(), z.unknown()) }),
    timeseries: z.array(
      z.looseObject({
        time: instant,
        data: z.looseObject({ instant: details, next_1_hours: details, next_6_hours: details }),
      }),
    ),
  }),
});
type Step = z.output<typeof bodySchema>['properties']['timeseries'][number];

/**
 * Locationforecast of MET Norway, compact or complete: hourly for two or three days, then every six hours.
 *
 * @throws ForecastBodyError when no temperatures can be had. Any other faulty layer costs only itself.
 */
export function readMetno(sent: unknown, context: AnswerContext): HourlyForecast {
  const body = shaped(bodySchema, sent, 'The MET Norway forecast');
  const { meta, timeseries } = body.properties;
  const layers = Object.entries(INSTANT_LAYERS).map(
    ([name, [column, quantity]]): RawLayer => ({
      column,
      name,
      quantity,
      unit: meta.units[name],
      values: timeseries.flatMap((step) => held(step, step.data.instant?.details?.[name], 0)),
    }),
  );
  layers.push({
    column: 'precipitationMm',
    name: RAIN,
    quantity: 'water',
    unit: meta.units[RAIN],
    spread: true,
    values: timeseries.flatMap(rain),
  });
  const spot = body.geometry?.coordinates;
  return assembled({
    service: 'metno',
    updatedAt: context.modifiedAt ?? meta.updated_at,
    context,
    place: placeOf(spot),
    gridElevationM: spot?.[2],
    layers,
    lows: {
      column: 'screenC',
      name: LOW,
      quantity: 'temperature',
      unit: meta.units[LOW],
      values: timeseries.flatMap((step) => held(step, step.data.next_6_hours?.details?.[LOW], 6)),
    },
  });
}

/** A value from the step on for some hours; 0 hours: at the instant only. */
function held(step: Step, value: unknown, hours: number): RawValue[] {
  const fromMs = step.time.getTime();
  return value === undefined || value === null ? [] : [{ fromMs, toMs: fromMs + Math.max(1, hours * MS_PER_H), value }];
}

/** The next hour's amount, or the next six hours' where the steps are six hours long. */
function rain(step: Step): RawValue[] {
  const hour = step.data.next_1_hours;
  return hour ? held(step, hour.details?.[RAIN], 1) : held(step, step.data.next_6_hours?.details?.[RAIN], 6);
}

/** GeoJSON order: longitude first. */
function placeOf(spot: readonly number[] | undefined): ForecastPlace | undefined {
  const [longitudeDeg, latitudeDeg] = spot ?? [];
  return longitudeDeg === undefined || latitudeDeg === undefined ? undefined : { latitudeDeg, longitudeDeg };
}
