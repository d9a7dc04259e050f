import type { ExpressionBuilder } from 'kysely';
import type { Prediction, Predictions, ScoredNight, ScoreScope } from '../port/readings.ts';
import type { Database, PredictionRow } from '../schema.ts';
import { StoreProblem } from '../store-problem.ts';
import { joinedBedIds } from './gardens.ts';
import { readingFrom } from './readings.ts';
import { chunks, type Db, instant, textList } from './row-values.ts';

export class KeptPredictions implements Predictions {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async keep(predictions: readonly Prediction[]): Promise<void> {
    try {
      await keepAll(this.#db, predictions);
    } catch (problem) {
      // A bed went between the look and the insert; the second look misses it.
      if (!(problem instanceof StoreProblem) || problem.code !== 'not-found') throw problem;
      await keepAll(this.#db, predictions);
    }
  }

  async latest(bedIds: readonly string[], night: string): Promise<ReadonlyMap<string, Prediction>> {
    const latest = new Map<string, Prediction>();
    for (const part of chunks(bedIds)) {
      const rows = await this.#db
        .selectFrom('prediction')
        .selectAll()
        .where('bed_id', 'in', part)
        .where('night', '=', night)
        .orderBy('issued_ms')
        .execute();
      for (const row of rows) latest.set(row.bed_id, predictionFrom(row));
    }
    return latest;
  }

  async forget(beforeNight: string): Promise<number> {
    const gone = await this.#db.deleteFrom('prediction').where('night', '<', beforeNight).executeTakeFirst();
    return Number(gone.numDeletedRows);
  }

  async scored(scope: ScoreScope, sinceNight: string): Promise<readonly ScoredNight[]> {
    const rows = await this.#db
      .selectFrom('prediction')
      .innerJoin('reading', (join) =>
        join.onRef('reading.bed_id', '=', 'prediction.bed_id').onRef('reading.night', '=', 'prediction.night'),
      )
      .where((eb) => inScope(this.#db, eb, scope))
      .selectAll('prediction')
      .select([
        'reading.id as reading_id',
        'reading.outside_low_c as read_outside_low_c',
        'reading.under_cover_low_c as read_under_cover_low_c',
        'reading.origin',
        'reading.covers as read_covers',
        'reading.recorded_ms',
      ])
      .where('reading.doubt', 'is', null)
      .where('prediction.night', '>=', sinceNight)
      .orderBy('prediction.night')
      .orderBy('prediction.issued_ms')
      .orderBy('prediction.bed_id')
      .execute();
    return rows.map((row) => ({
      prediction: predictionFrom(row),
      reading: readingFrom({
        ...row,
        id: row.reading_id,
        outside_low_c: row.read_outside_low_c,
        under_cover_low_c: row.read_under_cover_low_c,
        covers: row.read_covers,
        doubt: null,
      }),
    }));
  }
}

async function keepAll(pool: Db, predictions: readonly Prediction[]): Promise<void> {
  await pool.transaction().execute(async (db) => {
    for (const part of chunks(predictions)) {
      const owners = await ownersOf(
        db,
        part.map((prediction) => prediction.bedId),
      );
      const kept = part.filter((prediction) => owners.get(prediction.bedId) === prediction.memberId);
      if (kept.length === 0) continue;
      await db
        .insertInto('prediction')
        .values(kept.map(rowOf))
        .onConflict((conflict) => conflict.doNothing())
        .execute();
    }
  });
}

async function ownersOf(db: Db, bedIds: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const rows = await db.selectFrom('bed').select(['id', 'member_id']).where('id', 'in', bedIds).execute();
  return new Map(rows.map((row) => [row.id, row.member_id]));
}

/** Beds are sought among the readings, which are few beside the predictions. */
function inScope(db: Db, eb: ExpressionBuilder<Database, 'prediction' | 'reading'>, scope: ScoreScope) {
  switch (scope.kind) {
    case 'beds':
      return eb.and([
        eb('prediction.member_id', '=', scope.memberId),
        scope.bedIds.length === 0 ? eb.lit(false) : eb('reading.bed_id', 'in', scope.bedIds),
      ]);
    case 'channel':
      return eb('prediction.bed_id', 'in', joinedBedIds(db, scope.channelId));
    case 'all':
      return eb.lit(true);
  }
}

export async function predictionsOf(db: Db, memberId: string): Promise<readonly Prediction[]> {
  const rows = await db
    .selectFrom('prediction')
    .selectAll()
    .where('member_id', '=', memberId)
    .orderBy('night')
    .orderBy('issued_ms')
    .orderBy('bed_id')
    .execute();
  return rows.map(predictionFrom);
}

function rowOf(prediction: Prediction): PredictionRow {
  return {
    member_id: prediction.memberId,
    bed_id: prediction.bedId,
    night: prediction.night,
    issued_ms: prediction.issuedAt.getTime(),
    service: prediction.service,
    lead_h: prediction.leadH,
    outside_low_c: prediction.outsideLowC,
    outside_spread_k: prediction.outsideSpreadK,
    under_cover_low_c: prediction.underCoverLowC,
    under_cover_spread_k: prediction.underCoverSpreadK,
    book_outside_low_c: prediction.book.outsideLowC,
    book_outside_spread_k: prediction.book.outsideSpreadK,
    book_under_cover_low_c: prediction.book.underCoverLowC,
    book_under_cover_spread_k: prediction.book.underCoverSpreadK,
    leaf_low_c: prediction.leafLowC,
    leaf_spread_k: prediction.leafSpreadK,
    verdict: prediction.verdict,
    covers: JSON.stringify(prediction.covers),
    step: prediction.step ?? null,
  };
}

function predictionFrom(row: PredictionRow): Prediction {
  return {
    memberId: row.member_id,
    bedId: row.bed_id,
    night: row.night,
    issuedAt: instant(row.issued_ms),
    service: row.service,
    leadH: row.lead_h,
    outsideLowC: row.outside_low_c,
    outsideSpreadK: row.outside_spread_k,
    underCoverLowC: row.under_cover_low_c,
    underCoverSpreadK: row.under_cover_spread_k,
    book: {
      outsideLowC: row.book_outside_low_c,
      outsideSpreadK: row.book_outside_spread_k,
      underCoverLowC: row.book_under_cover_low_c,
      underCoverSpreadK: row.book_under_cover_spread_k,
    },
    leafLowC: row.leaf_low_c,
    leafSpreadK: row.leaf_spread_k,
    verdict: row.verdict,
    covers: textList(row.covers),
    ...(row.step !== null && { step: row.step }),
  };
}
