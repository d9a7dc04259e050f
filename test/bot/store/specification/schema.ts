import { CompiledQuery, sql } from 'kysely';
import { expect, it } from 'vitest';
import { type ColumnKind, TABLES } from '../../../../bot/store/columns-table.ts';
import { claimStatement } from '../../../../bot/store/kept/deliveries.ts';
import { SCHEMA_TABLE } from '../../../../bot/store/migrate.ts';
import { minute, planned, type World } from './world.ts';

/** How each engine names the types that migrations ask for. */
const TYPE_NAMES = {
  SQLite: { text: 'text', integer: 'integer', instant: 'bigint', real: 'double precision' },
  PostgreSQL: { text: 'text', integer: 'int4', instant: 'int8', real: 'float8' },
} as const;

export function schemaSpecification(world: World): void {
  it('has just the tables and columns that the program lists, of the same kinds', async () => {
    const names = TYPE_NAMES[world.engine];
    const tables = await world.db.introspection.getTables();
    const found = tables
      .filter((table) => !table.name.startsWith(SCHEMA_TABLE))
      .map((table) => [
        table.name,
        Object.fromEntries(
          table.columns.map((column) => [column.name, [column.dataType.toLowerCase(), column.isNullable]]),
        ),
      ]);
    const listed = Object.entries(TABLES).map(([name, table]) => [
      name,
      Object.fromEntries(
        Object.entries<ColumnKind>(table.columns).map(([column, kind]) => [column, typeOf(kind, names)]),
      ),
    ]);
    expect(Object.fromEntries(found)).toEqual(Object.fromEntries(listed));
  });

  it('finds what to claim through the index of open rows, not by reading years of finished nights', async () => {
    const { store, db } = world;
    const finished = Array.from({ length: 3000 }, (_, n) => planned(`p${n}`));
    await store.deliveries.plan(finished);
    await db.updateTable('delivery').set({ state: 'sent' }).execute();
    await store.deliveries.plan([planned('open', { night: '2026-12-02' })]);
    await sql`analyze`.execute(db);
    const engine = world.engine === 'SQLite' ? 'sqlite' : 'postgres';
    const claim = claimStatement(db, engine, { worker: 'w', now: minute(1), limit: 5, leaseS: 60 }).compile();
    const explain = world.engine === 'SQLite' ? 'explain query plan' : 'explain';
    const plan = await db.executeQuery(CompiledQuery.raw(`${explain} ${claim.sql}`, [...claim.parameters]));
    expect(JSON.stringify(plan.rows)).toContain('delivery_open');
    expect(JSON.stringify(plan.rows)).not.toMatch(/Seq Scan on delivery|SCAN delivery(?! USING INDEX delivery_open)/);
  });
}

function typeOf(kind: ColumnKind, names: Record<'text' | 'integer' | 'instant' | 'real', string>): [string, boolean] {
  switch (kind) {
    case 'text':
    case 'integer':
    case 'instant':
    case 'real':
      return [names[kind], false];
    case 'text?':
      return [names.text, true];
    case 'integer?':
      return [names.integer, true];
    case 'instant?':
      return [names.instant, true];
    case 'real?':
      return [names.real, true];
  }
}
