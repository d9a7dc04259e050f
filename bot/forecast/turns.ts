/** Who goes first where many wait for a service. */
export const URGENCIES = ['nightly', 'asked', 'aside'] as const;
/** `nightly`: a club waits for it. `asked`: somebody looks at the screen. `aside`: official warnings, which can be looked up. */
export type Urgency = (typeof URGENCIES)[number];

interface Waiting {
  readonly rank: number;
  readonly untilMs: number;
  readonly go: (isOn: boolean) => void;
}

/** Turns at a service that wants its requests apart: the more urgent first, and nobody waits longer than an answer has. */
export class Turns {
  readonly #spacingMs: number;
  readonly #clockMs: () => number;
  #waiting: Waiting[] = [];
  #freeAtMs = Number.NEGATIVE_INFINITY;
  #timer: NodeJS.Timeout | undefined;

  constructor(spacingMs: number, clockMs: () => number) {
    this.#spacingMs = spacingMs;
    this.#clockMs = clockMs;
  }

  /**
   * Waits for a turn.
   *
   * @param patienceMs - Longest wait.
   * @returns False, at once where that is clear, if the wait would be longer.
   */
  async turn(urgency: Urgency, patienceMs: number): Promise<boolean> {
    const nowMs = this.#clockMs();
    const rank = URGENCIES.indexOf(urgency);
    if (this.#waiting.length === 0 && nowMs >= this.#freeAtMs) {
      this.#freeAtMs = nowMs + this.#spacingMs;
      return true;
    }
    const ahead = this.#waiting.filter((each) => each.rank <= rank).length;
    const untilMs = nowMs + patienceMs;
    if (Math.max(nowMs, this.#freeAtMs) + ahead * this.#spacingMs > untilMs) return false;
    return new Promise((go) => {
      const place = this.#waiting.findIndex((each) => each.rank > rank);
      this.#waiting.splice(place < 0 ? this.#waiting.length : place, 0, { rank, untilMs, go });
      this.#timer ??= setTimeout(() => this.#next(), this.#freeAtMs - nowMs);
    });
  }

  #next(): void {
    const nowMs = this.#clockMs();
    // More urgent ones came in between, until it was too late for these.
    for (const each of this.#waiting) if (each.untilMs < nowMs) each.go(false);
    const [first, ...others] = this.#waiting.filter((each) => each.untilMs >= nowMs);
    this.#waiting = others;
    this.#timer = others.length === 0 ? undefined : setTimeout(() => this.#next(), this.#spacingMs);
    if (first === undefined) return;
    this.#freeAtMs = nowMs + this.#spacingMs;
    first.go(true);
  }
}
