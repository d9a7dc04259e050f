import { writeSync } from 'node:fs';
import { openStore } from '../../../../bot/store/open-store.ts';

// Arguments: DATABASE_URL. Holds the store as the one bot until it is killed.
const [url = ''] = process.argv.slice(2);
const store = await openStore(url, 'bot');
writeSync(1, 'runs\n');
setInterval(() => store.ping(), 1000);
