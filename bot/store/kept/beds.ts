import type { Bed, BedFacts, Beds, PlantingFacts } from '../port/beds.ts';
import { bedsFrom, frameRow } from './bed-rows.ts';
import { plantingRow } from './plantings.ts';
import { cleared, type Db, found, nameKey, newId } from './row-values.ts';

export class KeptBeds implements Beds {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async add(memberId: string, facts: BedFacts, now: Date, plantings: readonly PlantingFacts[] = []): Promise<Bed> {
    return this.#db.transaction().execute(async (db) => {
      const row = await db
        .insertInto('bed')
        .values({
          id: newId(),
          member_id: memberId,
          site_id: facts.siteId,
          name: facts.name,
          name_key: nameKey(facts.name),
          soil: facts.soil,
          mulch: facts.mulch ?? null,
          ...frameRow(facts.frame),
          hardening_note: facts.hardeningNote ?? null,
          covers_since_ms: now.getTime(),
          since_ms: now.getTime(),
        })
        .returningAll()
        .executeTakeFirstOrThrow();
      await layCovers(db, row.id, facts.covers);
      const rows = plantings.map((planting, position) => plantingRow(row.id, planting, position));
      if (rows.length > 0) await db.insertInto('planting').values(rows).execute();
      const [bed] = await bedsFrom(db, [row]);
      return found(bed, 'bed');
    });
  }

  async list(memberId: string, siteId?: string): Promise<readonly Bed[]> {
    return bedsOf(this.#db, memberId, siteId);
  }

  async find(memberId: string, bedId: string): Promise<Bed | undefined> {
    const rows = await this.#db
      .selectFrom('bed')
      .selectAll()
      .where('member_id', '=', memberId)
      .where('id', '=', bedId)
      .execute();
    const [bed] = await bedsFrom(this.#db, rows);
    return bed;
  }

  async change(memberId: string, bedId: string, change: Partial<BedFacts>, now: Date): Promise<Bed> {
    return this.#db.transaction().execute(async (db) => {
      const row = found(await changedRow(db, memberId, bedId, change), 'bed');
      const [bed] = await bedsFrom(db, [row]);
      const before = found(bed, 'bed');
      if (change.covers === undefined || sameList(before.covers, change.covers)) return before;
      await db.updateTable('bed').set({ covers_since_ms: now.getTime() }).where('id', '=', bedId).execute();
      await db.deleteFrom('bed_cover').where('bed_id', '=', bedId).execute();
      await layCovers(db, bedId, change.covers);
      return { ...before, covers: [...change.covers], coversSince: now };
    });
  }

  async remove(memberId: string, bedId: string): Promise<boolean> {
    const removed = await this.#db
      .deleteFrom('bed')
      .where('member_id', '=', memberId)
      .where('id', '=', bedId)
      .executeTakeFirst();
    return removed.numDeletedRows > 0n;
  }
}

export async function bedsOf(db: Db, memberId: string, siteId?: string): Promise<readonly Bed[]> {
  const rows = await db
    .selectFrom('bed')
    .selectAll()
    .where('member_id', '=', memberId)
    .$if(siteId !== undefined, (query) => query.where('site_id', '=', siteId ?? ''))
    .orderBy('since_ms')
    .orderBy('id')
    .execute();
  return bedsFrom(db, rows);
}

function changedRow(db: Db, memberId: string, bedId: string, change: Partial<BedFacts>) {
  return db
    .updateTable('bed')
    .set((eb) => ({
      since_ms: eb.ref('since_ms'),
      site_id: change.siteId,
      name: change.name,
      name_key: change.name === undefined ? undefined : nameKey(change.name),
      soil: change.soil,
      mulch: cleared(change, 'mulch', change.mulch),
      hardening_note: cleared(change, 'hardeningNote', change.hardeningNote),
      ...('frame' in change ? frameRow(change.frame) : {}),
    }))
    .where('member_id', '=', memberId)
    .where('id', '=', bedId)
    .returningAll()
    .executeTakeFirst();
}

async function layCovers(db: Db, bedId: string, covers: readonly string[]): Promise<void> {
  if (covers.length === 0) return;
  const rows = covers.map((cover, position) => ({ bed_id: bedId, position, cover }));
  await db.insertInto('bed_cover').values(rows).execute();
}

function sameList(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((item, index) => item === b[index]);
}
