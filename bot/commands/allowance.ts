/** How many questions one member may ask: a bucket that refills steadily. Keeps one person from using up the bot. */
export class Allowance {
  readonly #most: number;
  readonly #refillMs: number;
  readonly #buckets = new Map<string, { left: number; at: number }>();

  /**
   * @param most - Questions that may come at once.
   * @param refillMs - Time after which one more is allowed.
   */
  constructor(most: number, refillMs: number) {
    this.#most = most;
    this.#refillMs = refillMs;
  }

  /** Takes one question from the member's bucket; false when it is empty. */
  take(memberId: string, now: Date): boolean {
    const bucket = this.#buckets.get(memberId);
    const at = now.getTime();
    const refilled = bucket === undefined ? this.#most : bucket.left + Math.max(0, at - bucket.at) / this.#refillMs;
    const left = Math.min(this.#most, refilled);
    const isAllowed = left >= 1;
    this.#buckets.delete(memberId);
    // From now on, also where a clock that ran ahead has been put right.
    this.#buckets.set(memberId, { left: isAllowed ? left - 1 : left, at });
    if (isAllowed) this.#forgetFull(at);
    return isAllowed;
  }

  /** Buckets that have filled up again say nothing; the oldest come first. */
  #forgetFull(at: number): void {
    for (const [memberId, bucket] of this.#buckets) {
      if (bucket.left + (at - bucket.at) / this.#refillMs < this.#most) return;
      this.#buckets.delete(memberId);
    }
  }
}
