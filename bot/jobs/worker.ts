import { setTimeout as pause } from 'node:timers/promises';
import type { Claim, Deliveries } from '../store/port/deliveries.ts';

export interface WorkerOptions {
  /** Names this process in the ledger. */
  readonly worker: string;
  /** Rows worked on at the same time: enough to keep the chat service busy while each waits for its answer. */
  readonly atOnce: number;
  /** How long a row stays with a worker that is heard of no more. */
  readonly leaseS: number;
}

/** What has been planned meanwhile need not wait for the slowest in hand. */
const LOOK_AGAIN_MS = 2000;

/** Claims what is due, as much as it can work on at once, until nothing is left. */
export class Worker {
  readonly #deliveries: Deliveries;
  readonly #handle: (claim: Claim) => Promise<void>;
  readonly #options: WorkerOptions;
  #stopped = false;

  /** @param handle - Must never reject. */
  constructor(deliveries: Deliveries, handle: (claim: Claim) => Promise<void>, options: WorkerOptions) {
    this.#deliveries = deliveries;
    this.#handle = handle;
    this.#options = options;
  }

  /** Takes on no more; what is in hand is finished by {@link drain}. */
  stop(): void {
    this.#stopped = true;
  }

  /** @throws StoreProblem when nothing can be claimed; what is in hand is finished first. */
  async drain(now: () => Date): Promise<void> {
    const { worker, atOnce, leaseS } = this.#options;
    const inHand = new Set<Promise<void>>();
    try {
      while (!this.#stopped) {
        const limit = atOnce - inHand.size;
        const claims = limit === 0 ? [] : await this.#deliveries.claim({ worker, now: now(), limit, leaseS });
        for (const claim of claims) {
          const work = this.#handle(claim).finally(() => inHand.delete(work));
          inHand.add(work);
        }
        if (inHand.size === 0) return;
        if (claims.length < limit || inHand.size === atOnce) {
          await Promise.race([...inHand, pause(LOOK_AGAIN_MS, undefined, { ref: false })]);
        }
      }
    } finally {
      await Promise.all(inHand);
    }
  }
}
