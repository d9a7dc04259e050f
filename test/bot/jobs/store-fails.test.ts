import { setTimeout as pause } from 'node:timers/promises';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { rehearsalClock } from '../../../bot/ground/clock.ts';
import { Round, USUAL_ROUND } from '../../../bot/jobs/round.ts';
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
/** A second here stands for thirty: leases go by the database's own clock, so that they are as much shorter. */
const RATE = 30;
const LEASE_S = USUAL_ROUND.leaseS / RATE;
const AWAY_MS = 30_000 / RATE;
const BETWEEN_TICKS_MS = 100;
const BACK_WITHIN_MS = 20_000;
const NIGHT = '2026-12-01';
const CLUBS = [CLUB, 'club-2'];

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

function roundOn(store: Store): Round {
  const forecasts = new SyntheticForecasts();
  forecasts.meanC = -6;
  const clock = rehearsalClock(DUE, RATE);
  return new Round({ clock, log: silentLog, store, forecasts, poster }, { leaseS: LEASE_S, lookBackH: 0 });
}

async function work(round: Round): Promise<void> {
  await round.tick();
  await round.drained();
  await pause(BETWEEN_TICKS_MS);
}

async function workFor(ms: number, round: Round): Promise<void> {
  for (const until = performance.now() + ms; performance.now() < until; ) await work(round);
}

/** Goes on until every warning is settled, and then for as long as a row stays with somebody who has let go of it. */
async function workOn(round: Round, store: Store): Promise<void> {
  const until = performance.now() + BACK_WITHIN_MS;
  // A connection that broke while the database was away is noticed by whoever asks next: here, or in the round.
  const states = () => warningStates(store).catch(() => ['not known']);
  while (performance.now() < until && (await states()).some((state) => state !== 'sent')) await work(round);
  await workFor(LEASE_S * 1000, round);
}

async function warningStates(store: Store): Promise<readonly string[]> {
  const rows = await Promise.all(CLUBS.map((place) => store.deliveries.ofNight(place, NIGHT)));
  return rows.map((ofClub) => ofClub.find(({ kind }) => kind === 'warning')?.state ?? 'not planned');
}

const told = () => poster.posts.map(({ channelId }) => channelId).toSorted();

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
  const round = roundOn(store);
  for (const size of [4000, 400, 40]) await fill(store, size);
  await workFor(AWAY_MS, round);
  const whileFull = poster.posts.length;
  poster.forgetNonces();
  await growTo(1_000_000);
  await workOn(round, store);
  expect(told()).toEqual(CLUBS);
  expect(whileFull).toBeLessThanOrEqual(2);
  expect(await warningStates(store)).toEqual(['sent', 'sent']);
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

test('while the database is away for half a minute nobody is told twice, and everybody is when it is back', {
  timeout: PATIENCE_MS,
}, async (context) => {
  if (server === undefined) return context.skip(unavailable);
  const away = server;
  store = await openStore(await away.freshDatabase());
  await addClub(store, { id: CLUB }, [{ id: '100000000000000021' }], BEFORE);
  await addClub(store, { id: 'club-2' }, [{ id: '100000000000000022' }], BEFORE);
  const round = roundOn(store);
  // The database goes right after the first message has arrived, before anything can be recorded of it.
  const send = poster.send.bind(poster);
  poster.send = async (...post) => {
    poster.send = send;
    const posted = await send(...post);
    await away.goAway();
    return posted;
  };
  await work(round);
  await workFor(AWAY_MS, round);
  await expect(store.ping()).rejects.toThrow('The database server does not answer');
  const whileAway = poster.posts.length;
  poster.forgetNonces();
  await away.comeBack();
  await workOn(round, store);
  expect(whileAway).toBeLessThanOrEqual(2);
  expect(told()).toEqual(CLUBS);
  expect(await warningStates(store)).toEqual(['sent', 'sent']);
});
