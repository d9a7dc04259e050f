import type {
  Channel,
  ChannelFacts,
  ChannelPlaces,
  Channels,
  JoinedGarden,
  Membership,
  MembershipFacts,
  NewChannel,
  Pause,
  SunPlace,
} from '../port/channels.ts';
import type { ChannelMemberRow, ChannelRow } from '../schema.ts';
import { listIn } from './bed-rows.ts';
import { gardensOf, joinedSites } from './gardens.ts';
import { holdMember } from './members.ts';
import { chunks, type Db, flag, found, instant } from './row-values.ts';

export class KeptChannels implements Channels {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async start(channel: NewChannel, now: Date): Promise<Channel> {
    return this.#db.transaction().execute(async (db) => {
      await holdMember(db, channel.startedBy, now);
      const settings = {
        kind: channel.kind,
        guild_id: channel.guildId ?? null,
        started_by: channel.startedBy,
        lead_h: channel.leadH,
        morning_post: flag(channel.morningPost),
        all_clear: flag(channel.allClear),
        paused_reason: null,
        paused_ms: null,
      };
      const row = await db
        .insertInto('channel')
        .values({ id: channel.id, since_ms: now.getTime(), ...settings })
        .onConflict((conflict) => conflict.column('id').doUpdateSet(settings))
        .returningAll()
        .executeTakeFirstOrThrow();
      return channelFrom(row);
    });
  }

  async find(channelId: string): Promise<Channel | undefined> {
    const row = await this.#db.selectFrom('channel').selectAll().where('id', '=', channelId).executeTakeFirst();
    return row === undefined ? undefined : channelFrom(row);
  }

  async change(channelId: string, change: Partial<ChannelFacts>): Promise<Channel> {
    const row = await this.#db
      .updateTable('channel')
      .set((eb) => ({
        since_ms: eb.ref('since_ms'),
        lead_h: change.leadH,
        morning_post: change.morningPost === undefined ? undefined : flag(change.morningPost),
        all_clear: change.allClear === undefined ? undefined : flag(change.allClear),
      }))
      .where('id', '=', channelId)
      .returningAll()
      .executeTakeFirst();
    return channelFrom(found(row, 'subscription'));
  }

  async pause(channelId: string, pause: Pause): Promise<boolean> {
    return this.#db.transaction().execute(async (db) => {
      const paused = await db
        .updateTable('channel')
        .set({ paused_reason: pause.reason, paused_ms: pause.at.getTime() })
        .where('id', '=', channelId)
        .where('paused_ms', 'is', null)
        .executeTakeFirst();
      await giveUpDue(db, channelId, pause.reason);
      return paused.numUpdatedRows > 0n;
    });
  }

  async resume(channelId: string): Promise<boolean> {
    const resumed = await this.#db
      .updateTable('channel')
      .set({ paused_reason: null, paused_ms: null })
      .where('id', '=', channelId)
      .where('paused_ms', 'is not', null)
      .executeTakeFirst();
    return resumed.numUpdatedRows > 0n;
  }

  async stop(channelId: string): Promise<boolean> {
    return this.#db.transaction().execute(async (db) => {
      await giveUpDue(db, channelId, 'stopped');
      const stopped = await db.deleteFrom('channel').where('id', '=', channelId).executeTakeFirst();
      return stopped.numDeletedRows > 0n;
    });
  }

  async join(channelId: string, memberId: string, facts: MembershipFacts, now: Date): Promise<Membership> {
    return this.#db.transaction().execute(async (db) => {
      await holdMember(db, memberId, now);
      const settings = { site_id: facts.siteId ?? null, wants_direct: flag(facts.wantsDirect) };
      const row = await db
        .insertInto('channel_member')
        .values({ channel_id: channelId, member_id: memberId, since_ms: now.getTime(), ...settings })
        .onConflict((conflict) => conflict.columns(['channel_id', 'member_id']).doUpdateSet(settings))
        .returningAll()
        .executeTakeFirstOrThrow();
      return membershipFrom(row);
    });
  }

  async leave(channelId: string, memberId: string): Promise<boolean> {
    const left = await this.#db
      .deleteFrom('channel_member')
      .where('channel_id', '=', channelId)
      .where('member_id', '=', memberId)
      .executeTakeFirst();
    return left.numDeletedRows > 0n;
  }

  async joinedBy(memberId: string): Promise<readonly Membership[]> {
    return membershipsOf(this.#db, memberId);
  }

  async running(after: string | undefined, limit: number): Promise<readonly ChannelPlaces[]> {
    const channels = await this.#db
      .selectFrom('channel')
      .selectAll()
      .where('paused_ms', 'is', null)
      .$if(after !== undefined, (query) => query.where('id', '>', after ?? ''))
      .orderBy('id')
      .limit(limit)
      .execute();
    const places = await placesByChannel(
      this.#db,
      channels.map((channel) => channel.id),
    );
    return channels.map((row) => ({ channel: channelFrom(row), places: places.get(row.id) ?? [] }));
  }

  async gardens(channelId: string): Promise<readonly JoinedGarden[]> {
    return gardensOf(this.#db, channelId);
  }
}

async function placesByChannel(db: Db, ids: readonly string[]): Promise<ReadonlyMap<string, readonly SunPlace[]>> {
  const places = new Map<string, SunPlace[]>();
  for (const part of chunks(ids)) {
    const rows = await joinedSites(db)
      .select(['channel_member.channel_id', 'channel_member.since_ms', 'latitude_deg', 'longitude_deg'])
      .select(['height_m', 'time_zone'])
      .where('channel_member.channel_id', 'in', part)
      .execute();
    for (const row of rows) {
      listIn(places, row.channel_id).push({
        latitudeDeg: row.latitude_deg,
        longitudeDeg: row.longitude_deg,
        heightM: row.height_m ?? undefined,
        timeZone: row.time_zone,
        since: instant(row.since_ms),
      });
    }
  }
  return places;
}

/** What a worker is sending right now is left to that worker. */
async function giveUpDue(db: Db, placeId: string, problem: string): Promise<void> {
  await db
    .updateTable('delivery')
    .set({ state: 'gave_up', last_problem: problem })
    .where('place_id', '=', placeId)
    .where('state', '=', 'due')
    .execute();
}

export async function membershipsOf(db: Db, memberId: string): Promise<readonly Membership[]> {
  const rows = await db
    .selectFrom('channel_member')
    .selectAll()
    .where('member_id', '=', memberId)
    .orderBy('since_ms')
    .orderBy('channel_id')
    .execute();
  return rows.map(membershipFrom);
}

export async function channelsStartedBy(db: Db, memberId: string): Promise<readonly Channel[]> {
  const rows = await db
    .selectFrom('channel')
    .selectAll()
    .where('started_by', '=', memberId)
    .orderBy('since_ms')
    .orderBy('id')
    .execute();
  return rows.map(channelFrom);
}

function membershipFrom(row: ChannelMemberRow): Membership {
  return {
    channelId: row.channel_id,
    memberId: row.member_id,
    siteId: row.site_id ?? undefined,
    wantsDirect: row.wants_direct === 1,
    since: instant(row.since_ms),
  };
}

function channelFrom(row: ChannelRow): Channel {
  const { paused_reason: reason, paused_ms: ms } = row;
  return {
    id: row.id,
    kind: row.kind,
    guildId: row.guild_id ?? undefined,
    startedBy: row.started_by ?? undefined,
    leadH: row.lead_h,
    morningPost: row.morning_post === 1,
    allClear: row.all_clear === 1,
    paused: reason === null || ms === null ? undefined : { reason, at: instant(ms) },
    since: instant(row.since_ms),
  };
}
