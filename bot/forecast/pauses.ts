import { BoundedMap } from '../ground/bounded-map.ts';
import { SERVICE_TITLES } from './credits.ts';
import type { ForecastService, ServiceFailure } from './forecast.ts';
import { ForecastServiceError } from './forecast-error.ts';

const HOUR_S = 3600;
/** A break of seconds must not cost a night: asked again within minutes, which a service that is down can bear (judgement). */
const ADDRESS_S = 90;
const OUTAGE_S = 110;
/** No service is believed that wants to be left alone for longer: a wrong figure would be an outage of our own (judgement). */
const LONGEST_REST_S = 6 * HOUR_S;
const FAILURES_OF_AN_OUTAGE = 3;
const REMEMBERED_ADDRESSES = 5000;

interface Pause {
  readonly untilMs: number;
  readonly code: ServiceFailure;
}

/**
 * When a service must be left alone: an hour after it turned us away, a minute and a half for an address that failed twice,
 * and two minutes after three addresses in a row failed, so that a nightly run does not wait out every garden of a broken
 * service.
 */
export class Pauses {
  readonly #service: ForecastService;
  readonly #clockMs: () => number;
  readonly #addresses = new BoundedMap<string, Pause>(REMEMBERED_ADDRESSES);
  #whole: Pause | undefined;
  #failuresInARow = 0;

  constructor(service: ForecastService, clockMs: () => number) {
    this.#service = service;
    this.#clockMs = clockMs;
  }

  /** @throws ForecastServiceError while the service or this address rests. */
  refuseWhileResting(address: string): void {
    const nowMs = this.#clockMs();
    const pause = [this.#whole, this.#addresses.get(address)].find((one) => one !== undefined && one.untilMs > nowMs);
    if (pause === undefined) return;
    const retryAfterS = Math.ceil((pause.untilMs - nowMs) / 1000);
    throw new ForecastServiceError(
      this.#service,
      pause.code,
      `${SERVICE_TITLES[this.#service]} is being left alone for a while.`,
      {
        retryAfterS,
      },
    );
  }

  /** Turned away (403, 429): the whole service rests for an hour, or longer if it says so, at most six. @returns the rest in seconds. */
  turnedAway(code: 'refused' | 'rate-limited', askedS = 0): number {
    const restS = Math.min(LONGEST_REST_S, Math.max(HOUR_S, askedS));
    this.#whole = { code, untilMs: this.#clockMs() + restS * 1000 };
    return restS;
  }

  /** Failed after its retry. @returns the rest of this address in seconds. */
  failed(address: string): number {
    const nowMs = this.#clockMs();
    this.#addresses.set(address, { code: 'unavailable', untilMs: nowMs + ADDRESS_S * 1000 });
    this.#failuresInARow += 1;
    if (this.#failuresInARow >= FAILURES_OF_AN_OUTAGE) {
      this.#failuresInARow = 0;
      this.#whole = { code: 'unavailable', untilMs: nowMs + OUTAGE_S * 1000 };
    }
    return ADDRESS_S;
  }

  answered(): void {
    this.#failuresInARow = 0;
  }
}
