import { constants, existsSync } from 'node:fs';
import { access, statfs } from 'node:fs/promises';
import { dirname } from 'node:path';
import { type Kysely, sql } from 'kysely';
import { type DatabaseAddress, databaseAddress } from '../store/database-address.ts';
import type { OpenedDatabase } from '../store/engine/opened-database.ts';
import { KeptStore } from '../store/kept/kept-store.ts';
import { appliedMigrations, refuseNewer } from '../store/migrate.ts';
import { MIGRATIONS } from '../store/migrations/migrations.ts';
import { openDatabase } from '../store/open-store.ts';
import type { Database } from '../store/schema.ts';
import { StoreProblem } from '../store/store-problem.ts';
import { type Finding, findingsOn } from './finding.ts';

const { good, look, fix } = findingsOn('Database');

const ROOM_WANTED_MIB = 200;
/** The oldest that the store has been tried with is 15; older ones lack nothing that it uses, but get no more repairs. */
const OLDEST_SERVER = 14;

/** Looks at the database, and hands it to `use` where it is up to date. Makes no file and brings nothing up to date. */
export async function databaseFindings(
  databaseUrl: string,
  use: (store: KeptStore) => Promise<readonly Finding[]>,
): Promise<readonly Finding[]> {
  try {
    const address = databaseAddress(databaseUrl);
    if (address.engine === 'sqlite' && !existsSync(address.file)) return await placeFindings(address.file);
    const opened = await openDatabase(address);
    try {
      return await openedFindings(opened, address, use);
    } finally {
      await opened.db.destroy();
    }
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
    return [fix(error.message)];
  }
}

async function placeFindings(file: string): Promise<readonly Finding[]> {
  try {
    await access(dirname(file), constants.W_OK);
    return [good('There is no file yet; the first start makes it.')];
  } catch {
    return [fix('The folder of the database file is missing or may not be written.', 'Make it, or name another file.')];
  }
}

async function openedFindings(
  opened: OpenedDatabase<Database>,
  address: DatabaseAddress,
  use: (store: KeptStore) => Promise<readonly Finding[]>,
): Promise<readonly Finding[]> {
  const { db, engine } = opened;
  const applied = await appliedMigrations(db);
  refuseNewer(applied);
  await opened.makeDurable();
  const missing = Object.keys(MIGRATIONS).filter((name) => !applied.includes(name));
  const own = address.engine === 'sqlite' ? await roomFindings(dirname(address.file)) : await serverFindings(db);
  const findings = [good('It opens, and keeps what is settled through a power cut.'), await writeFinding(db), ...own];
  if (missing.length > 0) {
    return [...findings, good(`It lacks ${missing.length} changes of this version; the next start makes them.`)];
  }
  return [
    ...findings,
    good('Its tables are those of this version.'),
    ...(await use(new KeptStore(db, engine, () => undefined))),
  ];
}

class NotKept extends Error {}

/** Makes a table and takes it back, which is what bringing it up to date needs. */
async function writeFinding(db: Kysely<Database>): Promise<Finding> {
  try {
    await db.transaction().execute(async (transaction) => {
      await sql`create table eiderdown_doctor (one integer)`.execute(transaction);
      throw new NotKept();
    });
  } catch (error) {
    if (error instanceof StoreProblem) return fix(`It cannot be written: ${error.message}`);
    if (!(error instanceof NotKept)) throw error;
  }
  return good('It can be written.');
}

async function roomFindings(folder: string): Promise<Finding[]> {
  const { bavail, bsize } = await statfs(folder);
  const freeMiB = Math.floor((bavail * bsize) / 1024 ** 2);
  return freeMiB < ROOM_WANTED_MIB
    ? [look(`Its disk has only ${freeMiB} MiB left.`, 'Make room: on a full disk nothing more can be saved.')]
    : [];
}

async function serverFindings(db: Kysely<Database>): Promise<Finding[]> {
  const settings = await sql<{ name: string; setting: string }>`
    select name, setting from pg_settings where name in ('fsync', 'full_page_writes', 'server_version_num')
  `.execute(db);
  const value = new Map(settings.rows.map(({ name, setting }) => [name, setting]));
  const unsafe = ['fsync', 'full_page_writes'].filter((name) => value.get(name) !== 'on');
  const version = Math.floor(Number(value.get('server_version_num')) / 10_000);
  return [
    ...unsafe.map((name) =>
      look(`The server runs with ${name} off: a power cut can ruin it.`, `Set ${name} = on in its configuration.`),
    ),
    version < OLDEST_SERVER
      ? look(`The server is PostgreSQL ${version}.`, `Move to ${OLDEST_SERVER} or newer.`)
      : good(`The server is PostgreSQL ${version}.`),
  ];
}
