import { existsSync } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { type Kysely, sql } from 'kysely';
import { databaseAddress } from '../database-address.ts';
import { openSqlite } from '../engine/open-sqlite.ts';
import type { OpenedDatabase } from '../engine/opened-database.ts';
import { appliedMigrations, migrate, refuseNewer } from '../migrate.ts';
import { MIGRATIONS } from '../migrations/migrations.ts';
import { openDatabase } from '../open-store.ts';
import type { Database } from '../schema.ts';
import { StoreProblem } from '../store-problem.ts';
import { copyTables } from './copy-tables.ts';
import { leavingNothing } from './on-signal.ts';

/**
 * Writes everything as of one instant to a new SQLite file, whichever engine it comes from, while the bot runs on.
 * The file appears under its name only once it is whole, checked and on the disk.
 */
export async function backUp(databaseUrl: string, file: string): Promise<void> {
  const address = databaseAddress(databaseUrl);
  if (existsSync(file)) {
    throw new StoreProblem('file-exists', 'A file of that name is already there; name a new one for the backup.');
  }
  if (address.engine === 'sqlite' && !existsSync(address.file)) throw nothingToBackUp();
  const unfinished = `${file}.unfinished`;
  await rm(unfinished, { force: true });
  const source = await openDatabase(address);
  try {
    await leavingNothing([unfinished], async () => {
      const applied = await appliedMigrations(source.db);
      if (applied.length === 0) throw nothingToBackUp();
      refuseNewer(applied);
      await (source.engine === 'sqlite' ? vacuumInto(source.db, unfinished) : copyInto(source, applied, unfinished));
      await check(unfinished);
      await flush(unfinished);
      await rename(unfinished, file);
      // So that the new name outlives a power cut too; Windows has no way to ask for it.
      if (process.platform !== 'win32') await flush(dirname(file));
    });
  } finally {
    await source.db.destroy();
  }
}

function nothingToBackUp(): StoreProblem {
  return new StoreProblem('not-found', 'DATABASE_URL names no database of Eiderdown; there is nothing to back up.');
}

async function vacuumInto(db: Kysely<Database>, file: string): Promise<void> {
  // Made first, so that it is for the owner's eyes from the beginning; SQLite fills an empty file.
  await (await open(file, 'wx', 0o600)).close();
  await sql`vacuum into ${file}`.execute(db);
}

async function copyInto(source: OpenedDatabase<Database>, applied: readonly string[], file: string): Promise<void> {
  if (applied.length < Object.keys(MIGRATIONS).length) {
    throw new StoreProblem(
      'older-schema',
      'The database is of an older Eiderdown; start the bot once so that it is brought up to date, then back it up.',
    );
  }
  const backup = await openSqlite<Database>(file);
  try {
    await migrate(backup.db);
    await source.db
      .transaction()
      .setIsolationLevel('repeatable read')
      .execute((from) => backup.db.transaction().execute((to) => copyTables(from, to)));
  } finally {
    await backup.db.destroy();
  }
}

async function check(file: string): Promise<void> {
  const { db } = await openSqlite<Database>(file);
  try {
    const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db);
    if (rows[0]?.integrity_check !== 'ok') {
      throw new StoreProblem('failed', 'The backup came out damaged and was thrown away; check the disk.');
    }
  } finally {
    await db.destroy();
  }
}

async function flush(path: string): Promise<void> {
  const handle = await open(path, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
