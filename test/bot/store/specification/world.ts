import type { Kysely } from 'kysely';
import type { BedFacts } from '../../../../bot/store/port/beds.ts';
import type { NewChannel } from '../../../../bot/store/port/channels.ts';
import type { PlannedDelivery } from '../../../../bot/store/port/deliveries.ts';
import type { SiteFacts } from '../../../../bot/store/port/sites.ts';
import type { Database } from '../../../../bot/store/schema.ts';
import type { Store } from '../../../../bot/store/store.ts';

/** What each part of the specification runs against: a store with nothing in it. */
export interface World {
  readonly engine: 'SQLite' | 'PostgreSQL';
  readonly store: Store;
  readonly url: string;
  /** The same database without the store, to look behind it. */
  readonly db: Kysely<Database>;
}

export function openedOnly<T>(world: T | undefined): T {
  if (world === undefined) throw new Error('The database is not open; this test should have been skipped.');
  return world;
}

/** The n-th minute of an evening. */
export const minute = (n: number): Date => new Date(Date.UTC(2026, 11, 1, 15, n));

export const homeFacts: SiteFacts = {
  name: 'Home',
  latitudeDeg: 48.2083,
  longitudeDeg: 16.3725,
  heightM: 171,
  exposure: 'hollow',
  timeZone: 'Europe/Vienna',
  horizonDeg: [5, 0, 12.5, 30],
};

export function bedFacts(siteId: string, more: Partial<BedFacts> = {}): BedFacts {
  return {
    siteId,
    name: 'Frame by the wall',
    soil: 'moist-loam',
    mulch: undefined,
    frame: undefined,
    hardeningNote: undefined,
    covers: ['cold-frame', 'blanket'],
    ...more,
  };
}

/** A site and a bed of a member, as most tests need them. */
export async function withBed(store: Store, memberId: string): Promise<{ siteId: string; bedId: string }> {
  const site = await store.sites.add(memberId, homeFacts, minute(0));
  const bed = await store.beds.add(memberId, bedFacts(site.id), minute(0));
  return { siteId: site.id, bedId: bed.id };
}

export function clubChannel(id: string, startedBy: string, more: Partial<NewChannel> = {}): NewChannel {
  return {
    id,
    kind: 'channel',
    guildId: 'guild-1',
    startedBy,
    leadH: 3,
    morningPost: false,
    allClear: false,
    ...more,
  };
}

export function planned(placeId: string, more: Partial<PlannedDelivery> = {}): PlannedDelivery {
  return {
    placeId,
    night: '2026-12-01',
    kind: 'warning',
    dueAt: minute(0),
    giveUpAt: minute(59),
    ...more,
  };
}
