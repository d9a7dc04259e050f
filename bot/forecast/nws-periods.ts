import { z } from 'zod';
import { MS_PER_H } from '../../rules/index.ts';
import { type AnswerContext, assembled, heightM, instant, type RawLayer, shaped } from './answer-body.ts';
import type { ForecastColumnName, HourlyForecast } from './forecast.ts';
import { ForecastBodyError } from './forecast-error.ts';
import type { Quantity } from './quantity.ts';

const periodSchema = z.looseObject({
  startTime: instant.nullish(),
  endTime: instant.nullish(),
  temperature: z.unknown().optional(),
  temperatureUnit: z.unknown().optional(),
  dewpoint: z.unknown().optional(),
  relativeHumidity: z.unknown().optional(),
  windSpeed: z.unknown().optional(),
});
type Period = z.output<typeof periodSchema>;

const bodySchema = z.looseObject({
  updateTime: instant.optional(),
  updated: instant.optional(),
  elevation: heightM,
  periods: z.array(periodSchema),
});

const quantitySchema = z.looseObject({
  unitCode: z.unknown().optional(),
  value: z.unknown().optional(),
  minValue: z.unknown().optional(),
});

interface Measured {
  readonly value: unknown;
  readonly unit: unknown;
}

const COLUMNS: readonly (readonly [ForecastColumnName, Quantity, (period: Period) => Measured])[] = [
  ['screenC', 'temperature', (period) => measured(period.temperature, period.temperatureUnit)],
  ['dewPointC', 'temperature', (period) => measured(period.dewpoint)],
  ['humidityFraction', 'fraction', (period) => measured(period.relativeHumidity)],
  ['wind10MPerS', 'speed', (period) => lowerWind(period.windSpeed)],
];

/**
 * The hour-by-hour periods of the National Weather Service, as people save them. They carry no cloud and no amounts.
 *
 * @throws ForecastBodyError when the periods are half days, or hold nothing.
 */
export function readNwsPeriods(properties: unknown, context: AnswerContext): HourlyForecast {
  const body = shaped(bodySchema, properties, 'The list of forecast periods');
  const periods = body.periods.filter((period) => lengthMs(period) > 0);
  if (periods.some((period) => lengthMs(period) > MS_PER_H)) {
    throw new ForecastBodyError(
      'no-data',
      'This is the forecast by half days, which leaves the night open; save the hourly forecast or the grid instead.',
    );
  }
  return assembled({
    service: 'nws',
    updatedAt: body.updateTime ?? body.updated ?? context.fetchedAt,
    context,
    gridElevationM: body.elevation,
    layers: COLUMNS.map(([column, quantity, of]) => layerOf(periods, column, quantity, of)),
  });
}

/** 0 for a period without times: it is dropped, like one without length. */
function lengthMs({ startTime, endTime }: Period): number {
  return startTime && endTime ? endTime.getTime() - startTime.getTime() : 0;
}

function layerOf(
  periods: readonly Period[],
  column: ForecastColumnName,
  quantity: Quantity,
  of: (period: Period) => Measured,
): RawLayer {
  const values = periods.flatMap((period) => {
    const fromMs = period.startTime?.getTime();
    return fromMs === undefined ? [] : [{ fromMs, toMs: fromMs + lengthMs(period), ...of(period) }];
  });
  return { column, name: column, quantity, unit: undefined, values };
}

/** Either a bare value or `{unitCode, value}`. */
function measured(sent: unknown, unit?: unknown): Measured {
  const parsed = quantitySchema.safeParse(sent);
  return parsed.success
    ? { value: parsed.data.value ?? parsed.data.minValue, unit: parsed.data.unitCode }
    : { value: sent, unit };
}

/** "5 to 10 mph" is taken as 5: calm is the cold side. */
function lowerWind(sent: unknown): Measured {
  if (typeof sent !== 'string') return measured(sent);
  const words = sent.trim().split(' ');
  return { value: words[0], unit: words.at(-1) };
}
