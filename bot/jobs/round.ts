import { randomUUID } from 'node:crypto';
import { MS_PER_H } from '../../rules/index.ts';
import type { Delivery, PlannedDelivery } from '../store/port/deliveries.ts';
import type { JobServices } from './job-services.ts';
import { Nightly } from './nightly.ts';
import { Planner } from './planner.ts';
import { workOf } from './work.ts';
import { Worker } from './worker.ts';

export interface RoundOptions {
  readonly leaseS: number;
  readonly atOnce: number;
  /** How far a start looks back for posts that were owed while nothing ran. [h] */
  readonly lookBackH: number;
  /** What all processes together post in a second: a little below Discord's fifty, which answers to people do not count in. */
  readonly postsPerS: number;
}

export const USUAL_ROUND: RoundOptions = { leaseS: 60, atOnce: 24, lookBackH: 7 * 24, postsPerS: 47.2 };

const DAY_MS = 24 * MS_PER_H;
/** The last fetches begin five minutes before a post. */
const PREPARED_BEFORE_MS = 4 * 60_000;
const WEATHER_KEPT_DAYS = 30;
const LEDGER_KEPT_DAYS = 400;
/** As far back as anything is learned from. */
const PREDICTIONS_KEPT_DAYS = 730;

/** What happens every minute: plan, tell the operator what was missed, work. Nothing that it does ever throws. */
export class Round {
  readonly #services: JobServices;
  readonly #options: RoundOptions;
  readonly #planner: Planner;
  readonly #worker: Worker;
  readonly #nightly: Nightly;
  /** Warnings that were worked out ahead, until they are due. */
  readonly #prepared = new Set<string>();
  #preparing: Promise<void> | undefined;
  #isStopped = false;
  #hasPlanned = false;
  #tidiedDay = '';
  #draining: Promise<void> | undefined;

  constructor(services: JobServices, options: Partial<RoundOptions> = {}) {
    this.#services = services;
    this.#options = { ...USUAL_ROUND, ...options };
    this.#planner = new Planner(services.store, services.opening !== undefined);
    const { atOnce, leaseS, postsPerS } = this.#options;
    this.#nightly = new Nightly(services, postsPerS);
    this.#worker = new Worker(services.store.deliveries, (claim) => this.#nightly.handle(claim), {
      ...{ atOnce, leaseS },
      worker: randomUUID(),
    });
  }

  /** Plans, and sees that somebody works; the work itself may go on after this has ended. */
  async tick(): Promise<void> {
    const { clock, log } = this.#services;
    const now = clock.now();
    try {
      await this.#plan(now);
      await this.#tidy(now);
    } catch (error) {
      log.error({ err: error }, 'planning failed; it is tried again in a minute');
    }
    this.#draining ??= this.#drain().finally(() => {
      this.#draining = undefined;
      if (this.#soon(clock.now()).length === 0) this.#nightly.rest();
    });
    this.#preparing ??= this.#prepare(now).finally(() => {
      this.#preparing = undefined;
    });
  }

  /** Settles when nothing is in hand. */
  async drained(): Promise<void> {
    await this.#draining;
    await this.#preparing;
  }

  async stop(): Promise<void> {
    this.#isStopped = true;
    this.#worker.stop();
    await this.drained();
    this.#nightly.rest();
  }

  async #plan(now: Date): Promise<void> {
    const from = this.#hasPlanned ? now : new Date(now.getTime() - this.#options.lookBackH * MS_PER_H);
    await this.#planner.plan(now, from);
    this.#hasPlanned = true;
    const ended = await this.#services.store.deliveries.expire(now);
    this.#tellMissed(ended.filter(({ kind, placeId }) => isOwed({ kind, placeId })));
  }

  /** One line, however much was missed: a host must see it. */
  #tellMissed(owed: readonly Delivery[]): void {
    if (owed.length === 0) return;
    const nights = [...new Set(owed.map(({ night }) => night))].toSorted();
    const problems = [...new Set(owed.map(({ lastProblem }) => lastProblem))];
    this.#services.log.error({ count: owed.length, nights, problems }, 'posts came to nothing before they were stale');
  }

  /** Once a day. */
  async #tidy(now: Date): Promise<void> {
    const day = now.toISOString().slice(0, 10);
    if (day === this.#tidiedDay) return;
    const { deliveries, predictions, weather } = this.#services.store;
    await deliveries.forget(new Date(now.getTime() - LEDGER_KEPT_DAYS * DAY_MS).toISOString().slice(0, 10));
    await predictions.forget(new Date(now.getTime() - PREDICTIONS_KEPT_DAYS * DAY_MS).toISOString().slice(0, 10));
    await weather.forget(new Date(now.getTime() - WEATHER_KEPT_DAYS * DAY_MS));
    this.#tidiedDay = day;
  }

  /** Once fetches are done and before posts are due, so that these go out as fast as the chat service takes them. */
  async #prepare(now: Date): Promise<void> {
    const soon = this.#soon(now);
    for (const warning of soon) {
      const key = `${warning.placeId} ${warning.night}`;
      if (this.#prepared.has(key)) continue;
      if (this.#isStopped) return;
      if (await this.#nightly.prepare(warning)) this.#prepared.add(key);
    }
    if (soon.length === 0) this.#prepared.clear();
  }

  #soon(now: Date): readonly PlannedDelivery[] {
    return this.#planner.warningsBefore(new Date(now.getTime() + PREPARED_BEFORE_MS));
  }

  async #drain(): Promise<void> {
    try {
      await this.#worker.drain(() => this.#services.clock.now());
    } catch (error) {
      this.#services.log.error({ err: error }, 'nothing can be claimed; it is tried again in a minute');
    }
  }
}

/** Fetches and looks that came to nothing are nobody's loss. */
function isOwed(key: Pick<Delivery, 'placeId' | 'kind'>): boolean {
  const kind = workOf({ ...key, night: '' })?.kind;
  return kind === 'warning' || kind === 'opening' || kind === 'own-part' || kind === 'pause-notice';
}
