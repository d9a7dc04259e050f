import { z } from 'zod';
import { ForecastBodyError } from './forecast-error.ts';

/** A saved answer taken out of whatever it was saved in. */
export interface SavedAnswer {
  readonly body: unknown;
  readonly status?: number;
  readonly fetchedAt?: Date;
  readonly modifiedAt?: Date;
}

const headers = z.record(z.string(), z.unknown());
const WRAPPED = z.looseObject({ status_code: z.number(), headers, data: z.unknown().optional() });
const CASSETTE = z.looseObject({
  http_interactions: z
    .array(
      z.looseObject({
        response: z.looseObject({ status: z.number(), headers, body: z.looseObject({ string: z.string() }) }),
      }),
    )
    .min(1),
});

/** The answer inside a file: bare, beside its headers, or the last one of an HTTP cassette. @throws ForecastBodyError */
export function unwrapped(text: string): SavedAnswer {
  const file = parsedJson(text);
  const wrapped = WRAPPED.safeParse(file);
  if (wrapped.success)
    return { body: wrapped.data.data, status: wrapped.data.status_code, ...headerTimes(wrapped.data.headers) };
  const cassette = CASSETTE.safeParse(file);
  const last = cassette.data?.http_interactions.at(-1)?.response;
  if (last === undefined) return { body: file };
  return { body: parsedJson(last.body.string), status: last.status, ...headerTimes(last.headers) };
}

function parsedJson(text: string): unknown {
  const start = text.replace(/^\uFEFF/, '').trimStart();
  if (start === '') throw new ForecastBodyError('not-json', 'The file is empty; save the whole answer of the service.');
  try {
    return JSON.parse(start) as unknown;
  } catch (cause) {
    throw new ForecastBodyError('not-json', whyNotJson(start), cause);
  }
}

function whyNotJson(text: string): string {
  if (text.startsWith('<'))
    return 'The file is a web page, not a forecast; save the JSON answer of the service itself.';
  return text.startsWith('{') || text.startsWith('[')
    ? 'The file breaks off or is damaged: it is not complete JSON; save the whole answer again.'
    : 'The file is not JSON; save the answer of the service as it came.';
}

function headerTimes(sent: Readonly<Record<string, unknown>>): Pick<SavedAnswer, 'fetchedAt' | 'modifiedAt'> {
  const fetchedAt = headerDate(sent, 'date');
  const modifiedAt = headerDate(sent, 'last-modified');
  return { ...(fetchedAt === undefined ? {} : { fetchedAt }), ...(modifiedAt === undefined ? {} : { modifiedAt }) };
}

function headerDate(sent: Readonly<Record<string, unknown>>, name: string): Date | undefined {
  const found = Object.entries(sent).find(([key]) => key.toLowerCase() === name)?.[1];
  const text = Array.isArray(found) ? (found[0] as unknown) : found;
  const atMs = typeof text === 'string' ? Date.parse(text) : Number.NaN;
  return Number.isNaN(atMs) ? undefined : new Date(atMs);
}
