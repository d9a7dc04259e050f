import { z } from 'zod';
import { SERVICE_TITLES } from './credits.ts';
import type { ForecastService } from './forecast.ts';
import { ForecastBodyError, ForecastServiceError } from './forecast-error.ts';
import type { Answer } from './transport.ts';

const JSON_TYPE = /^application\/([a-z.+-]{1,40}\+)?json\b/i;
const REASON = z.union([
  z.looseObject({ title: z.string() }).transform(({ title }) => title),
  z.looseObject({ reason: z.string() }).transform(({ reason }) => reason),
]);
const LONGEST_REASON = 120;

/**
 * The JSON of a good answer. The content type is looked at first: errors come as web pages too.
 *
 * @throws ForecastServiceError telling a place outside the service's area from a fault.
 */
export function answerJson(service: ForecastService, answer: Answer): unknown {
  const isJson = JSON_TYPE.test(answer.contentType);
  const title = SERVICE_TITLES[service];
  if (answer.status === 404 || answer.status === 422) {
    throw new ForecastServiceError(
      service,
      'not-covered',
      `${title} has no forecast for this place${reason(answer, isJson)}.`,
    );
  }
  if (answer.status < 200 || answer.status > 299) {
    throw unreadable(service, answer, `${title} answered with status ${answer.status}${reason(answer, isJson)}.`);
  }
  if (!isJson) throw unreadable(service, answer, `${title} did not answer with JSON.`);
  return parsed(service, answer);
}

/** Reads a body, turning what the readers complain of into a failure of the service. */
export function read<Body>(service: ForecastService, answer: Answer, reader: () => Body): Body {
  try {
    return reader();
  } catch (cause) {
    if (!(cause instanceof ForecastBodyError)) throw cause;
    throw unreadable(service, answer, cause.message, cause);
  }
}

function parsed(service: ForecastService, answer: Answer): unknown {
  try {
    return JSON.parse(answer.body) as unknown;
  } catch (cause) {
    throw unreadable(service, answer, `${SERVICE_TITLES[service]} sent JSON that breaks off or is damaged.`, cause);
  }
}

function unreadable(service: ForecastService, answer: Answer, message: string, cause?: unknown): ForecastServiceError {
  answer.unreadable();
  return new ForecastServiceError(service, 'bad-answer', message, cause === undefined ? {} : { cause });
}

function reason(answer: Answer, isJson: boolean): string {
  if (!isJson) return '';
  try {
    const said = REASON.safeParse(JSON.parse(answer.body) as unknown);
    return said.success ? ` (${said.data.slice(0, LONGEST_REASON)})` : '';
  } catch {
    return '';
  }
}
