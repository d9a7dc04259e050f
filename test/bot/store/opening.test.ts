import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { databaseAddress } from '../../../bot/store/database-address.ts';
import { SCHEMA_TABLE } from '../../../bot/store/migrate.ts';
import { openStore } from '../../../bot/store/open-store.ts';
import { type PostgresServer, startPostgres } from '../../fakes/postgres-server.ts';
import { Child } from './child.ts';
import { looking } from './looking.ts';

const FROM_THE_FUTURE = '9999-from-the-future';

async function markAsNewer(url: string): Promise<void> {
  const values = sql`('${sql.raw(FROM_THE_FUTURE)}', '2031-01-01T00:00:00.000Z')`;
  await looking(url, (db) =>
    sql`insert into ${sql.table(SCHEMA_TABLE)} (name, timestamp) values ${values}`.execute(db),
  );
}

describe('opening an SQLite file', () => {
  let folder = '';
  let file = '';
  let url = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'eiderdown-opening-'));
    file = join(folder, 'eiderdown.db');
    url = `sqlite:${file}`;
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('makes it for the eyes of its owner only, log and all', async () => {
    const store = await openStore(url);
    await store.members.change('discord:1', {}, new Date(0));
    const modes = readdirSync(folder).map((name) => (statSync(join(folder, name)).mode & 0o077).toString(8));
    expect(modes).toEqual(['0', '0', '0']);
    await store.close();
  });

  it('sets a log, full flushes, foreign keys and the overwriting of deleted rows', async () => {
    await looking(url, async (db) => {
      const setting = async (name: string): Promise<unknown> => {
        const { rows } = await sql<Record<string, unknown>>`pragma ${sql.raw(name)}`.execute(db);
        return Object.values(rows[0] ?? {})[0];
      };
      expect(await setting('journal_mode')).toBe('wal');
      expect(await setting('synchronous')).toBe(2);
      expect(await setting('foreign_keys')).toBe(1);
      expect(await setting('trusted_schema')).toBe(0);
      expect(await setting('secure_delete')).toBe(1);
      expect(await setting('busy_timeout')).toBe(5000);
    });
  });

  it('refuses one that a newer program has written, and changes not a byte of it', async () => {
    await (await openStore(url)).close();
    await markAsNewer(url);
    const before = hash(file);
    for (const as of ['visitor', 'bot', 'bot'] as const) {
      const opened = openStore(url, as);
      await expect(opened).rejects.toMatchObject({ code: 'newer-schema' });
      await expect(opened).rejects.toThrow(FROM_THE_FUTURE);
    }
    expect(hash(file)).toBe(before);
  });

  it('lets one bot run at a time, and others look in meanwhile', async () => {
    const bot = await openStore(url, 'bot');
    await expect(openStore(url, 'bot')).rejects.toMatchObject({ code: 'already-running' });
    const visitor = await openStore(url);
    await visitor.members.change('discord:1', { units: 'us' }, new Date(0));
    expect(await bot.members.find('discord:1')).toMatchObject({ units: 'us' });
    await visitor.close();
    await bot.close();
    await (await openStore(url, 'bot')).close();
  });

  it('lets a bot start right after the one before it was killed', { timeout: 60_000 }, async () => {
    const child = new Child('test/bot/store/children/run-as-bot.js', [url]);
    expect(await child.says('runs'), child.complaints).toBe(true);
    await expect(openStore(url, 'bot')).rejects.toMatchObject({ code: 'already-running' });
    await child.kill();
    await (await openStore(url, 'bot')).close();
  });

  it.each(['visitor', 'bot'] as const)('says of a file that is no database what it is, as %s', async (as) => {
    writeFileSync(
      file,
      'a letter to my aunt, long enough to be taken for a header of a hundred bytes or more, and then some',
    );
    await expect(openStore(url, as)).rejects.toMatchObject({ code: 'not-a-database' });
    expect(readFileSync(file, 'utf8')).toContain('aunt');
  });

  it.each(['visitor', 'bot'] as const)('says that the folder is missing, as %s', async (as) => {
    const opened = openStore(`sqlite:${join(folder, 'nowhere', 'eiderdown.db')}`, as);
    await expect(opened).rejects.toThrow(/folder/);
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  });

  it('keeps a store in memory for those who want none on disk', async () => {
    const store = await openStore('sqlite::memory:', 'bot');
    await store.members.change('discord:1', { units: 'us' }, new Date(0));
    expect(await store.members.find('discord:1')).toMatchObject({ units: 'us' });
    await store.close();
  });

  it('opens again what was kept', async () => {
    const first = await openStore(url);
    await first.shed.put('discord:1', { cover: 'tarp', count: 2 }, new Date(0));
    await first.close();
    const second = await openStore(url);
    expect(await second.shed.list('discord:1')).toEqual([{ cover: 'tarp', count: 2 }]);
    await second.close();
  });
});

describe('opening a PostgreSQL database', () => {
  let server: PostgresServer | undefined;
  let unavailable: string | undefined;
  let url = '';
  beforeAll(async () => {
    const started = await startPostgres();
    if ('unavailable' in started) unavailable = started.unavailable;
    else server = started;
  });
  afterAll(async () => server?.stop());
  beforeEach(async (test) => {
    if (server === undefined) test.skip(unavailable);
    else url = await server.freshDatabase();
  });

  it('refuses one that a newer program has written, and changes nothing', async () => {
    await (await openStore(url)).close();
    await markAsNewer(url);
    const tables = () => looking(url, async (db) => JSON.stringify(await db.introspection.getTables()));
    const before = await tables();
    await expect(openStore(url)).rejects.toMatchObject({ code: 'newer-schema' });
    expect(await tables()).toBe(before);
  });

  it('insists on flushed commits even where the database is set to do without', async () => {
    await looking(url, (db) => sql`alter role current_user set synchronous_commit = off`.execute(db));
    const { rows } = await looking(url, (db) => sql`show synchronous_commit`.execute(db));
    expect(rows).toEqual([{ synchronous_commit: 'on' }]);
    await looking(url, (db) => sql`alter role current_user reset synchronous_commit`.execute(db));
  });

  it('lets several bots run on it', async () => {
    const bots = [await openStore(url, 'bot'), await openStore(url, 'bot')];
    await Promise.all(bots.map((bot) => bot.ping()));
    await Promise.all(bots.map((bot) => bot.close()));
  });

  it('says what is wrong with an address, and nothing of its password', async () => {
    const wrong = (change: (address: URL) => void): string => {
      const address = new URL(url);
      address.password = 'hush-hush';
      change(address);
      return address.href;
    };
    const cases = [
      [wrong(() => undefined), 'unreachable'],
      [wrong((address) => (address.port = '1')), 'unreachable'],
      [url.replace(/fresh_\d+$/, 'nowhere'), 'bad-address'],
    ] as const;
    for (const [address, code] of cases) {
      const problem: unknown = await openStore(address).catch((thrown: unknown) => thrown);
      expect(problem).toMatchObject({ name: 'StoreProblem', code });
      expect(JSON.stringify([problem, String(problem), (problem as Error).stack])).not.toContain('hush');
    }
  });

  it('goes on by itself when the server comes back, having said that it was away', { timeout: 60_000 }, async () => {
    const store = await openStore(url);
    await store.shed.put('discord:1', { cover: 'tarp', count: 2 }, new Date(0));
    await server?.goAway();
    await expect(store.ping()).rejects.toMatchObject({ code: 'unreachable' });
    await expect(store.shed.list('discord:1')).rejects.toMatchObject({ code: 'unreachable' });
    await server?.comeBack();
    expect(await store.shed.list('discord:1')).toEqual([{ cover: 'tarp', count: 2 }]);
    await store.close();
  });
});

describe('DATABASE_URL', () => {
  it.each(['', 'eiderdown.db', 'sqlite:', 'mysql://u:secret@h/d', 'postgres:nothing', 'postgres://:::secret'])(
    'is refused as %j with both forms shown and nothing repeated',
    (text) => {
      expect(() => databaseAddress(text)).toThrow(/sqlite:FILE.*postgres:\/\/USER/);
      expect(() => databaseAddress(text)).not.toThrow(/secret/);
    },
  );

  it('names a file or a server', () => {
    expect(databaseAddress('sqlite:a b.db')).toEqual({ engine: 'sqlite', file: 'a b.db' });
    const url = 'postgresql://me:pw@db.example/eiderdown';
    expect(databaseAddress(url)).toEqual({ engine: 'postgres', url });
  });
});

function hash(file: string): string {
  return createHash('sha256').update(readFileSync(file)).digest('hex');
}
