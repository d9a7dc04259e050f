import { setImmediate as nextTurn } from 'node:timers/promises';
import type { ChannelPlaces } from '../store/port/channels.ts';
import type { DeliveryKey, PlannedDelivery } from '../store/port/deliveries.ts';
import type { Store } from '../store/store.ts';
import { Calendar } from './calendar.ts';
import { type Planning, planFor } from './plan.ts';

const PAGE = 100;
/** Keys that this process has put into the ledger, so that it does not offer them again every minute. */
const REMEMBERED_KEYS = 100_000;

interface Quiet {
  readonly facts: string;
  readonly until: Date;
  readonly nextWarning: PlannedDelivery | undefined;
}

/** Goes through the running channels and puts what is due into the ledger, which takes each key once. */
export class Planner {
  readonly #store: Store;
  readonly #opening: boolean;
  readonly #calendar = new Calendar();
  #planned = new Set<string>();
  /** Channels for which nothing falls due before long, as they were when that was worked out. */
  #quiet = new Map<string, Quiet>();
  #lastAt: Date | undefined;

  constructor(store: Store, opening: boolean) {
    this.#store = store;
    this.#opening = opening;
  }

  /**
   * Plans what is due.
   *
   * @param from - Earlier than `now` to look back on a time when nothing ran.
   * @returns How many rows were new.
   */
  async plan(now: Date, from: Date = now): Promise<number> {
    // A clock that was set back makes things due again that were thought far off.
    if (this.#lastAt !== undefined && now < this.#lastAt) this.#quiet = new Map();
    this.#lastAt = now;
    const planning = { now, from, calendar: this.#calendar, opening: this.#opening };
    const quiet = new Map<string, Quiet>();
    let planned = 0;
    for await (const page of this.#pages()) {
      const due = page.flatMap((place) => this.#dueFor(place, planning, quiet));
      planned += await this.#put(due);
      await nextTurn();
    }
    this.#quiet = quiet;
    return planned;
  }

  /** Warnings that fall due before the instant, the next one first, as of the last plan. */
  warningsBefore(before: Date): readonly PlannedDelivery[] {
    return [...this.#quiet.values()]
      .flatMap(({ nextWarning }) => (nextWarning !== undefined && nextWarning.dueAt < before ? [nextWarning] : []))
      .toSorted((a, b) => a.dueAt.getTime() - b.dueAt.getTime());
  }

  async *#pages(): AsyncGenerator<readonly ChannelPlaces[]> {
    let after: string | undefined;
    for (;;) {
      const page = await this.#store.channels.running(after, PAGE);
      if (page.length > 0) yield page;
      if (page.length < PAGE) return;
      after = page.at(-1)?.channel.id;
    }
  }

  #dueFor(place: ChannelPlaces, planning: Planning, quiet: Map<string, Quiet>): readonly PlannedDelivery[] {
    const { id } = place.channel;
    const facts = factsOf(place);
    const known = this.#quiet.get(id);
    if (known !== undefined && known.facts === facts && planning.now < known.until) {
      quiet.set(id, known);
      return [];
    }
    const { due, nextAt, nextWarning } = planFor(place, planning);
    quiet.set(id, { facts, until: nextAt, nextWarning });
    return due;
  }

  async #put(due: readonly PlannedDelivery[]): Promise<number> {
    const fresh = new Map(due.map((each) => [keyOf(each), each]));
    for (const key of fresh.keys()) if (this.#planned.has(key)) fresh.delete(key);
    if (fresh.size === 0) return 0;
    const planned = await this.#store.deliveries.plan([...fresh.values()]);
    if (this.#planned.size + fresh.size > REMEMBERED_KEYS) this.#planned = new Set();
    for (const key of fresh.keys()) this.#planned.add(key);
    return planned;
  }
}

function keyOf({ placeId, night, kind }: DeliveryKey): string {
  return `${placeId} ${night} ${kind}`;
}

/** All that a plan rests on. */
function factsOf({ channel, places }: ChannelPlaces): string {
  return JSON.stringify([channel.leadH, channel.morningPost, channel.since, places]);
}
