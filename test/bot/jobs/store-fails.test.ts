import { setTimeout as pause } from 'node:timers/promises';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { Round } from '../../../bot/jobs/round.ts';
import { openSqlite } from '../../../bot/store/engine/open-sqlite.ts';
import { KeptStore } from '../../../bot/store/kept/kept-store.ts';
import { migrate } from '../../../bot/store/migrate.ts';
import { openStore } from '../../../bot/store/open-store.ts';
import type { Database } from '../../../bot/store/schema.ts';
import type { Store } from '../../../bot/store/store.ts';
import { CollectingPoster } from '../../fakes/collecting-poster.ts';
import { type PostgresServer, startPostgres } from '../../fakes/postgres-server.ts';
import { SyntheticForecasts } from '../../fakes/synthetic-forecasts.ts';
import { sqliteEngine } from '../store/engines.ts';
import { addClub } from './club.ts';
import { silentLog } from './jobs-world.ts';

const CLUB = 'club-1';
const BEFORE = new Date('2026-11-01T12:00:00Z');
const DUE = new Date('2026-12-01T16:40:00Z');
const PATIENCE_MS = 60_000;

let poster: CollectingPoster;
beforeEach(() => {
  poster = new CollectingPoster();
});

/** Keeps texts of that length until there is no room for another. */
async function fill(store: Store, size: number): Promise<void> {
  for (let n = 0; n < 10_000; n += 1) {
    const dated = { service: 'metno', fetchedAt: BEFORE, freshUntil: BEFORE, text: 'x'.repeat(size) };
    const problem = await store.weather
      .keepForecast({ cellId: `${size}-${n}`, ...dated })
      .catch((thrown: unknown) => thrown);
    if (problem !== undefined) return;
  }
  throw new Error('the disk does not get full');
}

function roundOn(store: Store, leaseS: number): Round {
  const forecasts = new SyntheticForecasts();
  forecasts.meanC = -6;
  const clock = { now: () => DUE, rehearsal: false };
  return new Round({ clock, log: silentLog, store, forecasts, poster }, { leaseS, lookBackH: 0 });
}

async function work(round: Round): Promise<void> {
  await round.tick();
  await round.drained();
}

test('on a full disk nothing is posted twice, and with room again everything has been posted and recorded', async () => {
  const engine = sqliteEngine();
  await engine.start();
  const opened = await openSqlite<Database>((await engine.freshUrl()).slice('sqlite:'.length));
  await opened.makeDurable();
  await migrate(opened.db);
  const store = new KeptStore(opened.db, 'sqlite', () => undefined);
  await addClub(store, { id: CLUB }, [{ id: '100000000000000021' }], BEFORE);
  await addClub(store, { id: 'club-2' }, [{ id: '100000000000000022' }], BEFORE);
  // SQLite says the same when a file may not grow as when the disk is full.
  const growTo = (pages: number) => sql`pragma max_page_count = ${sql.lit(pages)}`.execute(opened.db);
  const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(opened.db);
  await growTo(rows[0]?.page_count ?? 0);
  const round = roundOn(store, 0.2);
  const someTicks = async () => {
    for (let tick = 0; tick < 3; tick += 1) {
      await work(round);
      await pause(220);
    }
  };
  for (const size of [4000, 400, 40]) await fill(store, size);
  await someTicks();
  const whileFull = poster.posts.length;
  poster.forgetNonces();
  await growTo(1_000_000);
  await someTicks();
  expect(poster.posts.map(({ channelId }) => channelId).toSorted()).toEqual([CLUB, 'club-2']);
  expect(whileFull).toBeLessThanOrEqual(2);
  const states = await Promise.all([CLUB, 'club-2'].map((place) => store.deliveries.ofNight(place, '2026-12-01')));
  expect(states.flat().flatMap(({ kind, state }) => (kind === 'warning' ? [state] : []))).toEqual(['sent', 'sent']);
  await store.close();
  await engine.stop();
});

let server: PostgresServer | undefined;
let unavailable: string | undefined;
let store: Store | undefined;
beforeAll(async () => {
  const started = await startPostgres();
  if ('unavailable' in started) ({ unavailable } = started);
  else server = started;
});
afterEach(async () => {
  await store?.close();
  store = undefined;
});
afterAll(() => server?.stop());

test('while the database is away nobody is told twice, and everybody is when it is back', {
  timeout: PATIENCE_MS,
}, async (context) => {
  if (server === undefined) return context.skip(unavailable);
  const away = server;
  store = await openStore(await away.freshDatabase());
  await addClub(store, { id: CLUB }, [{ id: '100000000000000021' }], BEFORE);
  await addClub(store, { id: 'club-2' }, [{ id: '100000000000000022' }], BEFORE);
  const round = roundOn(store, 1);
  // The database goes right after the first message has arrived, before anything can be recorded of it.
  const send = poster.send.bind(poster);
  poster.send = async (...post) => {
    poster.send = send;
    const posted = await send(...post);
    await away.goAway();
    return posted;
  };
  await work(round);
  for (let tick = 0; tick < 3; tick += 1) await work(round);
  const whileAway = poster.posts.length;
  poster.forgetNonces();
  await away.comeBack();
  await pause(1100);
  for (let tick = 0; tick < 3; tick += 1) await work(round);
  expect(whileAway).toBeLessThanOrEqual(2);
  expect(poster.posts.map(({ channelId }) => channelId).toSorted()).toEqual([CLUB, 'club-2']);
  const states = await Promise.all([CLUB, 'club-2'].map((place) => store?.deliveries.ofNight(place, '2026-12-01')));
  expect(states.flat().flatMap((row) => (row?.kind === 'warning' ? [row.state] : []))).toEqual(['sent', 'sent']);
});
