import type { Answer } from './wire.ts';

const WINDOW_MS = 1000;

/** What Discord allows one application in all: so many requests a second, whichever process sends them. */
export class GlobalRate {
  /** Requests that came too early. */
  refusals = 0;
  readonly #mostPerS: number;
  #endsMs = 0;
  #count = 0;

  constructor(mostPerS: number) {
    this.#mostPerS = mostPerS;
  }

  /** The answer to a request that is too much; undefined for one that is allowed. */
  refusal(): Answer | undefined {
    const now = performance.now();
    if (now >= this.#endsMs) {
      this.#endsMs = now + WINDOW_MS;
      this.#count = 0;
    }
    this.#count += 1;
    if (this.#count <= this.#mostPerS) return undefined;
    this.refusals += 1;
    const waitS = (this.#endsMs - now) / 1000;
    return {
      status: 429,
      json: { message: 'You are being rate limited.', retry_after: waitS, global: true },
      headers: {
        'retry-after': String(Math.ceil(waitS)),
        'x-ratelimit-global': 'true',
        'x-ratelimit-scope': 'global',
      },
    };
  }
}
