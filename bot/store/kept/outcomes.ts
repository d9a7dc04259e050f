import type { Outcome, OutcomeAround, Outcomes } from '../port/readings.ts';
import type { OutcomeRow } from '../schema.ts';
import { joinedBedIds } from './gardens.ts';
import { requireOwnBeds } from './own-beds.ts';
import { chunks, type Db } from './row-values.ts';

export class KeptOutcomes implements Outcomes {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async record(memberId: string, outcome: Outcome, now: Date): Promise<void> {
    await this.#db.transaction().execute(async (db) => {
      await requireOwnBeds(db, memberId, [outcome.bedId]);
      const answer = {
        outcome: outcome.outcome,
        leaf_low_c: outcome.leafLowC,
        hardening_fraction: outcome.hardeningFraction,
        recorded_ms: now.getTime(),
      };
      await db
        .insertInto('outcome')
        .values({ member_id: memberId, bed_id: outcome.bedId, night: outcome.night, crop: outcome.crop, ...answer })
        .onConflict((conflict) => conflict.columns(['bed_id', 'night', 'crop']).doUpdateSet(answer))
        .execute();
    });
  }

  async ofMember(memberId: string, crop: string): Promise<readonly Outcome[]> {
    return outcomesOf(this.#db, memberId, crop);
  }

  async around(memberId: string, crops: readonly string[]): Promise<readonly OutcomeAround[]> {
    const clubMates = this.#db
      .selectFrom('channel_member as mine')
      .innerJoin('channel_member as other', 'other.channel_id', 'mine.channel_id')
      .select('other.member_id')
      .where('mine.member_id', '=', memberId);
    const found: OutcomeAround[] = [];
    const numbers = new Map<string, number>();
    for (const part of chunks(crops)) {
      const rows = await this.#db
        .selectFrom('outcome')
        .selectAll()
        .where((eb) => eb.or([eb('member_id', '=', memberId), eb('member_id', 'in', clubMates)]))
        .where('crop', 'in', part)
        .orderBy('night')
        .orderBy('bed_id')
        .orderBy('crop')
        .execute();
      for (const row of rows) {
        const isOwn = row.member_id === memberId;
        if (!isOwn && !numbers.has(row.member_id)) numbers.set(row.member_id, numbers.size);
        found.push({ ...outcomeFrom(row), otherIndex: numbers.get(row.member_id) });
      }
    }
    return found;
  }

  async ofChannel(channelId: string, crop: string): Promise<readonly Outcome[]> {
    const rows = await this.#db
      .selectFrom('outcome')
      .selectAll()
      .where('bed_id', 'in', joinedBedIds(this.#db, channelId))
      .where('crop', '=', crop)
      .orderBy('night')
      .orderBy('bed_id')
      .execute();
    return rows.map(outcomeFrom);
  }
}

export async function outcomesOf(db: Db, memberId: string, crop?: string): Promise<readonly Outcome[]> {
  const rows = await db
    .selectFrom('outcome')
    .selectAll()
    .where('member_id', '=', memberId)
    .$if(crop !== undefined, (query) => query.where('crop', '=', crop ?? ''))
    .orderBy('night')
    .orderBy('bed_id')
    .execute();
  return rows.map(outcomeFrom);
}

function outcomeFrom(row: OutcomeRow): Outcome {
  return {
    bedId: row.bed_id,
    night: row.night,
    crop: row.crop,
    outcome: row.outcome,
    leafLowC: row.leaf_low_c,
    hardeningFraction: row.hardening_fraction,
  };
}
