import { type DatabaseAddress, databaseAddress } from './database-address.ts';
import { openSqlite } from './engine/open-sqlite.ts';
import type { OpenedDatabase } from './engine/opened-database.ts';
import { becomeSoleBot } from './engine/sole-bot.ts';
import { KeptStore } from './kept/kept-store.ts';
import { appliedMigrations, migrate, refuseNewer } from './migrate.ts';
import type { Database } from './schema.ts';
import type { Store } from './store.ts';

/**
 * `bot`: the one long-running process; a second one on the same SQLite file is refused. On PostgreSQL any number run.
 * `visitor`: everything else, such as a command at the terminal while the bot runs.
 */
export type OpenAs = 'bot' | 'visitor';

/** Opens what `DATABASE_URL` names, made and brought up to date if need be. Throws `StoreProblem`. */
export async function openStore(databaseUrl: string, as: OpenAs = 'visitor'): Promise<Store> {
  const address = databaseAddress(databaseUrl);
  const stepDown = as === 'bot' && address.engine === 'sqlite' ? await becomeSoleBot(address.file) : () => undefined;
  try {
    const opened = await openDatabase(address);
    return await prepared(opened, stepDown);
  } catch (problem) {
    stepDown();
    throw problem;
  }
}

export async function openDatabase(address: DatabaseAddress): Promise<OpenedDatabase<Database>> {
  if (address.engine === 'sqlite') return openSqlite(address.file);
  // Some megabytes that most hosts never need.
  const { openPostgres } = await import('./engine/open-postgres.ts');
  return openPostgres(address.url);
}

async function prepared(opened: OpenedDatabase<Database>, afterClose: () => void): Promise<Store> {
  const { db, engine, disk } = opened;
  try {
    refuseNewer(await appliedMigrations(db));
    await opened.makeDurable();
    await migrate(db);
    return new KeptStore(db, engine, afterClose, disk);
  } catch (problem) {
    await db.destroy();
    throw problem;
  }
}
