import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { backUp } from '../../../bot/store/backup/back-up.ts';
import { restore } from '../../../bot/store/backup/restore.ts';
import { SCHEMA_TABLE } from '../../../bot/store/migrate.ts';
import { MIGRATIONS } from '../../../bot/store/migrations/migrations.ts';
import { openStore } from '../../../bot/store/open-store.ts';
import { Child } from './child.ts';
import { postgresEngine, sqliteEngine } from './engines.ts';
import { looking } from './looking.ts';
import { liveThroughANight, wholeDatabase } from './specification/full-life.ts';
import { homeFacts, minute } from './specification/world.ts';

const ENGINES = { SQLite: sqliteEngine(), PostgreSQL: postgresEngine() };
const WAYS = [
  ['SQLite', 'SQLite'],
  ['SQLite', 'PostgreSQL'],
  ['PostgreSQL', 'SQLite'],
  ['PostgreSQL', 'PostgreSQL'],
] as const;

/** More than one page, so that copying has to go on where it stopped. */
const HOURS = 450;

let unavailable: string | undefined;
let folder = '';
let file = '';

beforeAll(async () => {
  await ENGINES.SQLite.start();
  unavailable = await ENGINES.PostgreSQL.start();
});
afterAll(async () => {
  await ENGINES.SQLite.stop();
  await ENGINES.PostgreSQL.stop();
});
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'eiderdown-backup-'));
  file = join(folder, 'backup.db');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function filled(engine: 'SQLite' | 'PostgreSQL'): Promise<string> {
  const url = await ENGINES[engine].freshUrl();
  const store = await openStore(url);
  await liveThroughANight(store, 'discord:4711');
  await liveThroughANight(store, 'discord:ünï "quoted" 👩🏽‍🌾');
  const hours = Array.from({ length: HOURS }, (_, n) => ({
    ...{ at: new Date(n * 3_600_000), airC: n / 7, dewPointC: undefined, cloudFraction: 1 / 3 },
    ...{ wind10MPerS: undefined, globalWPerM2: 0 },
  }));
  await store.weather.keepHours('metno:1', hours, minute(0));
  await store.close();
  return url;
}

describe.each(WAYS)('a backup from %s restored into %s', (from, to) => {
  beforeEach((test) => {
    if (unavailable !== undefined && (from === 'PostgreSQL' || to === 'PostgreSQL')) test.skip(unavailable);
  });

  it('holds every row of every table', async () => {
    const source = await filled(from);
    const before = await looking(source, wholeDatabase);
    await backUp(source, file);
    const target = await ENGINES[to].freshUrl();
    const rows = await restore(target, file);
    expect(await looking(target, sortedTables)).toEqual(await looking(source, sortedTables));
    expect(await looking(source, wholeDatabase)).toEqual(before);
    expect(rows).toBe([...(await looking(source, sortedTables)).values()].flat().length);
    const store = await openStore(target);
    expect(await store.exportMember('discord:4711')).toMatchObject({ sites: [homeFacts] });
    await store.close();
  });

  it('is refused where something is already kept, and changes nothing there', async () => {
    await backUp(await filled(from), file);
    const target = await ENGINES[to].freshUrl();
    const store = await openStore(target);
    await store.members.change('discord:5', {}, minute(0));
    await store.close();
    const before = await looking(target, wholeDatabase);
    await expect(restore(target, file)).rejects.toMatchObject({ code: 'not-empty' });
    expect(await looking(target, wholeDatabase)).toEqual(before);
  });

  it('comes back whole or not at all', async () => {
    await backUp(await filled(from), file);
    const spoilt = join(folder, 'spoilt.db');
    copyFileSync(file, spoilt);
    await looking(`sqlite:${spoilt}`, async (db) => {
      await sql`pragma ignore_check_constraints = on`.execute(db);
      await db.updateTable('delivery').set({ state: sql`'lost'` }).execute();
    });
    const target = await ENGINES[to].freshUrl();
    await expect(restore(target, spoilt)).rejects.toMatchObject({ code: 'bad-value' });
    expect([...(await looking(target, sortedTables)).values()].flat()).toEqual([]);
    await restore(target, file);
    expect([...(await looking(target, sortedTables)).values()].flat()).not.toEqual([]);
  });
});

describe.each(['SQLite', 'PostgreSQL'] as const)('backing up %s', (engine) => {
  beforeEach((test) => {
    if (unavailable !== undefined && engine === 'PostgreSQL') test.skip(unavailable);
  });

  it('takes one instant while the bot writes on', { timeout: 60_000 }, async () => {
    const url = await ENGINES[engine].freshUrl();
    await (await openStore(url)).close();
    const writer = new Child('test/bot/store/children/add-beds.js', [url]);
    expect(await writer.saysAnything(), writer.complaints).toBe(true);
    const linesBefore = writer.lines.length;
    await backUp(url, file);
    const seen = writer.lines.length;
    await writer.saysMoreThan(seen);
    await writer.kill();
    expect(writer.complaints).toBe('');
    const covers = await looking(`sqlite:${file}`, (db) =>
      db
        .selectFrom('bed')
        .leftJoin('bed_cover', 'bed.id', 'bed_cover.bed_id')
        .select((eb) => ['bed.id', eb.fn.count<number>('bed_cover.cover').as('covers')])
        .groupBy('bed.id')
        .execute(),
    );
    expect(covers.length).toBeGreaterThanOrEqual(linesBefore);
    expect(covers.filter((bed) => bed.covers !== 2)).toEqual([]);
  });

  it('writes one file, for the eyes of its owner only, and nothing beside it', async () => {
    await backUp(await filled(engine), file);
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(existsSync(`${file}-wal`) || existsSync(`${file}.unfinished`)).toBe(false);
  });

  it('overwrites no file', async () => {
    const url = await filled(engine);
    writeFileSync(file, 'precious');
    await expect(backUp(url, file)).rejects.toMatchObject({ code: 'file-exists' });
    expect(readFileSync(file, 'utf8')).toBe('precious');
  });

  it('finds nothing to back up in a database that is not ours, and makes none', async () => {
    const url = await ENGINES[engine].freshUrl();
    await expect(backUp(url, file)).rejects.toMatchObject({ code: 'not-found' });
    expect(existsSync(file) || existsSync(url.slice('sqlite:'.length))).toBe(false);
  });

  it('refuses what a newer program has written', async () => {
    const url = await filled(engine);
    await looking(url, (db) => sql`insert into ${sql.table(SCHEMA_TABLE)} values ('9999-new', '2031')`.execute(db));
    await expect(backUp(url, file)).rejects.toMatchObject({ code: 'newer-schema' });
    expect(existsSync(file)).toBe(false);
  });
});

describe('restoring', () => {
  it('brings an older backup up to date on a copy, and leaves the backup as it is', async () => {
    await backUp(await filled('SQLite'), file);
    const bytes = readFileSync(file);
    const newer = {
      ...MIGRATIONS,
      '0002-favourite': {
        up: (db: Parameters<(typeof MIGRATIONS)[string]['up']>[0]) =>
          db.schema
            .alterTable('site')
            .addColumn('favourite', 'integer', (c) => c.notNull().defaultTo(1))
            .execute(),
      },
    };
    const target = await ENGINES.SQLite.freshUrl();
    await restore(target, file, newer);
    const { rows } = await looking(target, (db) => sql`select distinct favourite from site`.execute(db));
    expect(rows).toEqual([{ favourite: 1 }]);
    expect(readFileSync(file).equals(bytes)).toBe(true);
    await expect(openStore(target)).rejects.toMatchObject({ code: 'newer-schema' });
  });

  it('refuses a backup of a newer program', async () => {
    await backUp(await filled('SQLite'), file);
    await looking(`sqlite:${file}`, (db) =>
      sql`insert into ${sql.table(SCHEMA_TABLE)} values ('9999-new', '2031')`.execute(db),
    );
    const restored = restore(await ENGINES.SQLite.freshUrl(), file);
    await expect(restored).rejects.toMatchObject({ code: 'newer-schema' });
    await expect(restored).rejects.toThrow(/The backup was written by a newer/);
  });

  it.each([
    ['not-found', 'no file at all', undefined],
    [
      'not-a-database',
      'a letter',
      'Dear aunt, this letter is long enough to be taken for the header of a database file, is it not?',
    ],
    ['not-a-database', 'an empty file', ''],
  ])('says %s of %s', async (code, _what, text) => {
    if (text !== undefined) writeFileSync(file, text);
    await expect(restore(await ENGINES.SQLite.freshUrl(), file)).rejects.toMatchObject({ code });
  });

  it('waits for no bot: it refuses a file on which one runs', async () => {
    await backUp(await filled('SQLite'), file);
    const target = await ENGINES.SQLite.freshUrl();
    const bot = await openStore(target, 'bot');
    await expect(restore(target, file)).rejects.toMatchObject({ code: 'already-running' });
    await bot.close();
    expect(await restore(target, file)).toBeGreaterThan(0);
  });
});

describe('the commands', () => {
  it('back up and restore in a sentence each', { timeout: 60_000 }, async () => {
    const source = await filled('SQLite');
    const backup = new Child('bot/cli/backup.js', [file], { DATABASE_URL: source });
    expect(await backup.ended, backup.complaints).toBe(0);
    expect(backup.lines).toEqual([expect.stringContaining(file)]);
    const target = await ENGINES.SQLite.freshUrl();
    const restored = new Child('bot/cli/restore.js', [file], { DATABASE_URL: target });
    expect(await restored.ended, restored.complaints).toBe(0);
    expect(restored.lines).toEqual([expect.stringMatching(/^Restored \d+ rows/)]);
    const again = new Child('bot/cli/restore.js', [file], { DATABASE_URL: target });
    expect(await again.ended).toBe(1);
    expect(again.complaints).toMatch(/^The database already holds data[^\n]*\n$/);
  });

  it.each([[[]], [['a', 'b']]])('ask for one file when given %j', { timeout: 60_000 }, async (words) => {
    const backup = new Child('bot/cli/backup.js', words, { DATABASE_URL: 'sqlite::memory:' });
    expect(await backup.ended).toBe(1);
    expect(backup.complaints).toBe('Name one file: npm run backup -- FILE\n');
  });
});

/** Rows of each table in an order that both engines agree on. */
async function sortedTables(db: Parameters<typeof wholeDatabase>[0]): Promise<ReadonlyMap<string, readonly string[]>> {
  const tables = await wholeDatabase(db);
  return new Map([...tables].map(([table, text]) => [table, (JSON.parse(text) as object[]).map(canonical).toSorted()]));
}

function canonical(row: object): string {
  return JSON.stringify(Object.entries(row).toSorted(([a], [b]) => (a < b ? -1 : 1)));
}
