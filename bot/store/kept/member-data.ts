import { sql } from 'kysely';
import { directPlace } from '../delivery-key.ts';
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
import type { Db } from './row-values.ts';
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
    await db.deleteFrom('delivery').where('place_id', 'in', places).execute();
    await db.deleteFrom('channel').where('id', 'in', places).execute();
    await db.deleteFrom('channel_member').where('member_id', '=', memberId).execute();
    const member = await db.deleteFrom('member').where('id', '=', memberId).executeTakeFirst();
    return member.numDeletedRows > 0n;
  });
  // Deleted rows are overwritten in SQLite's file (secure_delete); its log still has them until it is emptied.
  if (engine === 'sqlite') await sql`pragma wal_checkpoint(truncate)`.execute(pool);
  return erased;
}
