import { type Kysely, Migrator, sql } from 'kysely';
import { MIGRATIONS, type Migrations } from './migrations/migrations.ts';
import { StoreProblem } from './store-problem.ts';

export const SCHEMA_TABLE = 'eiderdown_schema';
const SCHEMA_LOCK_TABLE = 'eiderdown_schema_lock';

/** Which migrations a database has had, in order; none where it is empty or not ours. Changes nothing. */
export async function appliedMigrations<Tables>(db: Kysely<Tables>): Promise<readonly string[]> {
  const tables = await db.introspection.getTables();
  if (!tables.some((table) => table.name === SCHEMA_TABLE)) return [];
  const { rows } = await sql<{ name: string }>`select name from ${sql.table(SCHEMA_TABLE)} order by name`.execute(db);
  return rows.map((row) => row.name);
}

/** Refuses a database that a newer program has written, before anything touches it. */
export function refuseNewer(applied: readonly string[], known: Migrations = MIGRATIONS, what = 'database'): void {
  const unknown = applied.filter((name) => !(name in known));
  if (unknown.length === 0) return;
  throw new StoreProblem(
    'newer-schema',
    `The ${what} was written by a newer Eiderdown (it has ${unknown.join(', ')}); nothing was changed. Use that version or a later one.`,
  );
}

/** Brings a database up to date; one that is already is not even locked. Programs that start together wait for each other. */
export async function migrate<Tables>(db: Kysely<Tables>, known: Migrations = MIGRATIONS): Promise<void> {
  const applied = await appliedMigrations(db);
  if (Object.keys(known).every((name) => applied.includes(name))) return;
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => ({ ...known }) },
    migrationTableName: SCHEMA_TABLE,
    migrationLockTableName: SCHEMA_LOCK_TABLE,
    // Order by name alone: a board without a battery clock may date a later migration earlier, and must still start.
    allowUnorderedMigrations: true,
  });
  const { error } = await migrator.migrateToLatest();
  if (error === undefined) return;
  refuseNewer(await appliedMigrations(db), known);
  throw error instanceof StoreProblem
    ? error
    : new StoreProblem('failed', 'The database could not be brought up to date; it was left as it was.');
}
