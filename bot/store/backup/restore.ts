import { existsSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Kysely, sql } from 'kysely';
import { databaseAddress } from '../database-address.ts';
import { openSqlite } from '../engine/open-sqlite.ts';
import type { OpenedDatabase } from '../engine/opened-database.ts';
import { becomeSoleBot } from '../engine/sole-bot.ts';
import { appliedMigrations, migrate, refuseNewer } from '../migrate.ts';
import { MIGRATIONS, type Migrations } from '../migrations/migrations.ts';
import { openDatabase } from '../open-store.ts';
import type { Database } from '../schema.ts';
import { StoreProblem } from '../store-problem.ts';
import { copyTables, isEmpty } from './copy-tables.ts';
import { leavingNothing } from './on-signal.ts';

/**
 * Fills an empty database of either engine from a backup, all or nothing. An older backup is brought up to date on a
 * copy. Returns how many rows came back.
 */
export async function restore(databaseUrl: string, file: string, known: Migrations = MIGRATIONS): Promise<number> {
  const address = databaseAddress(databaseUrl);
  if (!existsSync(file)) throw new StoreProblem('not-found', 'There is no backup file of that name.');
  const stepDown = address.engine === 'sqlite' ? await becomeSoleBot(address.file) : () => undefined;
  const folder = await mkdtemp(join(tmpdir(), 'eiderdown-restore-'));
  try {
    return await leavingNothing([folder], async () => {
      const copy = join(folder, 'backup.db');
      await copyBackup(file, copy, known);
      const backup = await openSqlite<Database>(copy);
      return closing(backup.db, async () => {
        await migrate(backup.db, known);
        const target = await openDatabase(address);
        return closing(target.db, () => fill(target, backup.db, known));
      });
    });
  } finally {
    stepDown();
  }
}

async function closing<T>(db: Kysely<Database>, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } finally {
    await db.destroy();
  }
}

/** By SQLite, not by copying bytes: somebody may name a database that still has a log beside it. */
async function copyBackup(file: string, copy: string, known: Migrations): Promise<void> {
  const { db } = await openSqlite<Database>(file);
  await closing(db, async () => {
    const applied = await appliedMigrations(db);
    if (applied.length === 0) throw new StoreProblem('not-a-database', 'The file is not a backup of Eiderdown.');
    refuseNewer(applied, known, 'backup');
    await sql`vacuum into ${copy}`.execute(db);
  });
}

async function fill(target: OpenedDatabase<Database>, backup: Kysely<Database>, known: Migrations): Promise<number> {
  refuseNewer(await appliedMigrations(target.db), known);
  await target.makeDurable();
  await migrate(target.db, known);
  return target.db.transaction().execute(async (db) => {
    if (!(await isEmpty(db))) {
      throw new StoreProblem(
        'not-empty',
        'The database already holds data; restore into a new one. Nothing was changed.',
      );
    }
    return copyTables(backup, db);
  });
}
