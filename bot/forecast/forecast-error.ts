import { PlainProblem } from '../ground/errors.ts';
import type { ForecastService, ServiceFailure } from './forecast.ts';

/** One service could not answer. The message names no place. */
export class ForecastServiceError extends Error {
  override readonly name = 'ForecastServiceError';
  readonly service: ForecastService;
  readonly code: ServiceFailure;
  /** When it makes sense to ask again, if known. [s] */
  readonly retryAfterS: number | undefined;

  constructor(
    service: ForecastService,
    code: ServiceFailure,
    message: string,
    more: { readonly cause?: unknown; readonly retryAfterS?: number } = {},
  ) {
    super(message.charAt(0).toUpperCase() + message.slice(1), 'cause' in more ? { cause: more.cause } : undefined);
    this.service = service;
    this.code = code;
    this.retryAfterS = more.retryAfterS;
  }
}

/** A body that is not a usable forecast, whoever sent it. */
export class ForecastBodyError extends Error {
  override readonly name = 'ForecastBodyError';
  readonly code: 'not-json' | 'unknown-shape' | 'error-answer' | 'no-data' | 'wrong-unit';

  constructor(code: ForecastBodyError['code'], message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
  }
}

/** No service could answer; `failures` tells each one's reason. Shown to the gardener as it stands. */
export class NoForecastError extends PlainProblem {
  readonly code = 'no-forecast';
  readonly failures: readonly ForecastServiceError[];
  /** The soonest that one of them may be asked again. [s] */
  readonly retryAfterS: number | undefined;

  constructor(message: string, failures: readonly ForecastServiceError[]) {
    super(message, { cause: failures[0] });
    this.failures = failures;
    const waits = failures.flatMap((failure) => failure.retryAfterS ?? []);
    this.retryAfterS = waits.length > 0 ? Math.min(...waits) : undefined;
  }
}

/** A saved forecast file that cannot be read. */
export class SavedForecastError extends PlainProblem {
  readonly code: ForecastBodyError['code'];

  constructor(code: SavedForecastError['code'], message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
  }
}

/** A forecast that cannot carry the wanted night. */
export class NightForecastError extends PlainProblem {
  readonly code:
    | 'ends-before-sunrise'
    | 'ends-before-sunset'
    | 'begins-after-sunset'
    | 'gap'
    | 'no-temperature'
    | 'stale';

  constructor(code: NightForecastError['code'], message: string) {
    super(message);
    this.code = code;
  }
}
