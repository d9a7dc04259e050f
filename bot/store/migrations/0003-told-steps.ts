import type { Kysely } from 'kysely';

/** What a bed's grower was told to do, so that a second look knows whether the advice has changed. */
export async function addToldSteps(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable('prediction').addColumn('step', 'text').execute();
}
