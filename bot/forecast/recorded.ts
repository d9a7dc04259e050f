import { z } from 'zod';
import type { AnswerContext } from './answer-body.ts';
import type { HourlyForecast } from './forecast.ts';
import { ForecastBodyError, SavedForecastError } from './forecast-error.ts';
import { readMetno } from './metno-body.ts';
import { isNwsGrid, readNwsGrid } from './nws-grid.ts';
import { readNwsPeriods } from './nws-periods.ts';
import { placeOfGeometry } from './nws-place.ts';
import { readOpenMeteo } from './openmeteo-body.ts';
import { type SavedAnswer, unwrapped } from './saved-answer.ts';

type Members = Readonly<Record<string, unknown>>;

const PROBLEM = z.looseObject({ title: z.string().max(200), status: z.number().min(400) });
const REFUSAL = z.looseObject({ error: z.literal(true), reason: z.string() });
const ANY_OBJECT = z.record(z.string(), z.unknown());

/**
 * A forecast that someone saved: an answer of any of the three services, bare, wrapped with its headers, or on an HTTP cassette.
 *
 * @param text - The whole file.
 * @param now - When it was saved, if that is known better than from the file itself.
 * @returns The forecast. It may be years old: whoever uses it decides what time it is, for example its `fetchedAt`.
 * @throws SavedForecastError with one sentence for the person who saved it.
 */
export function readSavedForecast(text: string, now?: Date): HourlyForecast {
  try {
    return read(unwrapped(text), now);
  } catch (cause) {
    if (cause instanceof ForecastBodyError) throw new SavedForecastError(cause.code, cause.message, cause);
    throw cause;
  }
}

function read(answer: SavedAnswer, now: Date | undefined): HourlyForecast {
  const body = singleObject(answer.body);
  refuseErrorAnswer(answer, body);
  const properties = ANY_OBJECT.safeParse(body['properties']).data ?? body;
  const context: AnswerContext = {
    fetchedAt: answer.fetchedAt ?? now ?? saidTime(body, properties),
    ...(answer.modifiedAt === undefined ? {} : { modifiedAt: answer.modifiedAt }),
  };
  if ('timeseries' in properties) return readMetno(body, context);
  const place = placeOfGeometry(body['geometry']);
  const nwsContext = place === undefined ? context : { ...context, place };
  if ('periods' in properties) return readNwsPeriods(properties, nwsContext);
  if (isNwsGrid(properties)) return readNwsGrid(properties, nwsContext);
  if ('latitude' in body && 'longitude' in body) return readOpenMeteo(body, context);
  throw new ForecastBodyError('unknown-shape', otherShape(body, properties));
}

/** Open-Meteo answers several places with a list; one place alone is meant here. */
function singleObject(body: unknown): Members {
  if (Array.isArray(body) && body.length !== 1) {
    throw new ForecastBodyError(
      'unknown-shape',
      'The file is a list, not one forecast; save the answer for a single place.',
    );
  }
  const parsed = ANY_OBJECT.safeParse(Array.isArray(body) ? body[0] : body);
  if (parsed.success) return parsed.data;
  throw new ForecastBodyError('unknown-shape', `The file is not a forecast; ${WANTED}`);
}

const WANTED =
  'wanted is a saved answer of the National Weather Service (grid or hourly), MET Norway Locationforecast or Open-Meteo.';

function refuseErrorAnswer({ status }: SavedAnswer, body: Members): void {
  const problem = PROBLEM.safeParse(body);
  if (problem.success) {
    throw new ForecastBodyError(
      'error-answer',
      `The file is an error of the National Weather Service ("${problem.data.title}"), not a forecast; ask the service again later.`,
    );
  }
  const refusal = REFUSAL.safeParse(body);
  if (refusal.success) {
    throw new ForecastBodyError(
      'error-answer',
      `The file is an error of Open-Meteo ("${refusal.data.reason.slice(0, 120)}"), not a forecast; correct the request and save it again.`,
    );
  }
  if (status !== undefined && (status < 200 || status > 299)) {
    throw new ForecastBodyError(
      'error-answer',
      `The saved answer has status ${status}, not 200, so it holds no forecast.`,
    );
  }
}

function otherShape(body: Members, properties: Members): string {
  if (body['type'] === 'FeatureCollection')
    return `The file is a list of warnings or stations, not a forecast; ${WANTED}`;
  if ('forecastGridData' in properties) {
    return 'The file only tells where the forecast is; open the address it gives as forecastGridData and save that.';
  }
  return `The file is not a forecast that is known here; ${WANTED}`;
}

/** When a bare body was fetched, as far as it says so itself. Every reader falls back on its own times. */
function saidTime(body: Members, properties: Members): Date {
  const meta = ANY_OBJECT.safeParse(properties['meta']).data ?? {};
  const instants = [properties['generatedAt'], properties['updateTime'], meta['updated_at']];
  for (const said of instants) {
    const parsed = z.iso.datetime({ offset: true }).safeParse(said);
    if (parsed.success) return new Date(parsed.data);
  }
  return openMeteoTime(body) ?? new Date(0);
}

const OPEN_METEO_TIMES = z.looseObject({
  utc_offset_seconds: z.number().default(0),
  current: z.looseObject({ time: z.union([z.string(), z.number()]) }).optional(),
  hourly: z.looseObject({ time: z.array(z.union([z.string(), z.number()])).min(1) }).optional(),
});

/** The current weather's time where it was asked for, else the first hour: the answer cannot be older than that. */
function openMeteoTime(body: Members): Date | undefined {
  const parsed = OPEN_METEO_TIMES.safeParse(body).data;
  const said = parsed?.current?.time ?? parsed?.hourly?.time[0];
  if (parsed === undefined || said === undefined) return undefined;
  const atMs = typeof said === 'number' ? said * 1000 : Date.parse(`${said}Z`) - parsed.utc_offset_seconds * 1000;
  return Number.isNaN(atMs) ? undefined : new Date(atMs);
}
