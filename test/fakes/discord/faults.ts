import type { ServerResponse } from 'node:http';
import { setTimeout as pause } from 'node:timers/promises';
import { type Answer, type RecordedRequest, sent } from './wire.ts';

/** How a request goes wrong. */
export type FaultKind =
  /** Nothing is done; this is answered. */
  | { readonly kind: 'answer'; readonly answer: Answer }
  /** What was asked is done, yet this is answered. */
  | { readonly kind: 'done-but-answer'; readonly answer: Answer }
  /** Done, and answered after a while. */
  | { readonly kind: 'slow'; readonly ms: number }
  /** Nothing is done; the connection is reset. */
  | { readonly kind: 'reset' }
  /** Done, but the connection closes without an answer. */
  | { readonly kind: 'done-but-closed' };

export interface Fault {
  readonly method?: string;
  readonly path: RegExp;
  /** How often; for ever unless said. */
  readonly times?: number;
  readonly how: FaultKind;
}

/** Faults that tests have ordered, in their order. */
export class Faults {
  readonly #ordered: { readonly fault: Fault; left: number }[] = [];

  order(fault: Fault): void {
    this.#ordered.push({ fault, left: fault.times ?? Number.POSITIVE_INFINITY });
  }

  clear(): void {
    this.#ordered.length = 0;
  }

  #next(request: RecordedRequest): FaultKind | undefined {
    const match = this.#ordered.find(
      ({ fault, left }) =>
        left > 0 && (fault.method ?? request.method) === request.method && fault.path.test(request.path),
    );
    if (match === undefined) return undefined;
    match.left -= 1;
    return match.fault.how;
  }

  /** Answers as ordered, else as it should be. */
  async answered(request: RecordedRequest, response: ServerResponse, doIt: () => Promise<Answer>): Promise<void> {
    const how = this.#next(request);
    switch (how?.kind) {
      case 'answer':
        return sent(response, how.answer);
      case 'done-but-answer':
        await doIt();
        return sent(response, how.answer);
      case 'slow': {
        const answer = await doIt();
        await pause(how.ms);
        return sent(response, answer);
      }
      case 'reset':
        response.socket?.resetAndDestroy();
        return undefined;
      case 'done-but-closed':
        await doIt();
        response.socket?.end();
        return undefined;
      default:
        return sent(response, await doIt());
    }
  }
}

/** 429 as Discord words it. */
export function tooMany(retryAfterS: number, scope: 'user' | 'shared' = 'user'): Answer {
  return {
    status: 429,
    json: { message: 'You are being rate limited.', retry_after: retryAfterS, global: false },
    headers: { 'retry-after': String(Math.ceil(retryAfterS)), 'x-ratelimit-scope': scope },
  };
}
