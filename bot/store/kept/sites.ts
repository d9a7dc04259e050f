import type { Site, SiteFacts, Sites } from '../port/sites.ts';
import type { SiteRow } from '../schema.ts';
import { holdMember, waitForMember } from './members.ts';
import { cleared, type Db, flag, found, instant, nameKey, newId, numberList } from './row-values.ts';

export class KeptSites implements Sites {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async add(memberId: string, facts: SiteFacts, now: Date): Promise<Site> {
    return this.#db.transaction().execute(async (db) => {
      await holdMember(db, memberId, now);
      const others = await db.selectFrom('site').select('id').where('member_id', '=', memberId).limit(1).execute();
      const row = await db
        .insertInto('site')
        .values({
          id: newId(),
          member_id: memberId,
          name: facts.name,
          name_key: nameKey(facts.name),
          latitude_deg: facts.latitudeDeg,
          longitude_deg: facts.longitudeDeg,
          height_m: facts.heightM ?? null,
          exposure: facts.exposure,
          time_zone: facts.timeZone,
          horizon_deg: JSON.stringify(facts.horizonDeg),
          is_default: flag(others.length === 0),
          since_ms: now.getTime(),
        })
        .returningAll()
        .executeTakeFirstOrThrow();
      return siteFrom(row);
    });
  }

  async list(memberId: string): Promise<readonly Site[]> {
    return sitesOf(this.#db, memberId);
  }

  async find(memberId: string, siteId: string): Promise<Site | undefined> {
    const row = await this.#db
      .selectFrom('site')
      .selectAll()
      .where('member_id', '=', memberId)
      .where('id', '=', siteId)
      .executeTakeFirst();
    return row === undefined ? undefined : siteFrom(row);
  }

  async change(memberId: string, siteId: string, change: Partial<SiteFacts>): Promise<Site> {
    const row = await this.#db
      .updateTable('site')
      .set((eb) => ({
        since_ms: eb.ref('since_ms'),
        name: change.name,
        name_key: change.name === undefined ? undefined : nameKey(change.name),
        latitude_deg: change.latitudeDeg,
        longitude_deg: change.longitudeDeg,
        height_m: cleared(change, 'heightM', change.heightM),
        exposure: change.exposure,
        time_zone: change.timeZone,
        horizon_deg: change.horizonDeg === undefined ? undefined : JSON.stringify(change.horizonDeg),
      }))
      .where('member_id', '=', memberId)
      .where('id', '=', siteId)
      .returningAll()
      .executeTakeFirst();
    return siteFrom(found(row, 'site'));
  }

  async makeDefault(memberId: string, siteId: string): Promise<void> {
    await this.#db.transaction().execute(async (db) => {
      await waitForMember(db, memberId);
      await db.updateTable('site').set({ is_default: 0 }).where('member_id', '=', memberId).execute();
      const chosen = await db
        .updateTable('site')
        .set({ is_default: 1 })
        .where('member_id', '=', memberId)
        .where('id', '=', siteId)
        .returning('id')
        .executeTakeFirst();
      found(chosen, 'site');
    });
  }

  async remove(memberId: string, siteId: string): Promise<boolean> {
    return this.#db.transaction().execute(async (db) => {
      await waitForMember(db, memberId);
      await db
        .updateTable('channel_member')
        .set({ site_id: null })
        .where('member_id', '=', memberId)
        .where('site_id', '=', siteId)
        .execute();
      const removed = await db
        .deleteFrom('site')
        .where('member_id', '=', memberId)
        .where('id', '=', siteId)
        .returning('is_default')
        .executeTakeFirst();
      if (removed?.is_default === 1) await makeOldestDefault(db, memberId);
      return removed !== undefined;
    });
  }
}

export async function sitesOf(db: Db, memberId: string): Promise<readonly Site[]> {
  const rows = await db
    .selectFrom('site')
    .selectAll()
    .where('member_id', '=', memberId)
    .orderBy('is_default', 'desc')
    .orderBy('since_ms')
    .orderBy('id')
    .execute();
  return rows.map(siteFrom);
}

async function makeOldestDefault(db: Db, memberId: string): Promise<void> {
  const [oldest] = await sitesOf(db, memberId);
  if (oldest !== undefined) {
    await db.updateTable('site').set({ is_default: 1 }).where('id', '=', oldest.id).execute();
  }
}

export function siteFrom(row: SiteRow): Site {
  return {
    id: row.id,
    memberId: row.member_id,
    name: row.name,
    latitudeDeg: row.latitude_deg,
    longitudeDeg: row.longitude_deg,
    heightM: row.height_m ?? undefined,
    exposure: row.exposure,
    timeZone: row.time_zone,
    horizonDeg: numberList(row.horizon_deg),
    isDefault: row.is_default === 1,
    since: instant(row.since_ms),
  };
}
