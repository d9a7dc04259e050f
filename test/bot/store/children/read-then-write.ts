import { writeSync } from 'node:fs';
import { databaseAddress } from '../../../../bot/store/database-address.ts';
import { openDatabase } from '../../../../bot/store/open-store.ts';

// Arguments: DATABASE_URL, how often.
const [url = '', times = '0'] = process.argv.slice(2);
const { db, engine, makeDurable } = await openDatabase(databaseAddress(url));
await makeDurable();
for (let time = 0; time < Number(times); time++) {
  await db.transaction().execute(async (trx) => {
    const { count } = await trx
      .selectFrom('spare_cover')
      .select('count')
      // SQLite's transactions take the whole file; PostgreSQL's take the row, if asked to.
      .$if(engine === 'postgres', (query) => query.forUpdate())
      .executeTakeFirstOrThrow();
    await trx
      .updateTable('spare_cover')
      .set({ count: count + 1 })
      .execute();
  });
}
await db.destroy();
writeSync(1, 'done\n');
