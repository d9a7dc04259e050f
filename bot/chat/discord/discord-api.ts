import { DefaultRestOptions, type RawFile, REST, type RESTOptions, RequestMethod, type RouteLike } from 'discord.js';
import { type BackOff, waited, waitMs } from './back-off.ts';
import { type DiscordError, discordError } from './discord-error.ts';

export interface DiscordApiOptions {
  readonly token: string;
  /** Without version and without trailing slash. */
  readonly apiBase: string;
  /** Called once, when Discord refuses the token: nothing will work any more, and the program must end. */
  readonly onTokenRefused: () => void;
}

const METHODS = {
  GET: RequestMethod.Get,
  POST: RequestMethod.Post,
  PUT: RequestMethod.Put,
  PATCH: RequestMethod.Patch,
} as const;

export interface DiscordCall {
  readonly method: keyof typeof METHODS;
  readonly route: RouteLike;
  readonly query?: Readonly<Record<string, string>>;
  readonly body?: unknown;
  readonly files?: RawFile[];
  /** False where the address itself carries the right, as with interactions; a refusal there says nothing of our token. */
  readonly withToken?: boolean;
  /** Whether a second copy does no harm. Default: for all but POST. */
  readonly repeatable?: boolean;
  /** For each attempt, waiting in a queue included. */
  readonly withinMs?: number;
}

const ATTEMPTS = 3;
const BACK_OFF: BackOff = { firstMs: 200, mostMs: 2000 };
const USUAL_WITHIN_MS = 15_000;
/** Longer waits are for whoever plans the work: an awaiting command would hang. */
const LONGEST_RATE_WAIT_MS = 6000;

/**
 * Discord's HTTP calls for both doors, over the library's client: it counts rate limits and writes multipart bodies. Its
 * retries are switched off, because it repeats at once and repeats what must not be repeated.
 */
export class DiscordApi {
  readonly #rest: REST;
  readonly #onTokenRefused: () => void;
  #tokenRefused = false;

  constructor(options: DiscordApiOptions) {
    this.#rest = new REST({
      api: options.apiBase,
      retries: 0,
      timeout: USUAL_WITHIN_MS,
      rejectOnRateLimit: ({ retryAfter }) => retryAfter > LONGEST_RATE_WAIT_MS,
      makeRequest: requestInBytes,
    }).setToken(options.token);
    this.#onTokenRefused = options.onTokenRefused;
  }

  /** @throws DiscordError always, whatever went wrong. */
  async call<T>(call: DiscordCall): Promise<T> {
    const repeatable = call.repeatable ?? call.method !== 'POST';
    for (let attempt = 1; ; attempt += 1) {
      const outcome = await this.#attempt<T>(call);
      if ('value' in outcome) return outcome.value;
      const { failure } = outcome;
      if (failure.code === 'token-refused') this.#tellTokenRefused();
      const again = failure.code === 'unavailable' && (repeatable || failure.neverSent) && attempt < ATTEMPTS;
      if (!again) throw failure;
      await waited(waitMs(attempt, BACK_OFF));
    }
  }

  /** Lets the process end: the library keeps timers. */
  close(): void {
    this.#rest.clearHashSweeper();
    this.#rest.clearHandlerSweeper();
  }

  async #attempt<T>(call: DiscordCall): Promise<{ value: T } | { failure: DiscordError }> {
    try {
      const value = await this.#rest.request({
        method: METHODS[call.method],
        fullRoute: call.route,
        ...(call.query === undefined ? {} : { query: new URLSearchParams(call.query) }),
        ...(call.body === undefined ? {} : { body: call.body }),
        ...(call.files === undefined || call.files.length === 0 ? {} : { files: call.files }),
        auth: call.withToken ?? true,
        signal: AbortSignal.timeout(call.withinMs ?? USUAL_WITHIN_MS),
      });
      return { value: value as T };
    } catch (error) {
      return { failure: discordError(error, call.withToken) };
    }
  }

  #tellTokenRefused(): void {
    if (this.#tokenRefused) return;
    this.#tokenRefused = true;
    this.#onTokenRefused();
  }
}

/**
 * The library and we bring an undici each, and both send through whichever was loaded first. Only one of them reads forms; bytes they
 * both send.
 */
const requestInBytes: RESTOptions['makeRequest'] = async (url, init) => {
  if (!(init.body instanceof FormData)) return DefaultRestOptions.makeRequest(url, init);
  const form = new Response(init.body);
  const headers = { ...init.headers, 'content-type': form.headers.get('content-type') ?? '' };
  return DefaultRestOptions.makeRequest(url, { ...init, headers, body: await form.arrayBuffer() });
};
