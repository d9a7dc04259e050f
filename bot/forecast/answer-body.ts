import { z } from 'zod';
import { CREDITS } from './credits.ts';
import type { ForecastNote, ForecastPlace, ForecastService, HourlyForecast, LowWindow } from './forecast.ts';
import { ForecastBodyError } from './forecast-error.ts';
import { gridOver, type Layer, laidOut, plausible, type Stretch } from './hour-grid.ts';
import { type Quantity, toSi } from './quantity.ts';

/** What is known of an answer beside its body. */
export interface AnswerContext {
  readonly fetchedAt: Date;
  /** The Last-Modified header, where it can be trusted. */
  readonly modifiedAt?: Date;
  /** The place as asked; without it the body's own place is taken. */
  readonly place?: ForecastPlace;
  readonly timeZone?: string;
}

/** A height as the National Weather Service gives it; anything else counts as untold. */
export const heightM = z
  .looseObject({ unitCode: z.string().endsWith(':m'), value: z.number() })
  .transform(({ value }) => value)
  .optional()
  .catch(undefined);

/** A number, a number written as a string, or null. */
export const looseNumber = z
  .union([
    z.number(),
    z
      .string()
      .max(30)
      .transform((text) => (text.trim() === '' ? Number.NaN : Number(text)))
      .pipe(z.number()),
    z.null(),
  ])
  .optional()
  .transform((value) => value ?? undefined);

/** An ISO-8601 instant with its offset. */
export const instant = z.iso.datetime({ offset: true }).transform((text) => new Date(text));

/** The body as the service documents it. @throws ForecastBodyError naming what is missing. */
export function shaped<Schema extends z.ZodType>(schema: Schema, body: unknown, what: string): z.output<Schema> {
  const parsed = schema.safeParse(body);
  if (parsed.success) return parsed.data;
  const where = parsed.error.issues[0]?.path.join('.') ?? '';
  throw new ForecastBodyError('unknown-shape', `${what} is not as documented${where === '' ? '' : ` at "${where}"`}.`);
}

/** One value of a layer before its unit is applied. */
export interface RawValue {
  readonly fromMs: number;
  readonly toMs: number;
  readonly value: unknown;
  /** Its own unit, where a service states one with each value. */
  readonly unit?: unknown;
}

/** A layer as a service sends it. */
export interface RawLayer extends Omit<Layer, 'stretches'> {
  readonly quantity: Quantity;
  readonly unit: unknown;
  readonly values: readonly RawValue[];
}

/** Layers in our units, and a note for each that had to be refused. Empty layers vanish; nulls are left out. */
function convertedLayers(raw: readonly RawLayer[]): { layers: Layer[]; notes: ForecastNote[] } {
  const layers: Layer[] = [];
  const notes: ForecastNote[] = [];
  for (const layer of raw) {
    if (layer.values.length === 0) continue;
    const converted = converting(layer);
    if (typeof converted === 'string') notes.push({ code: 'layer-refused', layer: layer.name, reason: converted });
    else layers.push({ ...layer, stretches: converted });
  }
  return { layers, notes };
}

function converting({ quantity, unit, values }: RawLayer): Stretch[] | 'unknown-unit' | 'bad-values' {
  const stretches: Stretch[] = [];
  for (const { fromMs, toMs, value, unit: own = unit } of values) {
    const number = looseNumber.safeParse(value);
    if (!number.success) return 'bad-values';
    if (number.data === undefined) continue;
    const si = typeof own === 'string' ? toSi(quantity, own) : undefined;
    if (si === undefined) return 'unknown-unit';
    stretches.push({ fromMs, toMs, value: si(number.data) });
  }
  return stretches;
}

/** What the readers of all services end with. */
export interface ReadParts {
  readonly service: ForecastService;
  readonly updatedAt: Date;
  readonly context: AnswerContext;
  /** Where the body says it is for. */
  readonly place?: ForecastPlace | undefined;
  readonly gridElevationM: number | undefined;
  readonly timeZone?: string | undefined;
  /** An instant on the hours of the answer, if they are not whole hours of UTC. */
  readonly phaseMs?: number | undefined;
  readonly layers: readonly RawLayer[];
  readonly lows?: RawLayer;
  readonly faults?: readonly ForecastNote[];
}

/**
 * Converts the layers and lays them on the hours for which there is a temperature.
 *
 * @throws ForecastBodyError when no temperatures can be had. Any other faulty layer costs only itself.
 */
export function assembled(parts: ReadParts): HourlyForecast {
  const { service, updatedAt, context, gridElevationM } = parts;
  const { layers, notes } = convertedLayers(parts.layers);
  const lows = convertedLayers(parts.lows === undefined ? [] : [parts.lows]);
  const grid = gridOver(temperatureStretches(layers, notes), parts.phaseMs);
  if (grid === undefined) throw new ForecastBodyError('no-data', 'The forecast covers no hours that can be used.');
  const laid = laidOut(grid, layers);
  if (laid.columns.screenC === undefined) throw new ForecastBodyError('no-data', 'The forecast holds no temperatures.');
  const place = context.place ?? parts.place;
  const timeZone = context.timeZone ?? parts.timeZone;
  return {
    service,
    updatedAt,
    fetchedAt: context.fetchedAt,
    ...(place === undefined ? {} : { place }),
    ...(gridElevationM === undefined ? {} : { gridElevationM }),
    ...(timeZone === undefined ? {} : { timeZone }),
    first: new Date(grid.firstMs),
    hours: grid.hours,
    columns: laid.columns,
    lowWindows: lowWindows(lows.layers[0]?.stretches ?? []),
    credits: [CREDITS[service]],
    notes: [...(parts.faults ?? []), ...notes, ...lows.notes, ...laid.notes],
  };
}

function temperatureStretches(layers: readonly Layer[], notes: readonly ForecastNote[]): readonly Stretch[] {
  const found = layers.find((layer) => layer.column === 'screenC');
  if (found !== undefined && found.stretches.length > 0) return found.stretches;
  const refused = notes.some((note) => note.code === 'layer-refused' && note.reason === 'unknown-unit');
  throw refused && found === undefined
    ? new ForecastBodyError(
        'wrong-unit',
        'The temperatures come in a unit that is not known here; °C or °F would be right.',
      )
    : new ForecastBodyError('no-data', 'The forecast holds no temperatures.');
}

function lowWindows(stretches: readonly Stretch[]): LowWindow[] {
  return stretches.flatMap(({ fromMs, toMs, value }) => {
    const lowC = plausible('screenC', value);
    return lowC === undefined ? [] : [{ from: new Date(fromMs), to: new Date(toMs), lowC }];
  });
}
