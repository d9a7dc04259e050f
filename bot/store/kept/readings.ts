import type { Reading, ReadingFacts, Readings } from '../port/readings.ts';
import type { ReadingRow } from '../schema.ts';
import { requireOwnBeds } from './own-beds.ts';
import { type Db, instant, newId, textList } from './row-values.ts';

export class KeptReadings implements Readings {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async record(memberId: string, readings: readonly ReadingFacts[], now: Date): Promise<void> {
    await this.#db.transaction().execute(async (db) => {
      await requireOwnBeds(
        db,
        memberId,
        readings.map((reading) => reading.bedId),
      );
      for (const reading of readings) await recordOne(db, memberId, reading, now);
    });
  }

  async ofBed(memberId: string, bedId: string, sinceNight = ''): Promise<readonly Reading[]> {
    const rows = await this.#db
      .selectFrom('reading')
      .selectAll()
      .where('member_id', '=', memberId)
      .where('bed_id', '=', bedId)
      .where('night', '>=', sinceNight)
      .orderBy('night')
      .execute();
    return rows.map(readingFrom);
  }

  async confirm(memberId: string, readingId: string): Promise<boolean> {
    const confirmed = await this.#db
      .updateTable('reading')
      .set({ doubt: null })
      .where('member_id', '=', memberId)
      .where('id', '=', readingId)
      .where('doubt', 'is not', null)
      .executeTakeFirst();
    return confirmed.numUpdatedRows > 0n;
  }

  async remove(memberId: string, readingId: string): Promise<boolean> {
    const removed = await this.#db
      .deleteFrom('reading')
      .where('member_id', '=', memberId)
      .where('id', '=', readingId)
      .executeTakeFirst();
    return removed.numDeletedRows > 0n;
  }
}

async function recordOne(db: Db, memberId: string, reading: ReadingFacts, now: Date): Promise<void> {
  await db
    .insertInto('reading')
    .values({
      id: newId(),
      member_id: memberId,
      bed_id: reading.bedId,
      night: reading.night,
      outside_low_c: reading.outsideLowC ?? null,
      under_cover_low_c: reading.underCoverLowC ?? null,
      origin: reading.origin,
      doubt: reading.doubt ?? null,
      covers: JSON.stringify(reading.covers),
      recorded_ms: now.getTime(),
    })
    .onConflict((conflict) =>
      conflict.columns(['bed_id', 'night']).doUpdateSet((eb) => ({
        outside_low_c: eb.fn.coalesce('excluded.outside_low_c', 'reading.outside_low_c'),
        under_cover_low_c: eb.fn.coalesce('excluded.under_cover_low_c', 'reading.under_cover_low_c'),
        origin: eb.ref('excluded.origin'),
        doubt: eb.ref('excluded.doubt'),
        covers: eb.ref('excluded.covers'),
        recorded_ms: eb.ref('excluded.recorded_ms'),
      })),
    )
    .execute();
}

export async function readingsOf(db: Db, memberId: string): Promise<readonly Reading[]> {
  const rows = await db
    .selectFrom('reading')
    .selectAll()
    .where('member_id', '=', memberId)
    .orderBy('night')
    .orderBy('bed_id')
    .execute();
  return rows.map(readingFrom);
}

export function readingFrom(row: ReadingRow): Reading {
  return {
    id: row.id,
    bedId: row.bed_id,
    night: row.night,
    outsideLowC: row.outside_low_c ?? undefined,
    underCoverLowC: row.under_cover_low_c ?? undefined,
    origin: row.origin,
    doubt: row.doubt ?? undefined,
    covers: textList(row.covers),
    recordedAt: instant(row.recorded_ms),
  };
}
