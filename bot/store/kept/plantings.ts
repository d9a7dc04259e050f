import type { Hardening, Planting, PlantingFacts, Plantings } from '../port/beds.ts';
import type { PlantingRow } from '../schema.ts';
import { plantingFrom } from './bed-rows.ts';
import { cleared, type Db, flag, found, newId } from './row-values.ts';

export class KeptPlantings implements Plantings {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async add(memberId: string, bedId: string, facts: PlantingFacts): Promise<Planting> {
    return this.#db.transaction().execute(async (db) => {
      // Also keeps two plantings from taking the same position.
      const bed = await db
        .updateTable('bed')
        .set((eb) => ({ since_ms: eb.ref('since_ms') }))
        .where('member_id', '=', memberId)
        .where('id', '=', bedId)
        .returning('id')
        .executeTakeFirst();
      found(bed, 'bed');
      const last = await db
        .selectFrom('planting')
        .select((eb) => eb.fn.max('position').as('position'))
        .where('bed_id', '=', bedId)
        .executeTakeFirst();
      const row = await db
        .insertInto('planting')
        .values(plantingRow(bedId, facts, (last?.position ?? -1) + 1))
        .returningAll()
        .executeTakeFirstOrThrow();
      return plantingFrom(row);
    });
  }

  async change(memberId: string, plantingId: string, change: Partial<PlantingFacts>): Promise<Planting> {
    const row = await this.#db
      .updateTable('planting')
      .set((eb) => ({
        position: eb.ref('position'),
        crop: change.crop,
        stage: change.stage,
        since: change.since,
        hardened: 'hardened' in change ? hardenedRow(change.hardened) : undefined,
        sown: cleared(change, 'sown', change.sown),
        set_out: cleared(change, 'setOut', change.setOut),
      }))
      .where('id', '=', plantingId)
      .where('bed_id', 'in', ownBeds(this.#db, memberId))
      .returningAll()
      .executeTakeFirst();
    return plantingFrom(found(row, 'planting'));
  }

  async remove(memberId: string, plantingId: string): Promise<boolean> {
    const removed = await this.#db
      .deleteFrom('planting')
      .where('id', '=', plantingId)
      .where('bed_id', 'in', ownBeds(this.#db, memberId))
      .executeTakeFirst();
    return removed.numDeletedRows > 0n;
  }

  async keepHardening(followed: ReadonlyMap<string, Hardening>): Promise<void> {
    await this.#db.transaction().execute(async (db) => {
      // Always in the same order, so that two runs never wait for each other crosswise.
      for (const [plantingId, { fraction, at }] of [...followed].sort(([a], [b]) => (a < b ? -1 : 1))) {
        await db
          .updateTable('planting')
          .set({ hardening_fraction: fraction, hardening_ms: at.getTime() })
          .where('id', '=', plantingId)
          .execute();
      }
    });
  }
}

const ownBeds = (db: Db, memberId: string) => db.selectFrom('bed').select('id').where('member_id', '=', memberId);

export function plantingRow(bedId: string, facts: PlantingFacts, position: number): PlantingRow {
  return {
    id: newId(),
    bed_id: bedId,
    crop: facts.crop,
    stage: facts.stage,
    since: facts.since,
    hardened: hardenedRow(facts.hardened),
    hardening_fraction: null,
    hardening_ms: null,
    position,
    sown: facts.sown ?? null,
    set_out: facts.setOut ?? null,
  };
}

function hardenedRow(hardened: boolean | undefined): 0 | 1 | null {
  return hardened === undefined ? null : flag(hardened);
}
