import { openStore } from '../../bot/store/open-store.ts';
import type { PlannedDelivery } from '../../bot/store/port/deliveries.ts';
import type { Store } from '../../bot/store/store.ts';
import { postgresEngine, sqliteEngine, type TestEngine } from '../bot/store/engines.ts';
import { bedFacts, clubChannel, homeFacts, minute } from '../bot/store/specification/world.ts';
import type { Row } from './row.ts';

const MEMBERS = 40;
const BEDS_EACH = 6;
const CHANNELS = 2000;
const FINISHED_NIGHTS = 50;
const CLAIMED_AT_ONCE = 20;
const HOURS = 240;
const LOOKS = 20;

/** Times what a night asks of the store, on both engines, each commit flushed to the disk on SQLite. */
export async function benchStore(): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const engine of [sqliteEngine(), postgresEngine()]) rows.push(...(await engineRows(engine)));
  return rows;
}

async function engineRows(engine: TestEngine): Promise<readonly Row[]> {
  const unavailable = await engine.start();
  if (unavailable !== undefined) return [{ name: `${engine.name}: ${unavailable}`, value: 0, unit: '' }];
  try {
    const url = await engine.freshUrl();
    const first = await timed(async () => (await openStore(url)).close());
    const again = await timed(async () => (await openStore(url)).close());
    const store = await openStore(url);
    const rows = [
      { name: 'open and build the schema', value: first, unit: 'ms' },
      { name: 'open again', value: again, unit: 'ms' },
      ...(await gardenRows(store)),
      ...(await weatherRows(store)),
      ...(await ledgerRows(store)),
      { name: 'memory of the process', value: process.memoryUsage.rss() / 1e6, unit: 'MB' },
    ];
    await store.close();
    return rows.map((row) => ({ ...row, name: `${engine.name}: ${row.name}` }));
  } finally {
    await engine.stop();
  }
}

async function gardenRows(store: Store): Promise<readonly Row[]> {
  await store.channels.start(clubChannel('club', 'bench:0'), minute(0));
  const adding = await timed(async () => {
    for (let member = 0; member < MEMBERS; member++) await addGarden(store, `bench:${member}`);
  });
  await store.channels.gardens('club');
  const gathering = await timed(async () => {
    for (let look = 0; look < LOOKS; look++) await store.channels.gardens('club');
  });
  const exporting = await timed(() => store.exportMember('bench:1'));
  const erasing = await timed(() => store.eraseMember('bench:1'));
  return [
    { name: 'add a bed with two covers and a planting', value: adding / (MEMBERS * BEDS_EACH), unit: 'ms' },
    { name: `gather ${MEMBERS} members with ${BEDS_EACH} beds each`, value: gathering / LOOKS, unit: 'ms' },
    { name: 'export a member', value: exporting, unit: 'ms' },
    { name: 'erase a member', value: erasing, unit: 'ms' },
  ];
}

async function addGarden(store: Store, memberId: string): Promise<void> {
  const site = await store.sites.add(memberId, homeFacts, minute(0));
  for (let n = 0; n < BEDS_EACH; n++) {
    const bed = await store.beds.add(memberId, bedFacts(site.id, { name: `Bed ${n}` }), minute(n));
    const planting = { crop: 'kale', stage: 'growing', since: '2026-10-01', hardened: true } as const;
    await store.plantings.add(memberId, bed.id, planting);
  }
  await store.channels.join('club', memberId, { siteId: undefined, wantsDirect: false }, minute(0));
}

async function weatherRows(store: Store): Promise<readonly Row[]> {
  const hours = Array.from({ length: HOURS }, (_, n) => ({
    ...{ at: new Date(n * 3_600_000), airC: n / 7, dewPointC: -1.5, cloudFraction: 0.25 },
    ...{ wind10MPerS: 2.5, globalWPerM2: undefined },
  }));
  const first = await timed(() => store.weather.keepHours('cell', hours, minute(0)));
  const again = await timed(() => store.weather.keepHours('cell', hours, minute(1)));
  const reading = await timed(() => store.weather.hours('cell', new Date(0), minute(0)));
  return [
    { name: `keep ${HOURS} hours of a cell`, value: first, unit: 'ms' },
    { name: 'replace them by a newer fetch', value: again, unit: 'ms' },
    { name: 'read them', value: reading, unit: 'ms' },
  ];
}

async function ledgerRows(store: Store): Promise<readonly Row[]> {
  for (let night = 0; night < FINISHED_NIGHTS; night++) {
    await store.deliveries.plan(nightOf(night));
    await store.deliveries.expire(minute(60));
  }
  const tonight = nightOf(FINISHED_NIGHTS);
  const planning = await timed(() => store.deliveries.plan(tonight));
  const repeating = await timed(() => store.deliveries.plan(tonight));
  const delivering = await timed(() => deliverAll(store));
  return [
    { name: `plan ${CHANNELS} deliveries`, value: planning, unit: 'ms' },
    { name: 'plan them again', value: repeating, unit: 'ms' },
    {
      name: `claim, check and settle, ${FINISHED_NIGHTS} nights behind`,
      value: (CHANNELS / delivering) * 1000,
      unit: 'per s',
    },
  ];
}

async function deliverAll(store: Store): Promise<void> {
  for (;;) {
    const wish = { worker: 'bench', now: minute(1), limit: CLAIMED_AT_ONCE, leaseS: 60 };
    const claims = await store.deliveries.claim(wish);
    if (claims.length === 0) return;
    for (const claim of claims) {
      if (await store.deliveries.mayPost(claim)) await store.deliveries.settle(claim, 'message');
    }
  }
}

function nightOf(night: number): readonly PlannedDelivery[] {
  const date = new Date(Date.UTC(2026, 0, 1 + night)).toISOString().slice(0, 10);
  return Array.from({ length: CHANNELS }, (_, n) => ({
    ...{ placeId: `channel-${n}`, night: date, kind: 'warning', dueAt: minute(0), giveUpAt: minute(59) },
  }));
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await work();
  return performance.now() - begun;
}
