import { isThere } from './instants.ts';
import type { Tending } from './night-input.ts';

/** So far below its limit an opened bed no longer needs to be open (judgement). */
const SHUT_BELOW_LIMIT_K = 6;

/** Follows a bed that somebody opens and shuts by a thermometer among its leaves. */
export class Tended {
  readonly #tending: Tending;
  /** How many openings from the least; 0 is shut. */
  #rung = 0;

  constructor(tending: Tending) {
    this.#tending = tending;
  }

  /**
   * The opening for the next step.
   *
   * @param atMs - Beginning of the step. [ms since 1970]
   * @param thermometerC - Thermometer among the leaves then. [°C]
   * @returns One size wider while the limit is passed; nothing when it has become cool, or outside the spans.
   */
  opening(atMs: number, thermometerC: number): Tending['openings'][number] | undefined {
    const { limitC, openings, spans } = this.#tending;
    if (!spans.some((span) => isThere(span, atMs)) || thermometerC < limitC - SHUT_BELOW_LIMIT_K) this.#rung = 0;
    else if (thermometerC > limitC) this.#rung = Math.min(openings.length, this.#rung + 1);
    return openings[this.#rung - 1];
  }
}
