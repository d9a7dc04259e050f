import { writeSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { DiscordApi } from '../../../bot/chat/discord/discord-api.ts';
import { DiscordPoster } from '../../../bot/chat/discord/poster.ts';
import { forecastDesk } from '../../../bot/forecast/choose.ts';
import { Round } from '../../../bot/jobs/round.ts';
import { openLog } from '../../../bot/log.ts';
import { openStore } from '../../../bot/store/open-store.ts';

// Arguments: DATABASE_URL, Discord's address, token, Open-Meteo's address, the instant of the fetches, that of the posts.
const [url = '', apiBase = '', token = '', weather = '', fetchAt = '', postAt = ''] = process.argv.slice(2);
const tell = (line: string) => writeSync(1, `${line}\n`);
const lines = createInterface({ input: process.stdin })[Symbol.asyncIterator]();

const store = await openStore(url);
const api = new DiscordApi({ token, apiBase, onTokenRefused: () => process.exit(2) });
const forecasts = forecastDesk({
  bases: { nws: weather, metno: weather, openmeteo: weather },
  ...{ contact: 'bench@example.org', order: ['openmeteo'] as const },
});
let now = new Date(fetchAt);
const services = {
  clock: { now: () => now, rehearsal: false },
  log: openLog('warn', { write: (line: string) => writeSync(2, line) }),
  ...{ store, forecasts, poster: new DiscordPoster(api) },
};
const round = new Round(services, { lookBackH: 0 });
// The first minute fetches, the next one works out what can be worked out ahead.
for (let minute = 0; minute < 2; minute += 1) {
  await round.tick();
  await round.drained();
}
tell('fetched');
await lines.next();
now = new Date(postAt);
const before = process.cpuUsage();
const stop = lines.next().then(() => 'stop' as const);
for (;;) {
  await round.tick();
  await round.drained();
  if ((await Promise.race([stop, pause(20)])) === 'stop') break;
}
const { user, system } = process.cpuUsage(before);
tell(JSON.stringify({ peakMb: process.resourceUsage().maxRSS / 1024, postingCpuS: (user + system) / 1e6 }));
process.exit(0);
