import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { cellId } from '../../../../bot/ground/cell-steps.ts';
import { cellPlace } from '../../../../bot/store/delivery-key.ts';
import type { MemberExport } from '../../../../bot/store/store.ts';
import { liveThroughANight, wholeDatabase } from './full-life.ts';
import type { World } from './world.ts';

const NIGHT = '2026-12-01';

export function privacySpecification(world: World): void {
  it('leaves no trace of an erased member in any table, and nothing of others changes', async () => {
    const { store } = world;
    await liveThroughANight(store, 'discord:4711');
    await liveThroughANight(store, 'discord:2');
    const untouched = await store.exportMember('discord:2');
    const before = await wholeDatabase(world.db);
    const speaking = [...before].filter(([, text]) => text.includes('4711')).map(([table]) => table);
    expect(speaking.toSorted()).toEqual(
      [
        ...['bed', 'channel', 'channel_member', 'covered_mark', 'delivery', 'member'],
        ...['outcome', 'prediction', 'reading', 'site', 'spare_cover'],
      ].toSorted(),
    );
    expect(await store.eraseMember('discord:4711')).toBe(true);
    const after = await wholeDatabase(world.db);
    expect([...after].filter(([, text]) => text.includes('4711'))).toEqual([]);
    expect(await store.exportMember('discord:2')).toEqual(untouched);
    expect(await store.exportMember('discord:4711')).toBeUndefined();
    expect(await store.eraseMember('discord:4711')).toBe(false);
  });

  it('erases the weather and the fetches of a cell in which nobody else gardens, and of no other', async () => {
    const { store } = world;
    await liveThroughANight(store, 'discord:4711');
    const [own] = await store.sites.list('discord:4711');
    if (own === undefined) throw new Error('no site is kept');
    const { latitudeDeg, longitudeDeg, heightM } = own;
    const alone = cellId({ latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) });
    const at = new Date(0);
    const kept = async () => {
      const rows = await store.deliveries.ofNight(cellPlace(alone), NIGHT);
      return [(await store.weather.forecast(alone)) !== undefined, rows.length];
    };
    const fetched = async () => {
      await store.weather.keepForecast({ cellId: alone, service: 'metno', fetchedAt: at, freshUntil: at, text: '{}' });
      const row = { placeId: cellPlace(alone), night: NIGHT, kind: 'forecast-x', dueAt: at, giveUpAt: new Date(1) };
      await store.deliveries.plan([row]);
    };
    await fetched();
    await liveThroughANight(store, 'discord:2');
    await store.eraseMember('discord:4711');
    expect(await kept()).toEqual([true, 1]);
    await store.eraseMember('discord:2');
    expect(await kept()).toEqual([false, 0]);
  });

  it('takes beds, covers and plantings along with their erased owner', async () => {
    const { store, db } = world;
    await liveThroughANight(store, 'discord:4711');
    await store.eraseMember('discord:4711');
    for (const table of ['bed_cover', 'planting', 'bed', 'site', 'spare_cover'] as const) {
      expect(await db.selectFrom(table).selectAll().execute()).toEqual([]);
    }
  });

  it("keeps a club's subscription and ledger when the member who started it is erased", async () => {
    const { store } = world;
    await liveThroughANight(store, 'discord:4711');
    const [club] = (await store.channels.running(undefined, 9)).filter(({ channel }) => channel.kind === 'channel');
    await store.eraseMember('discord:4711');
    const id = club?.channel.id ?? '';
    expect(await store.channels.find(id)).toEqual({ ...club?.channel, startedBy: undefined });
    expect(await store.deliveries.ofNight(id, NIGHT)).toHaveLength(1);
    expect(await store.channels.find('dm-with-discord:4711')).toBeUndefined();
  });

  // PostgreSQL overwrites it at its next vacuum.
  if (world.engine === 'SQLite') {
    it('overwrites what an erased member left in the file itself', async () => {
      const { store } = world;
      await liveThroughANight(store, 'discord:4711');
      const file = world.url.slice('sqlite:'.length);
      const bytes = (): string => [file, `${file}-wal`].map((name) => readFileSync(name, 'latin1')).join('');
      expect(bytes()).toContain('discord:4711');
      await store.eraseMember('discord:4711');
      expect(bytes()).not.toContain('discord:4711');
    });
  }

  it('exports all that is kept of a member', async () => {
    const { store } = world;
    await liveThroughANight(store, 'discord:4711');
    await liveThroughANight(store, 'discord:2');
    const text = JSON.stringify(await store.exportMember('discord:4711'));
    const missing = (await keptValues(world, 'discord:4711')).filter((value) => !text.includes(value));
    expect(missing).toEqual([]);
    expect(text).not.toContain('discord:2"');
  });

  it('exports each kind of thing under a name that says what it is', async () => {
    await liveThroughANight(world.store, 'discord:4711');
    const exported = await world.store.exportMember('discord:4711');
    const sizes = Object.entries(exported ?? {}).map(([name, value]) => [
      name,
      Array.isArray(value) ? value.length : 1,
    ]);
    const expected: Record<keyof MemberExport, number> = {
      ...{ member: 1, sites: 1, beds: 1, spareCovers: 1, memberships: 2, channels: 2 },
      ...{ readings: 1, predictions: 1, outcomes: 1, covered: 1, deliveries: 2 },
    };
    expect(Object.fromEntries(sizes)).toEqual(expected);
  });
}

/** Kept only so that the database can look things up or keep an order; says nothing about the member. */
const INNER_COLUMNS = new Set([
  'name_key',
  'is_default',
  'position',
  'worker',
  'claimed_ms',
  'first_claimed_ms',
  'lease_ms',
]);
/** Flags and instants read differently in an export; what they say is compared elsewhere. */
const REPHRASED = /_ms$|^(direct_messages|hardened|wants_direct|morning_post|all_clear)$/;

/** Every telling value of every row that belongs to the member, by whatever way it belongs. */
async function keptValues(world: World, memberId: string): Promise<string[]> {
  const { db } = world;
  const own = (
    table: 'site' | 'bed' | 'spare_cover' | 'channel_member' | 'reading' | 'prediction' | 'outcome' | 'covered_mark',
  ) => db.selectFrom(table).selectAll().where('member_id', '=', memberId).execute();
  const beds = db.selectFrom('bed').select('id').where('member_id', '=', memberId);
  const rows: object[] = [
    ...(await db.selectFrom('member').selectAll().where('id', '=', memberId).execute()),
    ...(await own('site')),
    ...(await own('bed')),
    ...(await own('spare_cover')),
    ...(await own('channel_member')),
    ...(await own('reading')),
    ...(await own('prediction')),
    ...(await own('outcome')),
    ...(await own('covered_mark')),
    ...(await db.selectFrom('bed_cover').selectAll().where('bed_id', 'in', beds).execute()),
    ...(await db.selectFrom('planting').selectAll().where('bed_id', 'in', beds).execute()),
    ...(await db.selectFrom('channel').selectAll().where('started_by', '=', memberId).execute()),
    ...(await db.selectFrom('delivery').selectAll().where('place_id', 'like', `%${memberId}`).execute()),
  ];
  expect(rows).toHaveLength(17);
  return rows.flatMap((row) =>
    Object.entries(row)
      .filter(([column, value]) => value !== null && !INNER_COLUMNS.has(column) && !REPHRASED.test(column))
      .map(([, value]) => (typeof value === 'string' && value.startsWith('[') ? value : JSON.stringify(value))),
  );
}
