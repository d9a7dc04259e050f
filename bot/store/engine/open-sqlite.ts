import { closeSync, existsSync, openSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { Kysely } from 'kysely';
import { StoreProblem } from '../store-problem.ts';
import { GuardedDialect } from './guarded-dialect.ts';
import type { OpenedDatabase } from './opened-database.ts';
import { SqliteDialect } from './sqlite-dialect.ts';
import { loadSqlite, type SqliteHandle } from './sqlite-engine.ts';
import { sqliteProblem } from './sqlite-problem.ts';

export const IN_MEMORY = ':memory:';
const BUSY_TIMEOUT_MS = 5000;
const RETRY_MS = 25;
const OWNER_ONLY = 0o600;

/** Opens a file, made if missing, without changing what is in it. */
export async function openSqlite<Tables>(file: string): Promise<OpenedDatabase<Tables>> {
  const { DatabaseSync } = await loadSqlite();
  const handle = guarded(() => {
    if (file !== IN_MEMORY) makePrivate(file);
    return new DatabaseSync(file);
  });
  try {
    guarded(() => handle.exec(`pragma busy_timeout = ${BUSY_TIMEOUT_MS}; pragma trusted_schema = off`));
    const disk = { isFull: false };
    const told = ({ code }: StoreProblem) => {
      if (code === 'full') disk.isFull = true;
    };
    const db = new Kysely<Tables>({ dialect: new GuardedDialect(new SqliteDialect(handle), sqliteProblem, told) });
    return { db, engine: 'sqlite', disk, makeDurable: () => patiently(() => guarded(() => makeDurable(handle, file))) };
  } catch (problem) {
    handle.close();
    throw problem;
  }
}

/**
 * Members' coordinates are inside: no other user of the machine reads them. A file that exists is not even opened here,
 * since closing it would drop the locks that this process may hold on it through SQLite.
 */
export function makePrivate(file: string): void {
  if (existsSync(file)) return;
  try {
    closeSync(openSync(file, 'wx', OWNER_ONLY));
  } catch (thrown) {
    // Another process that starts now was quicker.
    if (!(isFileProblem(thrown) && thrown.code === 'EEXIST')) throw thrown;
  }
}

/**
 * SQLite does not wait for its log to be switched on: where several start on a new file at once, all but one are told at
 * once that it is busy.
 */
async function patiently(work: () => void): Promise<void> {
  for (let waitedMs = 0; ; waitedMs += RETRY_MS) {
    try {
      return work();
    } catch (thrown) {
      const isBusy = thrown instanceof StoreProblem && thrown.code === 'busy';
      if (!isBusy || waitedMs >= BUSY_TIMEOUT_MS) throw thrown;
    }
    await pause(RETRY_MS);
  }
}

/** The two twins of SQLite differ in their defaults, so everything is set, and what durability rests on is read back. */
export function makeDurable(handle: SqliteHandle, file: string): void {
  if (setting(handle, 'journal_mode') !== 'wal') handle.exec('pragma journal_mode = wal');
  handle.exec('pragma synchronous = full; pragma foreign_keys = on; pragma secure_delete = on');
  const journal = file === IN_MEMORY ? 'memory' : 'wal';
  const isDurable =
    setting(handle, 'journal_mode') === journal &&
    setting(handle, 'synchronous') === '2' &&
    setting(handle, 'foreign_keys') === '1';
  if (isDurable) return;
  throw new StoreProblem(
    'not-durable',
    'The database file does not take the settings that keep it through a power cut; put it on a local disk.',
  );
}

function setting(handle: SqliteHandle, name: string): string {
  const [row] = handle.prepare(`pragma ${name}`).all();
  return String(Object.values(row ?? {})[0]);
}

export function guarded<T>(work: () => T): T {
  try {
    return work();
  } catch (thrown) {
    throw isFileProblem(thrown) ? fileProblem(thrown) : sqliteProblem(thrown);
  }
}

function isFileProblem(thrown: unknown): thrown is NodeJS.ErrnoException {
  return thrown instanceof Error && 'syscall' in thrown;
}

function fileProblem(thrown: NodeJS.ErrnoException): StoreProblem {
  return new StoreProblem(
    'bad-address',
    `The database file cannot be opened (${thrown.code}); its folder must exist and be writable.`,
  );
}
