import type { Shed, SpareCover } from '../port/beds.ts';
import { holdMember } from './members.ts';
import type { Db } from './row-values.ts';

export class KeptShed implements Shed {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async list(memberId: string): Promise<readonly SpareCover[]> {
    return spareCoversOf(this.#db, memberId);
  }

  async put(memberId: string, spare: SpareCover, now: Date): Promise<void> {
    await this.#db.transaction().execute(async (db) => {
      await holdMember(db, memberId, now);
      const { cover, count } = spare;
      if (count === 0) {
        await db.deleteFrom('spare_cover').where('member_id', '=', memberId).where('cover', '=', cover).execute();
        return;
      }
      await db
        .insertInto('spare_cover')
        .values({ member_id: memberId, cover, count })
        .onConflict((conflict) => conflict.columns(['member_id', 'cover']).doUpdateSet({ count }))
        .execute();
    });
  }
}

export async function spareCoversOf(db: Db, memberId: string): Promise<readonly SpareCover[]> {
  const rows = await db
    .selectFrom('spare_cover')
    .select(['cover', 'count'])
    .where('member_id', '=', memberId)
    .execute();
  return rows.toSorted(byCover);
}

/** Not in SQL: the engines sort hyphens differently. */
export function byCover(a: SpareCover, b: SpareCover): number {
  return a.cover < b.cover ? -1 : 1;
}
