import { type Kysely, type RawBuilder, sql } from 'kysely';
import { TABLE_NAMES, TABLES } from '../columns-table.ts';
import type { Database } from '../schema.ts';

const PAGE_ROWS = 200;

type Row = Readonly<Record<string, unknown>>;

/** Copies every row of every table, owners first, page by page, so that memory stays flat. Returns how many rows. */
export async function copyTables(from: Kysely<Database>, to: Kysely<Database>): Promise<number> {
  let copied = 0;
  for (const table of TABLE_NAMES) copied += await copyTable(from, to, table);
  return copied;
}

async function copyTable(from: Kysely<Database>, to: Kysely<Database>, table: keyof Database): Promise<number> {
  let copied = 0;
  let after: Row | undefined;
  for (;;) {
    const rows = await page(from, table, after);
    if (rows.length === 0) return copied;
    await insert(to, table, rows);
    copied += rows.length;
    after = rows.at(-1);
  }
}

async function page(db: Kysely<Database>, table: keyof Database, after: Row | undefined): Promise<readonly Row[]> {
  const key: readonly string[] = TABLES[table].key;
  const columns = sql.join(key.map((column) => sql.ref(column)));
  const beyond: RawBuilder<unknown> =
    after === undefined ? sql`` : sql`where (${columns}) > (${sql.join(key.map((column) => after[column]))})`;
  const { rows } = await sql<Row>`select * from ${sql.table(table)} ${beyond}
    order by ${columns} limit ${sql.lit(PAGE_ROWS)}`.execute(db);
  return rows;
}

async function insert(db: Kysely<Database>, table: keyof Database, rows: readonly Row[]): Promise<void> {
  const columns = Object.keys(rows[0] ?? {});
  const names = sql.join(columns.map((column) => sql.ref(column)));
  const values = sql.join(rows.map((row) => sql`(${sql.join(columns.map((column) => row[column]))})`));
  await sql`insert into ${sql.table(table)} (${names}) values ${values}`.execute(db);
}

export async function isEmpty(db: Kysely<Database>): Promise<boolean> {
  for (const table of TABLE_NAMES) {
    const { rows } = await sql`select 1 from ${sql.table(table)} limit 1`.execute(db);
    if (rows.length > 0) return false;
  }
  return true;
}
