import { z } from 'zod';
import {
  type AnswerContext,
  assembled,
  heightM,
  instant,
  type RawLayer,
  type RawValue,
  shaped,
} from './answer-body.ts';
import type { ForecastColumnName, ForecastNote, HourlyForecast } from './forecast.ts';
import { isoInterval } from './nws-interval.ts';
import type { Quantity } from './quantity.ts';

/** The layers that matter to a bed, and the column each becomes. */
const LAYERS: Readonly<Record<string, readonly [ForecastColumnName, Quantity]>> = {
  temperature: ['screenC', 'temperature'],
  dewpoint: ['dewPointC', 'temperature'],
  relativeHumidity: ['humidityFraction', 'fraction'],
  skyCover: ['cloudFraction', 'fraction'],
  windSpeed: ['wind10MPerS', 'speed'],
  windGust: ['gustMPerS', 'speed'],
  quantitativePrecipitation: ['precipitationMm', 'water'],
  snowfallAmount: ['newSnowM', 'snow'],
};
/** Amounts for a whole interval; the other layers hold at each hour of it. */
const AMOUNTS: ReadonlySet<string> = new Set(['quantitativePrecipitation', 'snowfallAmount']);
const NIGHT_LOWS = 'minTemperature';

const gridSchema = z.looseObject({ updateTime: instant, elevation: heightM });

const layerSchema = z.looseObject({
  uom: z.string().nullish(),
  values: z.array(z.looseObject({ validTime: z.string().max(100), value: z.unknown().optional() })),
});

/** True for a raw grid: layers of intervals beside an update time. */
export function isNwsGrid(properties: Readonly<Record<string, unknown>>): boolean {
  return 'temperature' in properties && 'validTimes' in properties && !('periods' in properties);
}

/**
 * The raw grid of the National Weather Service.
 *
 * @param properties - The `properties` of the answer (its top level in JSON-LD).
 * @throws ForecastBodyError when no temperatures can be had. Any other faulty layer costs only itself.
 */
export function readNwsGrid(properties: unknown, context: AnswerContext): HourlyForecast {
  const body: Readonly<Record<string, unknown>> & z.output<typeof gridSchema> = shaped(
    gridSchema,
    properties,
    'The forecast grid',
  );
  const faults: ForecastNote[] = [];
  const layers = Object.entries(LAYERS).map(([name, [column, quantity]]) =>
    rawLayer(body[name], name, column, quantity, context.fetchedAt, faults),
  );
  const lows = rawLayer(body[NIGHT_LOWS], NIGHT_LOWS, 'screenC', 'temperature', context.fetchedAt, faults);
  return assembled({
    service: 'nws',
    updatedAt: body.updateTime,
    context,
    gridElevationM: body.elevation,
    layers,
    lows,
    faults,
  });
}

function rawLayer(
  sent: unknown,
  name: string,
  column: ForecastColumnName,
  quantity: Quantity,
  now: Date,
  faults: ForecastNote[],
): RawLayer {
  const empty: RawLayer = { name, column, quantity, unit: undefined, values: [], spread: AMOUNTS.has(name) };
  if (sent === undefined || sent === null) return empty;
  const parsed = layerSchema.safeParse(sent);
  const values = parsed.success ? intervals(parsed.data.values, now) : undefined;
  if (parsed.success && values !== undefined) return { ...empty, unit: parsed.data.uom, values };
  faults.push({ code: 'layer-refused', layer: name, reason: 'bad-values' });
  return empty;
}

function intervals(values: readonly { validTime: string; value?: unknown }[], now: Date): RawValue[] | undefined {
  const found: RawValue[] = [];
  for (const { validTime, value } of values) {
    const span = isoInterval(validTime, now);
    if (span === undefined) return undefined;
    found.push({ ...span, value });
  }
  return found;
}
