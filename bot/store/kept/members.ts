import type { Member, MemberChange, Members } from '../port/members.ts';
import type { MemberRow } from '../schema.ts';
import { cleared, type Db, flag, instant } from './row-values.ts';

export class KeptMembers implements Members {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async find(memberId: string): Promise<Member | undefined> {
    const row = await this.#db.selectFrom('member').selectAll().where('id', '=', memberId).executeTakeFirst();
    return row === undefined ? undefined : memberFrom(row);
  }

  async change(memberId: string, change: MemberChange, now: Date): Promise<Member> {
    return this.#db.transaction().execute(async (db) => {
      await holdMember(db, memberId, now);
      const row = await db
        .updateTable('member')
        .set((eb) => ({
          // So that a change of nothing is still a statement.
          since_ms: eb.ref('since_ms'),
          units: cleared(change, 'units', change.units),
          locale: cleared(change, 'locale', change.locale),
          direct_messages: change.directMessages === undefined ? undefined : flag(change.directMessages),
        }))
        .where('id', '=', memberId)
        .returningAll()
        .executeTakeFirstOrThrow();
      return memberFrom(row);
    });
  }
}

/** Keeps other transactions of the same member waiting until this one ends. */
export async function waitForMember(db: Db, memberId: string): Promise<void> {
  await db
    .updateTable('member')
    .set((eb) => ({ since_ms: eb.ref('since_ms') }))
    .where('id', '=', memberId)
    .execute();
}

/** The same, and makes the member known. */
export async function holdMember(db: Db, memberId: string, now: Date): Promise<void> {
  await db
    .insertInto('member')
    .values({ id: memberId, units: null, locale: null, direct_messages: 0, since_ms: now.getTime() })
    .onConflict((conflict) => conflict.column('id').doUpdateSet((eb) => ({ since_ms: eb.ref('member.since_ms') })))
    .execute();
}

export function memberFrom(row: MemberRow): Member {
  return {
    id: row.id,
    units: row.units ?? undefined,
    locale: row.locale ?? undefined,
    directMessages: row.direct_messages === 1,
    since: instant(row.since_ms),
  };
}
