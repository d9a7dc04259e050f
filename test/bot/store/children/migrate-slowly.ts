import { writeSync } from 'node:fs';
import { databaseAddress } from '../../../../bot/store/database-address.ts';
import { migrate } from '../../../../bot/store/migrate.ts';
import { openDatabase } from '../../../../bot/store/open-store.ts';
import { SLOW_MIGRATIONS } from './slow-migrations.ts';

// Arguments: DATABASE_URL.
const [url = ''] = process.argv.slice(2);
const { db, makeDurable } = await openDatabase(databaseAddress(url));
await makeDurable();
writeSync(1, 'begins\n');
await migrate(db, SLOW_MIGRATIONS);
await db.destroy();
writeSync(1, 'done\n');
