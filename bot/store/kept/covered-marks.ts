import type { CoveredMarks } from '../port/readings.ts';
import { ownBeds } from './own-beds.ts';
import { chunks, type Db, instant } from './row-values.ts';

export class KeptCoveredMarks implements CoveredMarks {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async mark(memberId: string, bedIds: readonly string[], night: string, now: Date): Promise<number> {
    return this.#db.transaction().execute(async (db) => {
      const own = [...(await ownBeds(db, memberId, bedIds))].toSorted();
      for (const part of chunks(own)) {
        await db
          .insertInto('covered_mark')
          .values(part.map((bedId) => ({ member_id: memberId, bed_id: bedId, night, marked_ms: now.getTime() })))
          .onConflict((conflict) => conflict.doNothing())
          .execute();
      }
      return own.length;
    });
  }

  async marked(bedIds: readonly string[], night: string): Promise<ReadonlySet<string>> {
    const marked = new Set<string>();
    for (const part of chunks(bedIds)) {
      const rows = await this.#db
        .selectFrom('covered_mark')
        .select('bed_id')
        .where('bed_id', 'in', part)
        .where('night', '=', night)
        .execute();
      for (const row of rows) marked.add(row.bed_id);
    }
    return marked;
  }
}

export async function marksOf(db: Db, memberId: string) {
  const rows = await db
    .selectFrom('covered_mark')
    .selectAll()
    .where('member_id', '=', memberId)
    .orderBy('night')
    .orderBy('bed_id')
    .execute();
  return rows.map((row) => ({ bedId: row.bed_id, night: row.night, at: instant(row.marked_ms) }));
}
