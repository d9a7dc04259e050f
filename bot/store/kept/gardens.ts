import type { Bed, SpareCover } from '../port/beds.ts';
import type { Garden, JoinedGarden } from '../port/channels.ts';
import { bedsFrom, listIn } from './bed-rows.ts';
import { memberFrom } from './members.ts';
import { chunks, type Db, instant } from './row-values.ts';
import { byCover } from './shed.ts';
import { siteFrom } from './sites.ts';

/** Memberships with the site that each means: the one chosen, else the member's default. */
export function joinedSites(db: Db) {
  return db
    .selectFrom('channel_member')
    .innerJoin('site', (join) =>
      join.on((eb) =>
        eb.and([
          eb('site.member_id', '=', eb.ref('channel_member.member_id')),
          eb.or([
            eb('site.id', '=', eb.ref('channel_member.site_id')),
            eb.and([eb('channel_member.site_id', 'is', null), eb('site.is_default', '=', 1)]),
          ]),
        ]),
      ),
    );
}

/** The beds that a channel's warnings speak of. */
export function joinedBedIds(db: Db, channelId: string) {
  return joinedSites(db)
    .innerJoin('bed', 'bed.site_id', 'site.id')
    .select('bed.id')
    .where('channel_member.channel_id', '=', channelId);
}

export async function gardensOf(db: Db, channelId: string): Promise<readonly JoinedGarden[]> {
  const sites = await joinedSites(db)
    .selectAll('site')
    .select(['wants_direct', 'channel_member.since_ms as joined_ms'])
    .where('channel_member.channel_id', '=', channelId)
    .orderBy('channel_member.since_ms')
    .orderBy('channel_member.member_id')
    .execute();
  const memberIds = sites.map((site) => site.member_id);
  const members = await membersById(db, memberIds);
  const beds = await bedsBySite(
    db,
    sites.map((site) => site.id),
  );
  const spares = await sparesByMember(db, memberIds);
  return sites.flatMap((site) => {
    const member = members.get(site.member_id);
    if (member === undefined) return [];
    return {
      member,
      site: siteFrom(site),
      beds: beds.get(site.id) ?? [],
      spareCovers: (spares.get(member.id) ?? []).toSorted(byCover),
      wantsDirect: site.wants_direct === 1,
      since: instant(site.joined_ms),
    };
  });
}

async function membersById(db: Db, ids: readonly string[]) {
  const members = new Map<string, Garden['member']>();
  for (const part of chunks(ids)) {
    const rows = await db.selectFrom('member').selectAll().where('id', 'in', part).execute();
    for (const row of rows) members.set(row.id, memberFrom(row));
  }
  return members;
}

async function bedsBySite(db: Db, siteIds: readonly string[]): Promise<ReadonlyMap<string, readonly Bed[]>> {
  const beds = new Map<string, Bed[]>();
  for (const part of chunks(siteIds)) {
    const rows = await db
      .selectFrom('bed')
      .selectAll()
      .where('site_id', 'in', part)
      .orderBy('since_ms')
      .orderBy('id')
      .execute();
    for (const bed of await bedsFrom(db, rows)) listIn(beds, bed.siteId).push(bed);
  }
  return beds;
}

async function sparesByMember(db: Db, ids: readonly string[]): Promise<ReadonlyMap<string, readonly SpareCover[]>> {
  const spares = new Map<string, SpareCover[]>();
  for (const part of chunks(ids)) {
    const rows = await db.selectFrom('spare_cover').selectAll().where('member_id', 'in', part).execute();
    for (const { member_id, cover, count } of rows) listIn(spares, member_id).push({ cover, count });
  }
  return spares;
}
