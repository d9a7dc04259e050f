import type { NewChannel } from '../../../bot/store/port/channels.ts';
import type { SiteFacts } from '../../../bot/store/port/sites.ts';
import type { Store } from '../../../bot/store/store.ts';
import type { CoverKey, CropId } from '../../../rules/index.ts';

/** Gardens of our own invention. */
export const HOME: Omit<SiteFacts, 'name'> = {
  latitudeDeg: 43.11,
  longitudeDeg: -76.31,
  heightM: 148,
  exposure: 'open',
  timeZone: 'America/New_York',
  horizonDeg: [],
};

const BEDS: readonly (readonly [readonly CoverKey[], CropId])[] = [
  [['cold-frame', 'row-cover-medium'], 'spinach'],
  [['low-tunnel'], 'leaf-lettuce'],
  [['row-cover-heavy', 'hoops'], 'kale'],
  [[], 'leek'],
  [['low-tunnel'], 'tatsoi'],
  [['straw'], 'carrot'],
];

export interface Grower {
  readonly id: string;
  readonly site?: Partial<SiteFacts>;
  readonly bedCount?: number;
  readonly wantsDirect?: boolean;
  readonly locale?: string;
  readonly beds?: readonly (readonly [readonly CoverKey[], CropId])[];
}

/** A channel whose members have gardens. */
export async function addClub(
  store: Store,
  channel: Pick<NewChannel, 'id'> & Partial<NewChannel>,
  growers: readonly Grower[],
  now: Date,
): Promise<void> {
  const usual = { kind: 'channel', guildId: 'guild-1', startedBy: '100000000000000001', leadH: 3 } as const;
  await store.channels.start({ ...usual, morningPost: false, allClear: false, ...channel }, now);
  for (const grower of growers) await addGrower(store, channel.id, grower, now);
}

export async function addGrower(store: Store, channelId: string, grower: Grower, now: Date): Promise<string> {
  const { id, wantsDirect = false, locale = 'en-US' } = grower;
  const site = await store.sites.add(id, { ...HOME, name: 'Home', ...grower.site }, now);
  const beds = grower.beds ?? Array.from({ length: grower.bedCount ?? BEDS.length }, (_, i) => BEDS[i % BEDS.length]);
  for (const [index, bed] of beds.entries()) {
    if (bed === undefined) continue;
    const [covers, crop] = bed;
    const facts = { soil: 'moist', mulch: undefined, frame: undefined, hardeningNote: undefined };
    const kept = await store.beds.add(id, { siteId: site.id, name: `Bed ${index + 1}`, ...facts, covers }, now);
    await store.plantings.add(id, kept.id, { crop, stage: 'grown', since: '2026-08-01', hardened: true });
  }
  await store.members.change(id, { locale, directMessages: wantsDirect }, now);
  await store.channels.join(channelId, id, { siteId: site.id, wantsDirect }, now);
  return site.id;
}
