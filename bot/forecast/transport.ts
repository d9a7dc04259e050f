import { promisify } from 'node:util';
import { gunzip } from 'node:zlib';
import { Agent, type Dispatcher, interceptors } from 'undici';
import { AnswerCache, type AnswerCacheOptions } from './answer-cache.ts';
import { SERVICE_TITLES } from './credits.ts';
import type { ForecastService, Haste, ServiceFailure } from './forecast.ts';
import { ForecastServiceError } from './forecast-error.ts';
import { Pauses } from './pauses.ts';
import { politeness } from './politeness.ts';
import { Turns } from './turns.ts';

const MB = 1_000_000;
const HOUR_MS = 3_600_000;
const gunzipped = promisify(gunzip);

/** An answer with a status that its reader must deal with: 2xx, or a 4xx that belongs to the question. */
export interface Answer {
  readonly status: number;
  readonly contentType: string;
  readonly body: string;
  /** How long ago the service gave it, where it was kept since. [s] */
  readonly ageS: number;
  readonly modifiedAt?: Date;
  /** To be called by a reader that cannot make sense of it: it is asked for anew next time, and the operator hears of it. */
  readonly unreadable: () => void;
}

/** What the operator should know; it names no place. */
export interface ServiceEvent {
  readonly service: ForecastService;
  readonly code: ServiceFailure | 'deprecated';
  readonly status?: number;
}

export interface TransportOptions {
  readonly bases: Readonly<Record<ForecastService, string>>;
  /** Mail or web address at which the services can reach the operator. */
  readonly contact: string;
  readonly tell?: (event: ServiceEvent) => void;
  /** Wait before the one retry: five to ten seconds. [ms] */
  readonly retryWaitMs?: () => number;
  /** Least time between two requests to each service. [ms] */
  readonly spacingMs?: Readonly<Record<ForecastService, number>>;
  readonly headersWithinMs?: number;
  readonly answerWithinMs?: number;
  readonly maxAnswerBytes?: number;
  /** A clock that never jumps. [ms] */
  readonly clockMs?: () => number;
}

export interface AskedHow {
  readonly headers?: Readonly<Record<string, string>>;
  readonly haste?: Haste;
  /** Goes after everything else: it can be looked up elsewhere. */
  readonly aside?: boolean;
}

/** How each service wants its answers kept, and how closely it may be asked. */
const POLICIES: Readonly<
  Record<
    ForecastService,
    { cache: AnswerCacheOptions; freshWithoutWordS?: number; spacingMs: number; patienceMs: number }
  >
> = {
  /** Sends max-age; its Last-Modified has been seen in the future. At most one request a second. */
  nws: {
    cache: { maxBytes: 32 * MB, keepStaleMs: 24 * HOUR_MS, trustLastModified: false },
    spacingMs: 1000,
    patienceMs: 2000,
  },
  /** No request before Expires, then If-Modified-Since with its own Last-Modified. At most twenty a second. */
  metno: {
    cache: { maxBytes: 16 * MB, keepStaleMs: 24 * HOUR_MS, trustLastModified: true },
    spacingMs: 50,
    patienceMs: 5000,
  },
  /** Says nothing; its models run hourly at most. At most 600 a minute. */
  openmeteo: {
    cache: { maxBytes: 16 * MB, keepStaleMs: 0, trustLastModified: true },
    freshWithoutWordS: 1800,
    spacingMs: 150,
    patienceMs: 7000,
  },
};

/**
 * Who asks from a screen waits so long for a turn that the services after it still have time (`patienceMs`). A club's night
 * waits within the lease of its row; who has no other service to go to waits as long as a chat service keeps a question open.
 */
const NIGHTLY_PATIENCE_MS = 25_000;
const LAST_PATIENCE_MS = 120_000;
const SECOND_PATIENCE_MS = 1500;
/** Official warnings go last and have no other service. */
const ASIDE_PATIENCE_MS = 6000;

/** Failures of the way there that a second try may mend. */
const WORTH_A_RETRY = new Set([
  'ECONNRESET',
  'ECONNREFUSED',
  'EAI_AGAIN',
  'EPIPE',
  'ETIMEDOUT',
  'UND_ERR_SOCKET',
  'UND_ERR_CONNECT_TIMEOUT',
  'UND_ERR_HEADERS_TIMEOUT',
]);
/** Answers that came but were too long or damaged. */
const UNREADABLE = new Set(['UND_ERR_RES_EXCEEDED_MAX_SIZE', 'ERR_BUFFER_TOO_LARGE', 'Z_DATA_ERROR', 'Z_BUF_ERROR']);
const RETRY_MS = { least: 5000, most: 10_000 };

/** One agent for all services; each has its own cache, pace and rests. */
export class Transport {
  readonly #agent: Agent;
  readonly #options: TransportOptions;
  readonly #lines: Readonly<Record<ForecastService, Line>>;

  constructor(options: TransportOptions) {
    this.#options = options;
    const headersWithinMs = options.headersWithinMs ?? 15_000;
    this.#agent = new Agent({
      connections: 4,
      connect: { timeout: headersWithinMs },
      headersTimeout: headersWithinMs,
      bodyTimeout: headersWithinMs,
      maxResponseSize: options.maxAnswerBytes ?? 4 * MB,
    });
    const line = (service: ForecastService) => new Line(service, this.#agent, options);
    this.#lines = { nws: line('nws'), metno: line('metno'), openmeteo: line('openmeteo') };
  }

  /**
   * Asks a service.
   *
   * @param pathAndQuery - Below the service's base, beginning with a slash.
   * @throws ForecastServiceError when the service rests, turns us away, fails twice or cannot be understood.
   */
  async get(service: ForecastService, pathAndQuery: string, how: AskedHow = {}): Promise<Answer> {
    const answer = await this.#lines[service].ask(pathAndQuery, how);
    if (answer.status === 203) this.#options.tell?.({ service, code: 'deprecated', status: 203 });
    return answer;
  }

  async close(): Promise<void> {
    await this.#agent.destroy();
  }
}

/** The way to one service. */
class Line {
  readonly #service: ForecastService;
  readonly #options: TransportOptions;
  readonly #dispatcher: Dispatcher;
  readonly #pauses: Pauses;
  readonly #cache: AnswerCache;
  readonly #turns: Turns;
  readonly #patienceMs: number;
  readonly #base: URL;
  readonly #userAgent: string;

  constructor(service: ForecastService, agent: Agent, options: TransportOptions) {
    const clockMs = options.clockMs ?? (() => performance.now());
    const policy = POLICIES[service];
    const { freshWithoutWordS } = policy;
    this.#service = service;
    this.#options = options;
    this.#base = new URL(options.bases[service]);
    this.#userAgent = `Eiderdown/0.1 (${options.contact.replace(/[^ -~]/g, '')})`;
    this.#pauses = new Pauses(service, clockMs);
    this.#cache = new AnswerCache(policy.cache);
    const spacingMs = options.spacingMs?.[service] ?? policy.spacingMs;
    this.#turns = new Turns(spacingMs, clockMs);
    this.#patienceMs = policy.patienceMs;
    this.#dispatcher = agent.compose(
      politeness({
        origin: this.#base.origin,
        spacingMs,
        deadlineMs: options.answerWithinMs ?? 30_000,
        clockMs,
      }),
      interceptors.retry({ throwOnError: false, retry: onceMore(options.retryWaitMs ?? jitteredWaitMs) }),
      interceptors.redirect({ maxRedirections: 3 }),
      interceptors.cache({
        type: 'private',
        store: this.#cache,
        ...(freshWithoutWordS === undefined ? {} : { cacheByDefault: freshWithoutWordS }),
      }),
    );
  }

  async ask(pathAndQuery: string, { headers = {}, haste = 'asked', aside = false }: AskedHow): Promise<Answer> {
    const path = this.#base.pathname.replace(/\/$/, '') + pathAndQuery;
    this.#pauses.refuseWhileResting(path);
    if (!this.#cache.isFresh(this.#keyOf(path))) await this.#turn(haste, aside);
    // While it waited, the service may have turned others away.
    this.#pauses.refuseWhileResting(path);
    const response = await this.#dispatched(path, headers);
    const { status } = response;
    if (status === 401 || status === 403 || status === 429) {
      const code = status === 429 ? 'rate-limited' : 'refused';
      throw this.#failure(code, status, this.#pauses.turnedAway(code, response.retryAfterS));
    }
    if (status >= 499) throw this.#failure('unavailable', status, this.#pauses.failed(path));
    this.#pauses.answered();
    return { ...response, unreadable: () => this.#unreadable(path, status) };
  }

  async #dispatched(
    path: string,
    headers: Readonly<Record<string, string>>,
  ): Promise<Omit<Answer, 'unreadable'> & { retryAfterS: number }> {
    try {
      const response = await this.#dispatcher.request({
        origin: this.#base.origin,
        path,
        method: 'GET',
        headers: { 'user-agent': this.#userAgent, 'accept-encoding': 'gzip', ...headers },
      });
      const wire = Buffer.from(await response.body.arrayBuffer());
      const modifiedAt = Date.parse(first(response.headers['last-modified']));
      return {
        status: response.statusCode,
        contentType: first(response.headers['content-type']),
        body: await this.#text(wire, first(response.headers['content-encoding'])),
        ageS: seconds(first(response.headers['age'])),
        retryAfterS: seconds(first(response.headers['retry-after'])),
        ...(Number.isNaN(modifiedAt) ? {} : { modifiedAt: new Date(modifiedAt) }),
      };
    } catch (cause) {
      if (cause instanceof ForecastServiceError) throw cause;
      const code = UNREADABLE.has(codeOf(cause)) ? 'bad-answer' : 'unavailable';
      throw this.#failure(code, undefined, this.#pauses.failed(path), cause);
    }
  }

  /** @throws ForecastServiceError where too many wait. */
  async #turn(haste: Haste, aside: boolean): Promise<void> {
    const patienceMs = this.#patience(haste, aside);
    const urgency = aside ? 'aside' : haste === 'nightly' ? 'nightly' : 'asked';
    if (await this.#turns.turn(urgency, patienceMs)) return;
    const title = SERVICE_TITLES[this.#service];
    throw new ForecastServiceError(this.#service, 'busy', `${title} has too many questions waiting.`);
  }

  #patience(haste: Haste, aside: boolean): number {
    if (aside && haste === 'asked') return ASIDE_PATIENCE_MS;
    return {
      nightly: NIGHTLY_PATIENCE_MS,
      asked: this.#patienceMs,
      second: SECOND_PATIENCE_MS,
      last: LAST_PATIENCE_MS,
    }[haste];
  }

  #keyOf(path: string) {
    return { origin: this.#base.origin, method: 'GET', path, headers: {} };
  }

  #unreadable(path: string, status: number): void {
    this.#cache.delete(this.#keyOf(path));
    this.#options.tell?.({ service: this.#service, code: 'bad-answer', status });
  }

  async #text(wire: Buffer, encoding: string): Promise<string> {
    if (encoding !== '' && encoding !== 'identity' && encoding !== 'gzip') {
      throw new ForecastServiceError(
        this.#service,
        'bad-answer',
        'The answer is packed in a way that was not asked for.',
      );
    }
    const maxOutputLength = 2 * (this.#options.maxAnswerBytes ?? 4 * MB);
    return (encoding === 'gzip' ? await gunzipped(wire, { maxOutputLength }) : wire).toString('utf8');
  }

  #failure(
    code: ServiceFailure,
    status: number | undefined,
    retryAfterS: number,
    cause?: unknown,
  ): ForecastServiceError {
    this.#options.tell?.({ service: this.#service, code, ...(status === undefined ? {} : { status }) });
    const silent = code === 'bad-answer' ? 'sent an answer that cannot be read' : 'did not answer';
    const what = status === undefined ? silent : `answered with status ${status}`;
    return new ForecastServiceError(this.#service, code, `${SERVICE_TITLES[this.#service]} ${what}.`, {
      retryAfterS,
      ...(cause === undefined ? {} : { cause }),
    });
  }
}

type RetryRule = NonNullable<NonNullable<Parameters<typeof interceptors.retry>[0]>['retry']>;

/** One retry for a broken service or way, none for anything else: a 403 or 429 must not be repeated. */
function onceMore(waitMs: () => number): RetryRule {
  return (error, { state }, done) => {
    if (state.counter > 1 || !worthRetrying(error)) {
      done(error);
      return;
    }
    setTimeout(() => done(null), waitMs());
  };
}

function worthRetrying(error: Error): boolean {
  const { statusCode } = error as { statusCode?: unknown };
  return typeof statusCode === 'number' ? statusCode >= 499 : WORTH_A_RETRY.has(codeOf(error));
}

function codeOf(error: unknown): string {
  const { code } = error as { code?: unknown };
  return typeof code === 'string' ? code : '';
}

/** Five to ten seconds, so that many bots do not come back together. */
export function jitteredWaitMs(): number {
  return RETRY_MS.least + Math.random() * (RETRY_MS.most - RETRY_MS.least);
}

function first(header: string | string[] | undefined): string {
  return (Array.isArray(header) ? header[0] : header) ?? '';
}

/** A count of seconds; a date or nothing counts as none, since a rest is an hour anyway. */
function seconds(text: string): number {
  return /^\d{1,9}$/.test(text) ? Number(text) : 0;
}
