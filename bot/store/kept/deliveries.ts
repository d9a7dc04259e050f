import { sql } from 'kysely';
import type { Engine } from '../engine/opened-database.ts';
import type { Claim, ClaimWish, Deliveries, Delivery, DeliveryState, PlannedDelivery } from '../port/deliveries.ts';
import type { DeliveryRow } from '../schema.ts';
import { chunks, type Db, instant } from './row-values.ts';

/** To the letter the predicate of the partial index `delivery_open`; any other wording reads the whole table. */
const OPEN = sql<boolean>`state in ('due', 'sending')`;

/** Past this share of the lease a worker no longer posts: its successor may be about to. */
const POST_WITHIN_LEASE_SHARE = 0.6;

/** Leases run by the database's clock, the only one that all workers share. */
const CLOCK_MS = {
  sqlite: sql<number>`cast(unixepoch('subsec') * 1000 as integer)`,
  postgres: sql<number>`cast(floor(extract(epoch from clock_timestamp()) * 1000) as bigint)`,
};

export class KeptDeliveries implements Deliveries {
  readonly #db: Db;
  readonly #engine: Engine;

  constructor(db: Db, engine: Engine) {
    this.#db = db;
    this.#engine = engine;
  }

  async plan(deliveries: readonly PlannedDelivery[]): Promise<number> {
    return this.#db.transaction().execute(async (db) => {
      let planned = 0n;
      for (const part of chunks(deliveries.toSorted(byKey))) {
        const inserted = await db
          .insertInto('delivery')
          .values(part.map(plannedRow))
          .onConflict((conflict) => conflict.doNothing())
          .executeTakeFirst();
        planned += inserted.numInsertedOrUpdatedRows ?? 0n;
      }
      return Number(planned);
    });
  }

  async claim(wish: ClaimWish): Promise<readonly Claim[]> {
    const rows = await claimStatement(this.#db, this.#engine, wish).execute();
    return rows.map(claimFrom).toSorted((a, b) => a.dueAt.getTime() - b.dueAt.getTime());
  }

  async busyWorkers(): Promise<number> {
    const { count } = await this.#db
      .selectFrom('delivery')
      .select((eb) => eb.fn.count<number>('worker').distinct().as('count'))
      .where(OPEN)
      .where('state', '=', 'sending')
      .where('lease_ms', '>', CLOCK_MS[this.#engine])
      .executeTakeFirstOrThrow();
    return Number(count);
  }

  async mayPost(claim: Claim): Promise<boolean> {
    const row = await this.#db
      .selectFrom('delivery')
      .select('state')
      .where((eb) =>
        eb.and({
          place_id: claim.placeId,
          night: claim.night,
          kind: claim.kind,
          state: 'sending' as const,
          worker: claim.worker,
          attempts: claim.attempts,
        }),
      )
      .where(
        CLOCK_MS[this.#engine],
        '<',
        sql<number>`claimed_ms + (lease_ms - claimed_ms) * ${sql.lit(POST_WITHIN_LEASE_SHARE)}`,
      )
      .executeTakeFirst();
    return row !== undefined;
  }

  async settle(claim: Claim, messageId: string): Promise<boolean> {
    return this.#release(claim, { state: 'sent', message_id: messageId });
  }

  async postpone(claim: Claim, until: Date, problem: string): Promise<boolean> {
    return this.#release(claim, { state: 'due', due_ms: until.getTime(), last_problem: problem });
  }

  async giveUp(claim: Claim, problem: string): Promise<boolean> {
    return this.#release(claim, { state: 'gave_up', last_problem: problem });
  }

  async expire(now: Date): Promise<readonly Delivery[]> {
    const rows = await this.#db
      .updateTable('delivery')
      .set((eb) => ({
        state: eb.case().when('attempts', '=', 0).then('missed').else('gave_up').end().$castTo<DeliveryState>(),
        last_problem: eb.fn.coalesce('last_problem', eb.val('too-late')),
        lease_ms: 0,
      }))
      .where(OPEN)
      .where('give_up_ms', '<=', now.getTime())
      .where('lease_ms', '<=', CLOCK_MS[this.#engine])
      .returningAll()
      .execute();
    return rows.map(deliveryFrom);
  }

  async ofNight(placeId: string, night: string): Promise<readonly Delivery[]> {
    const rows = await this.#db
      .selectFrom('delivery')
      .selectAll()
      .where('place_id', '=', placeId)
      .where('night', '=', night)
      .orderBy('due_ms')
      .orderBy('kind')
      .execute();
    return rows.map(deliveryFrom);
  }

  async forget(beforeNight: string): Promise<number> {
    const forgotten = await this.#db
      .deleteFrom('delivery')
      .where('night', '<', beforeNight)
      .where('state', 'not in', ['due', 'sending'])
      .executeTakeFirst();
    return Number(forgotten.numDeletedRows);
  }

  /** Only while the row is still held under this very claim: a worker that comes late changes nothing. */
  async #release(claim: Claim, outcome: Partial<DeliveryRow>): Promise<boolean> {
    const released = await this.#db
      .updateTable('delivery')
      .set({ ...outcome, lease_ms: 0 })
      .where('place_id', '=', claim.placeId)
      .where('night', '=', claim.night)
      .where('kind', '=', claim.kind)
      .where('state', '=', 'sending')
      .where('worker', '=', claim.worker)
      .where('attempts', '=', claim.attempts)
      .executeTakeFirst();
    return released.numUpdatedRows > 0n;
  }
}

/** One statement, so that no row is picked by two workers; on PostgreSQL a row that another is just picking is skipped. */
export function claimStatement(db: Db, engine: Engine, wish: ClaimWish) {
  const clock = CLOCK_MS[engine];
  const now = wish.now.getTime();
  return db
    .with('claimable', (cte) =>
      cte
        .selectFrom('delivery')
        .select(['place_id', 'night', 'kind'])
        .where(OPEN)
        .where('due_ms', '<=', now)
        .where('give_up_ms', '>', now)
        .where('lease_ms', '<=', clock)
        .orderBy('due_ms')
        .limit(wish.limit)
        .$if(engine === 'postgres', (query) => query.forUpdate().skipLocked()),
    )
    .updateTable('delivery')
    .set((eb) => ({
      state: 'sending' as const,
      worker: wish.worker,
      attempts: eb('attempts', '+', 1),
      first_claimed_ms: eb.fn.coalesce('first_claimed_ms', clock),
      claimed_ms: clock,
      lease_ms: sql<number>`${clock} + cast(${Math.round(wish.leaseS * 1000)} as bigint)`,
    }))
    .where(OPEN)
    .where(sql<boolean>`(place_id, night, kind) in (select place_id, night, kind from claimable)`)
    .returningAll();
}

export async function deliveriesTo(db: Db, placeIds: readonly string[]): Promise<readonly Delivery[]> {
  const rows = await db
    .selectFrom('delivery')
    .selectAll()
    .where('place_id', 'in', placeIds)
    .orderBy('night')
    .orderBy('due_ms')
    .orderBy('kind')
    .execute();
  return rows.map(deliveryFrom);
}

/** Every process inserts in the same order, so that two never wait for each other crosswise. */
function byKey(a: PlannedDelivery, b: PlannedDelivery): number {
  const [left, right] = [JSON.stringify([a.placeId, a.night, a.kind]), JSON.stringify([b.placeId, b.night, b.kind])];
  if (left === right) return 0;
  return left < right ? -1 : 1;
}

function plannedRow(planned: PlannedDelivery): DeliveryRow {
  return {
    place_id: planned.placeId,
    night: planned.night,
    kind: planned.kind,
    due_ms: planned.dueAt.getTime(),
    give_up_ms: planned.giveUpAt.getTime(),
    state: 'due',
    attempts: 0,
    worker: null,
    first_claimed_ms: null,
    claimed_ms: null,
    lease_ms: 0,
    message_id: null,
    last_problem: null,
  };
}

function plannedFrom(row: DeliveryRow): PlannedDelivery {
  return {
    placeId: row.place_id,
    night: row.night,
    kind: row.kind,
    dueAt: instant(row.due_ms),
    giveUpAt: instant(row.give_up_ms),
  };
}

function claimFrom(row: DeliveryRow): Claim {
  return {
    ...plannedFrom(row),
    worker: row.worker ?? '',
    attempts: row.attempts,
    firstClaimedAt: instant(row.first_claimed_ms ?? 0),
  };
}

function deliveryFrom(row: DeliveryRow): Delivery {
  return {
    ...plannedFrom(row),
    state: row.state,
    attempts: row.attempts,
    messageId: row.message_id ?? undefined,
    lastProblem: row.last_problem ?? undefined,
  };
}
