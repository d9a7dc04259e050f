import { setTimeout as pause } from 'node:timers/promises';
import { sql } from 'kysely';
import { cellId } from '../../ground/cell-steps.ts';
import { cellPlace, directPlace } from '../delivery-key.ts';
import type { Engine } from '../engine/opened-database.ts';
import type { MemberExport } from '../store.ts';
import { bedsOf } from './beds.ts';
import { channelsStartedBy, membershipsOf } from './channels.ts';
import { marksOf } from './covered-marks.ts';
import { deliveriesTo } from './deliveries.ts';
import { KeptMembers } from './members.ts';
import { outcomesOf } from './outcomes.ts';
import { predictionsOf } from './predictions.ts';
import { readingsOf } from './readings.ts';
import { chunks, type Db } from './row-values.ts';
import { spareCoversOf } from './shed.ts';
import { sitesOf } from './sites.ts';

/** All as of one instant. */
export async function exportMember(pool: Db, memberId: string): Promise<MemberExport | undefined> {
  return pool
    .transaction()
    .setIsolationLevel('repeatable read')
    .execute(async (db) => {
      const member = await new KeptMembers(db).find(memberId);
      if (member === undefined) return undefined;
      return {
        member,
        sites: await sitesOf(db, memberId),
        beds: await bedsOf(db, memberId),
        spareCovers: await spareCoversOf(db, memberId),
        memberships: await membershipsOf(db, memberId),
        channels: await channelsStartedBy(db, memberId),
        readings: await readingsOf(db, memberId),
        predictions: await predictionsOf(db, memberId),
        outcomes: await outcomesOf(db, memberId),
        covered: await marksOf(db, memberId),
        deliveries: await deliveriesTo(db, await ownPlaces(db, memberId)),
      };
    });
}

/** Where only this member is written to. */
async function ownPlaces(db: Db, memberId: string): Promise<readonly string[]> {
  const direct = await db
    .selectFrom('channel')
    .select('id')
    .where('kind', '=', 'direct')
    .where('started_by', '=', memberId)
    .execute();
  return [directPlace(memberId), ...direct.map((channel) => channel.id)];
}

/** A club's channel outlives the member who started it; the member's own direct messages do not. */
export async function eraseMember(pool: Db, engine: Engine, memberId: string): Promise<boolean> {
  const erased = await pool.transaction().execute(async (db) => {
    const places = await ownPlaces(db, memberId);
    const cells = await cellsOfNobodyElse(db, memberId);
    await db.deleteFrom('delivery').where('place_id', 'in', places).execute();
    await db.deleteFrom('channel').where('id', 'in', places).execute();
    await db.deleteFrom('channel_member').where('member_id', '=', memberId).execute();
    for (const part of chunks(cells)) {
      await db.deleteFrom('delivery').where('place_id', 'in', part.map(cellPlace)).execute();
      await db.deleteFrom('cell_hour').where('cell_id', 'in', part).execute();
      await db.deleteFrom('cell_forecast').where('cell_id', 'in', part).execute();
    }
    const member = await db.deleteFrom('member').where('id', '=', memberId).executeTakeFirst();
    return member.numDeletedRows > 0n;
  });
  if (engine === 'sqlite' && !(await isLogEmptied(pool))) void emptyLogLater(pool);
  return erased;
}

const EMPTY_LOG_AGAIN_MS = 5000;
const EMPTY_LOG_TIMES = 720;

/**
 * Deleted rows are overwritten in SQLite's file (secure_delete); its log still has them until it is emptied, which waits for
 * whoever reads the file just now. Tried for an hour; every later write of the bot may empty it too.
 */
async function emptyLogLater(pool: Db): Promise<void> {
  for (let times = 0; times < EMPTY_LOG_TIMES; times += 1) {
    await pause(EMPTY_LOG_AGAIN_MS, undefined, { ref: false });
    // The store was closed: then SQLite empties the log itself.
    if (await isLogEmptied(pool).catch(() => true)) return;
  }
}

async function isLogEmptied(pool: Db): Promise<boolean> {
  const { rows } = await sql<{ busy: number }>`pragma wal_checkpoint(truncate)`.execute(pool);
  return rows[0]?.busy === 0;
}

/** Cells of the member's sites in which nobody else gardens: they would tell where somebody was. */
async function cellsOfNobodyElse(db: Db, memberId: string): Promise<readonly string[]> {
  const sites = await db
    .selectFrom('site')
    .select(['member_id', 'latitude_deg', 'longitude_deg', 'height_m'])
    .execute();
  const own = new Set<string>();
  const others = new Set<string>();
  for (const { member_id, latitude_deg: latitudeDeg, longitude_deg: longitudeDeg, height_m: heightM } of sites) {
    const id = cellId({ latitudeDeg, longitudeDeg, ...(heightM !== null && { elevationM: heightM }) });
    (member_id === memberId ? own : others).add(id);
  }
  return [...own].filter((id) => !others.has(id));
}
