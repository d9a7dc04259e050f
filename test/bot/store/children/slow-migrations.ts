import { setTimeout as pause } from 'node:timers/promises';
import { sql } from 'kysely';
import { MIGRATIONS, type Migrations } from '../../../../bot/store/migrations/migrations.ts';

export const SLOW_TABLES = 25;

/** An upgrade of many steps, slow enough to be killed in the middle. */
export const SLOW_MIGRATIONS: Migrations = {
  ...MIGRATIONS,
  '9000-many-steps': {
    up: async (db) => {
      for (let step = 0; step < SLOW_TABLES; step++) {
        await db.schema.createTable(`slow_${step}`).addColumn('id', 'text').execute();
        await sql`insert into ${sql.table(`slow_${step}`)} (id) values ('one')`.execute(db);
        await pause(4);
      }
    },
  },
};
