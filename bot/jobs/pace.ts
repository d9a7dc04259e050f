import { setTimeout as pause } from 'node:timers/promises';
import { MS_PER_S } from '../../rules/index.ts';

/** How often it is asked who else is posting. */
const ASKED_EVERY_MS = 250;
/** By how many posts who was held up may catch up and still keep below the service's limit in each second. */
const SLACK_ALONE = 1;
const SLACK_SHARED = 0.5;
/** A post that takes so long was made to wait, and all that waited with it go at the same moment. */
const HELD_BACK_MS = 800;

/**
 * Keeps posts apart, so that all processes together stay below what the chat service takes: whoever runs into its limit is
 * made to wait whole seconds, and everybody is late.
 */
export class Pace {
  readonly #perS: number;
  readonly #sharers: () => Promise<number>;
  /** When the next post would go if all went evenly. */
  #evenAtMs = 0;
  #askedAtMs = Number.NEGATIVE_INFINITY;
  #among: Promise<number> = Promise.resolve(1);
  #last: Promise<void> = Promise.resolve();
  /** Posts under way. */
  #underWay = 0;
  #apartMs = 0;

  /**
   * @param perS - Posts of all processes in a second; without end for no pace at all.
   * @param sharers - How many processes are posting, this one included.
   */
  constructor(perS: number, sharers: () => Promise<number>) {
    this.#perS = perS;
    this.#sharers = sharers;
  }

  /** Posts when it is this post's turn. */
  async inTurn<T>(post: () => Promise<T>): Promise<T> {
    await this.#turn();
    const begunMs = performance.now();
    this.#underWay += 1;
    try {
      return await post();
    } finally {
      if (performance.now() - begunMs > HELD_BACK_MS) this.#countAsSentNow(this.#underWay);
      this.#underWay -= 1;
    }
  }

  #turn(): Promise<void> {
    if (this.#perS === Number.POSITIVE_INFINITY) return Promise.resolve();
    const mine = this.#last.catch(() => undefined).then(() => this.#next());
    this.#last = mine;
    return mine;
  }

  #countAsSentNow(posts: number): void {
    this.#evenAtMs = Math.max(this.#evenAtMs, performance.now() + posts * this.#apartMs);
  }

  /** Turns come one after the other, so that those whom a busy moment held up do not all go at once. */
  async #next(): Promise<void> {
    const among = await this.#sharing();
    this.#apartMs = (among * MS_PER_S) / this.#perS;
    const slackMs = this.#apartMs * (among === 1 ? SLACK_ALONE : SLACK_SHARED);
    for (;;) {
      const waitMs = this.#evenAtMs - slackMs - performance.now();
      if (waitMs <= 0) break;
      await pause(waitMs);
    }
    this.#evenAtMs = Math.max(this.#evenAtMs, performance.now()) + this.#apartMs;
  }

  async #sharing(): Promise<number> {
    const nowMs = performance.now();
    if (nowMs - this.#askedAtMs > ASKED_EVERY_MS) {
      this.#askedAtMs = nowMs;
      this.#among = this.#sharers();
    }
    return Math.max(1, await this.#among);
  }
}
