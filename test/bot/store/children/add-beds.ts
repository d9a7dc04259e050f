import { writeSync } from 'node:fs';
import { openStore } from '../../../../bot/store/open-store.ts';

// Arguments: DATABASE_URL. Adds beds until it is killed; writes down each only once the store has acknowledged it.
const [url = ''] = process.argv.slice(2);
const store = await openStore(url);
const memberId = `child:${process.pid}`;
const now = new Date();
const place = { latitudeDeg: 48, longitudeDeg: 16, heightM: undefined, timeZone: 'Europe/Vienna', horizonDeg: [] };
const site = await store.sites.add(memberId, { name: `Home ${now.getTime()}`, exposure: 'open', ...place }, now);
const facts = { siteId: site.id, soil: 'moist-loam', mulch: undefined, frame: undefined, hardeningNote: undefined };
for (let n = 0; ; n++) {
  const bed = await store.beds.add(memberId, { ...facts, name: `Bed ${n}`, covers: ['cold-frame', 'blanket'] }, now);
  writeSync(1, `${bed.id}\n`);
}
