import { writeSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { DiscordApi } from '../../../../bot/chat/discord/discord-api.ts';
import { DiscordPoster } from '../../../../bot/chat/discord/poster.ts';
import { Round } from '../../../../bot/jobs/round.ts';
import { openLog } from '../../../../bot/log.ts';
import { openStore } from '../../../../bot/store/open-store.ts';
import { SyntheticForecasts } from '../../../fakes/synthetic-forecasts.ts';

// Arguments: DATABASE_URL, Discord's address, token, what the clock is ahead of the true time [ms], lease [s], rows at once.
const [url = '', apiBase = '', token = '', aheadMs = '0', leaseS = '60', atOnce = '4'] = process.argv.slice(2);
const store = await openStore(url);
const api = new DiscordApi({ token, apiBase, onTokenRefused: () => process.exit(2) });
const forecasts = new SyntheticForecasts();
forecasts.meanC = -6;
const services = {
  clock: { now: () => new Date(Date.now() + Number(aheadMs)), rehearsal: false },
  log: openLog('error', { write: (line: string) => writeSync(2, line) }),
  ...{ store, forecasts, poster: new DiscordPoster(api) },
};
const round = new Round(services, {
  leaseS: Number(leaseS),
  atOnce: Number(atOnce),
  lookBackH: 1,
  postsPerS: Number.POSITIVE_INFINITY,
});
writeSync(1, 'works\n');
for (;;) {
  await round.tick();
  await round.drained();
  await pause(100);
}
