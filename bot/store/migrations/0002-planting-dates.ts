import type { Kysely } from 'kysely';

/** Local dates on which a crop was sown or set out, where the grower tells them. */
export async function addPlantingDates(db: Kysely<unknown>): Promise<void> {
  // One at a time: SQLite adds a single column in a statement.
  for (const column of ['sown', 'set_out']) await db.schema.alterTable('planting').addColumn(column, 'text').execute();
}
