import { type Kysely, sql } from 'kysely';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { openSqlite } from '../../../bot/store/engine/open-sqlite.ts';
import { KeptStore } from '../../../bot/store/kept/kept-store.ts';
import { migrate } from '../../../bot/store/migrate.ts';
import type { Database } from '../../../bot/store/schema.ts';
import type { Store } from '../../../bot/store/store.ts';
import { sqliteEngine } from './engines.ts';

const engine = sqliteEngine();
let db: Kysely<Database>;
let store: Store;

beforeEach(async () => {
  await engine.start();
  const opened = await openSqlite<Database>((await engine.freshUrl()).slice('sqlite:'.length));
  await opened.makeDurable();
  await migrate(opened.db);
  db = opened.db;
  store = new KeptStore(db, 'sqlite', () => undefined, opened.disk);
});
afterEach(async () => {
  await store.close();
  await engine.stop();
});

/** SQLite says the same when a file may not grow as when the disk is full. */
async function letGrowTo(pages: number): Promise<void> {
  await sql`pragma max_page_count = ${sql.lit(pages)}`.execute(db);
}

it('says that the disk is full, keeps what was kept, and goes on when there is room', async () => {
  const forecast = (n: number) => ({
    ...{ cellId: `cell-${n}`, service: 'metno', fetchedAt: new Date(n), freshUntil: new Date(n) },
    text: 'x'.repeat(20_000),
  });
  await store.weather.keepForecast(forecast(0));
  const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(db);
  await letGrowTo((rows[0]?.page_count ?? 0) + 10);
  let kept = 1;
  let problem: unknown;
  while (problem === undefined && kept < 100) {
    problem = await store.weather.keepForecast(forecast(kept)).catch((thrown: unknown) => thrown);
    if (problem === undefined) kept += 1;
  }
  expect(problem).toMatchObject({ name: 'StoreProblem', code: 'full' });
  expect(kept).toBeGreaterThan(1);
  for (let n = 0; n < kept; n++) expect(await store.weather.forecast(`cell-${n}`)).toEqual(forecast(n));
  expect(await store.weather.forecast(`cell-${kept}`)).toBeUndefined();
  await letGrowTo(1_000_000);
  await store.weather.keepForecast(forecast(kept));
  expect(await store.weather.forecast(`cell-${kept}`)).toEqual(forecast(kept));
});

it('says so amid a transaction too, and is not ready until there is room', async () => {
  await store.ping();
  const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(db);
  await letGrowTo((rows[0]?.page_count ?? 0) + 2);
  const hours = Array.from({ length: 5000 }, (_, hour) => ({
    ...{ at: new Date(hour * 3_600_000), airC: 1, dewPointC: 0, cloudFraction: 0.5 },
    ...{ wind10MPerS: 1, globalWPerM2: 0 },
  }));
  await expect(store.weather.keepHours('cell', hours, new Date(0))).rejects.toMatchObject({ code: 'full' });
  await expect(store.ping()).rejects.toMatchObject({ code: 'full' });
  await letGrowTo(1_000_000);
  await store.ping();
  await store.weather.keepHours('cell', hours, new Date(0));
});
