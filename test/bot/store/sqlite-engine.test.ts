import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeDurable } from '../../../bot/store/engine/open-sqlite.ts';
import { CachedStatements } from '../../../bot/store/engine/sqlite-dialect.ts';
import { isSafe, loadSqlite, type SqliteModule } from '../../../bot/store/engine/sqlite-engine.ts';

/** The engine at hand, claiming to be of another version. */
async function claiming(version: string): Promise<SqliteModule> {
  const { DatabaseSync } = await loadSqlite();
  class Claiming extends DatabaseSync {
    override prepare(sql: string): ReturnType<InstanceType<SqliteModule['DatabaseSync']>['prepare']> {
      return super.prepare(sql.replace('sqlite_version()', `'${version}'`));
    }
  }
  return { DatabaseSync: Claiming };
}

describe('the SQLite that the store runs on', () => {
  it.each([
    ['3.51.3', true],
    ['3.51.2', false],
    ['3.53.0', true],
    ['3.9.9', false],
    ['3.100.0', true],
    ['4.0.0', true],
    ['2.99.99', false],
    ['3.51', false],
    ['', false],
  ])('of version %j is safe: %j', (version, safe) => {
    expect(isSafe(version)).toBe(safe);
  });

  it('is safe from every version on that follows a safe one', () => {
    const part = fc.nat({ max: 120 });
    fc.assert(
      fc.property(part, part, part, (a, b, c) => {
        fc.pre(isSafe(`${a}.${b}.${c}`));
        expect(isSafe(`${a}.${b}.${c + 1}`) && isSafe(`${a}.${b + 1}.0`) && isSafe(`${a + 1}.0.0`)).toBe(true);
      }),
    );
  });

  it("is Node's own where that is new enough, else the package", async () => {
    const [own, ownOld, twin] = [await claiming('3.53.4'), await claiming('3.45.1'), await claiming('3.53.0')];
    expect(await loadSqlite([async () => own, async () => twin])).toBe(own);
    expect(await loadSqlite([async () => ownOld, async () => twin])).toBe(twin);
    expect(await loadSqlite([async () => undefined, async () => twin])).toBe(twin);
  });

  it('is asked for in a sentence that names both ways out where there is none', async () => {
    const old = await claiming('3.45.1');
    const nothing = loadSqlite([async () => undefined, async () => old]);
    await expect(nothing).rejects.toMatchObject({ code: 'no-sqlite' });
    await expect(nothing).rejects.toThrow(/Node 22\.23.*npm install @photostructure\/sqlite/);
  });

  it('is refused where it does not take the settings that keep rows through a power cut', async () => {
    const { DatabaseSync } = await loadSqlite();
    // A database in memory keeps no log, whatever it is told.
    const handle = new DatabaseSync(':memory:');
    expect(() => makeDurable(handle, 'eiderdown.db')).toThrow(expect.objectContaining({ code: 'not-durable' }));
    handle.close();
  });
});

describe('the statements kept ready', () => {
  it('never exceed 200, and one that went comes back when it is needed', async () => {
    const { DatabaseSync } = await loadSqlite();
    const statements = new CachedStatements(new DatabaseSync(':memory:'));
    for (let n = 0; n < 500; n++) {
      expect(statements.prepare(`select ${n} as n`).all([])).toEqual([{ n }]);
      expect(statements.size).toBeLessThanOrEqual(200);
    }
    expect(statements.prepare('select 0 as n').all([])).toEqual([{ n: 0 }]);
    statements.close();
  });

  it('are the ones used last', async () => {
    const { DatabaseSync } = await loadSqlite();
    const statements = new CachedStatements(new DatabaseSync(':memory:'));
    const favourite = statements.prepare('select 1');
    for (let n = 2; n < 400; n++) {
      statements.prepare(`select ${n}`);
      expect(statements.prepare('select 1')).toBe(favourite);
    }
    statements.close();
  });
});
