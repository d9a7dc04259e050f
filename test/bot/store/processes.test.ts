import { setTimeout as pause } from 'node:timers/promises';
import { type Kysely, sql } from 'kysely';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { appliedMigrations, migrate } from '../../../bot/store/migrate.ts';
import { MIGRATIONS } from '../../../bot/store/migrations/migrations.ts';
import { openStore } from '../../../bot/store/open-store.ts';
import type { Database } from '../../../bot/store/schema.ts';
import { Child } from './child.ts';
import { SLOW_MIGRATIONS, SLOW_TABLES } from './children/slow-migrations.ts';
import { postgresEngine, sqliteEngine } from './engines.ts';
import { looking } from './looking.ts';

const CHILDREN = 'test/bot/store/children';
const PATIENCE_MS = 120_000;

/** On PostgreSQL the server commits, and a killed client cannot disturb it; fewer kills show that much. */
const KILLS_WHILE_WRITING = { SQLite: 100, PostgreSQL: 12 };
const KILLS_WHILE_MIGRATING = 8;
const LANES = 3;

describe.each([sqliteEngine(), postgresEngine()])('several processes on $name', (engine) => {
  let unavailable: string | undefined;
  let url = '';
  beforeAll(async () => {
    unavailable = await engine.start();
  });
  afterAll(() => engine.stop());
  beforeEach(async (test) => {
    if (unavailable !== undefined) test.skip(unavailable);
    url = await engine.freshUrl();
  });

  it('start together, six at once, on a database that none has seen', { timeout: PATIENCE_MS }, async () => {
    const at = String(Date.now() + 2000);
    const starters = Array.from({ length: 6 }, () => new Child(`${CHILDREN}/open-once.js`, [url, at]));
    const codes = await Promise.all(starters.map((starter) => starter.ended));
    expect(starters.map((starter) => starter.complaints).join('')).toBe('');
    expect(codes).toEqual([0, 0, 0, 0, 0, 0]);
    const applied = await looking(url, (db) => appliedMigrations(db));
    expect(applied).toEqual(Object.keys(MIGRATIONS));
  });

  it('leave an upgrade whole or undone when killed in its middle', { timeout: PATIENCE_MS }, async () => {
    await (await openStore(url)).close();
    const outcomes = new Set<string>();
    for (let kill = 0; kill < KILLS_WHILE_MIGRATING; kill++) {
      const child = new Child(`${CHILDREN}/migrate-slowly.js`, [url]);
      expect(await child.says('begins'), child.complaints).toBe(true);
      await pause(5 + kill * 13);
      await child.kill();
      outcomes.add(await looking(url, stateOfUpgrade));
      if (outcomes.has('whole')) break;
    }
    expect([...outcomes].filter((outcome) => outcome !== 'whole')).toEqual(['undone']);
    await looking(url, (db) => migrate(db, SLOW_MIGRATIONS));
    expect(await looking(url, stateOfUpgrade)).toBe('whole');
  });

  it('lose no count when three of them read and then write', { timeout: PATIENCE_MS }, async () => {
    const store = await openStore(url);
    await store.shed.put('discord:1', { cover: 'tarp', count: 1 }, new Date());
    const writers = [1, 2, 3].map(() => new Child(`${CHILDREN}/read-then-write.js`, [url, '100']));
    await Promise.all(writers.map((writer) => writer.ended));
    expect(writers.map((writer) => writer.complaints).join('')).toBe('');
    expect(await store.shed.list('discord:1')).toEqual([{ cover: 'tarp', count: 301 }]);
    await store.close();
  });

  it('keep every row that was acknowledged, through many kills', { timeout: PATIENCE_MS }, async () => {
    await (await openStore(url)).close();
    const kills = KILLS_WHILE_WRITING[engine.name];
    const acknowledged: string[] = [];
    let kill = 0;
    const lane = async (): Promise<void> => {
      while (kill < kills) {
        kill += 1;
        const child = new Child(`${CHILDREN}/add-beds.js`, [url]);
        // Every other one dies while it opens the database, the rest in the middle of their work.
        if (kill % 2 === 0) await child.saysAnything();
        await pause((kill * 37) % 150);
        await child.kill();
        expect(child.complaints).toBe('');
        acknowledged.push(...child.lines);
      }
    };
    await Promise.all(Array.from({ length: LANES }, lane));
    await looking(url, async (db) => {
      const covers = await db
        .selectFrom('bed')
        .leftJoin('bed_cover', 'bed.id', 'bed_cover.bed_id')
        .select('bed.id')
        .execute();
      const coversOfBed = new Map<string, number>();
      for (const { id } of covers) coversOfBed.set(id, (coversOfBed.get(id) ?? 0) + 1);
      expect(acknowledged.length).toBeGreaterThanOrEqual(kills / 2);
      expect(acknowledged.filter((id) => !coversOfBed.has(id))).toEqual([]);
      expect([...coversOfBed.values()].filter((count) => count !== 2)).toEqual([]);
      if (engine.name === 'SQLite') await expectSound(db);
    });
  });
});

async function stateOfUpgrade(db: Kysely<Database>): Promise<string> {
  const tables = await db.introspection.getTables();
  const made = tables.filter((table) => table.name.startsWith('slow_')).length;
  const isRecorded = (await appliedMigrations(db)).includes('9000-many-steps');
  if (made === 0 && !isRecorded) return 'undone';
  return made === SLOW_TABLES && isRecorded ? 'whole' : `half done: ${made} tables, recorded: ${isRecorded}`;
}

async function expectSound(db: Kysely<Database>): Promise<void> {
  const integrity = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db);
  expect(integrity.rows.map((row) => row.integrity_check)).toEqual(['ok']);
  expect((await sql`pragma foreign_key_check`.execute(db)).rows).toEqual([]);
}
