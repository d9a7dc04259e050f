import { type Kysely, sql } from 'kysely';
import { TABLE_NAMES } from '../../../../bot/store/columns-table.ts';
import { directPlace } from '../../../../bot/store/delivery-key.ts';
import type { Database } from '../../../../bot/store/schema.ts';
import type { Store } from '../../../../bot/store/store.ts';
import { bedFacts, clubChannel, homeFacts, minute, planned } from './world.ts';

/** Fills every table that can speak of a member. */
export async function liveThroughANight(store: Store, memberId: string): Promise<void> {
  await store.members.change(memberId, { units: 'us', locale: 'en-GB', directMessages: true }, minute(0));
  const site = await store.sites.add(memberId, homeFacts, minute(0));
  const bed = await store.beds.add(memberId, bedFacts(site.id, { hardeningNote: 'since October' }), minute(0));
  await store.plantings.add(memberId, bed.id, { crop: 'kale', stage: 'grown', since: '2026-09-09', hardened: true });
  await store.shed.put(memberId, { cover: 'straw', count: 4 }, minute(0));
  await store.channels.start(clubChannel(`club-of-${site.id}`, memberId), minute(0));
  await store.channels.start(
    clubChannel(`dm-with-${memberId}`, memberId, { kind: 'direct', guildId: undefined }),
    minute(0),
  );
  await store.channels.join(`club-of-${site.id}`, memberId, { siteId: site.id, wantsDirect: true }, minute(1));
  await store.channels.join(`dm-with-${memberId}`, memberId, { siteId: undefined, wantsDirect: false }, minute(1));
  const places = [`club-of-${site.id}`, `dm-with-${memberId}`, directPlace(memberId)];
  await store.deliveries.plan(places.map((place) => planned(place)));
  const measured = {
    outsideLowC: -6.125,
    underCoverLowC: -1.375,
    origin: 'form',
    doubt: 'sun',
    covers: ['mat'],
  } as const;
  await store.readings.record(memberId, [{ bedId: bed.id, night: '2026-12-01', ...measured }], minute(2));
  await store.predictions.keep([
    {
      ...{ memberId, bedId: bed.id, night: '2026-12-01', issuedAt: minute(0), service: 'nws', leadH: 14.25 },
      ...{ outsideLowC: -7.5, outsideSpreadK: 1.5, underCoverLowC: -2.625, underCoverSpreadK: 1.75 },
      book: { outsideLowC: -7, outsideSpreadK: 1.625, underCoverLowC: -2.125, underCoverSpreadK: 2 },
      ...{ leafLowC: -3.375, leafSpreadK: 2.25, verdict: 'on the edge', covers: ['quilt'] },
    },
  ]);
  const outcome = { bedId: bed.id, night: '2026-12-01', crop: 'kale', leafLowC: -3.875, hardeningFraction: 0.5625 };
  await store.outcomes.record(memberId, { ...outcome, outcome: 'leaf-burn' }, minute(3));
  await store.covered.mark(memberId, [bed.id], '2026-12-01', minute(4));
}

/** Every row of every table, as text. */
export async function wholeDatabase(db: Kysely<Database>): Promise<ReadonlyMap<string, string>> {
  const tables = new Map<string, string>();
  for (const table of TABLE_NAMES) {
    const { rows } = await sql`select * from ${sql.table(table)}`.execute(db);
    tables.set(table, JSON.stringify(rows));
  }
  return tables;
}
