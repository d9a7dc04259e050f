import type { Kysely } from 'kysely';
import { databaseAddress } from '../../../bot/store/database-address.ts';
import { openDatabase } from '../../../bot/store/open-store.ts';
import type { Database } from '../../../bot/store/schema.ts';

/** Looks behind a store, through a connection of its own. */
export async function looking<T>(url: string, look: (db: Kysely<Database>) => Promise<T>): Promise<T> {
  const { db, makeDurable } = await openDatabase(databaseAddress(url));
  try {
    await makeDurable();
    return await look(db);
  } finally {
    await db.destroy();
  }
}
