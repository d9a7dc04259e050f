import { writeSync } from 'node:fs';
import { openStore } from '../../../../bot/store/open-store.ts';

// Arguments: DATABASE_URL, the instant at which to start.
const [url = '', at = '0'] = process.argv.slice(2);
// Together to the millisecond: what is tested is that starters do not get into each other's way.
while (Date.now() < Number(at));
const store = await openStore(url);
await store.ping();
await store.close();
writeSync(1, 'done\n');
