import { DiscordApi } from '../chat/discord/discord-api.ts';
import type { Config } from '../config.ts';
import type { DoorChoice } from '../door-choice.ts';
import { clockOf } from '../ground/clock.ts';
import { channelFindings } from './channel-check.ts';
import { clockFindings } from './clock-check.ts';
import { databaseFindings } from './database-check.ts';
import { discordRead } from './discord-check.ts';
import type { Finding } from './finding.ts';
import { type ForecastCheck, forecastFindings } from './forecast-check.ts';
import { settingsRead } from './settings-check.ts';

export interface Examination extends Pick<ForecastCheck, 'retryWaitMs' | 'spacingMs'> {
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly zoneDataVersion: string | undefined;
  readonly wallMs?: () => number;
}

/** Looks at everything that the bot needs, in the order in which a host would put it right. Changes nothing. */
export async function examined(examination: Examination): Promise<readonly Finding[]> {
  const { findings, settings } = await settingsRead(examination.environment);
  if (settings === undefined) return findings;
  const { config, door } = settings;
  const [there, clock, forecasts] = await Promise.all([
    discordAndDatabase(config, door),
    clockFindings({
      timeUrl: timeUrl(config, door),
      userAgent: 'Eiderdown/0.1 (asks for the time)',
      wallMs: examination.wallMs ?? Date.now,
      zoneDataVersion: examination.zoneDataVersion,
    }),
    forecastFindings(config, { ...examination, needed: door.kind !== 'terminal', now: clockOf(config).now() }),
  ]);
  return [...findings, ...there, ...clock, ...forecasts];
}

/** Whoever is asked anyway. */
function timeUrl(config: Config, door: DoorChoice): string | undefined {
  if (door.kind !== 'terminal') return `${config.DISCORD_API_BASE}/v10/gateway`;
  return config.FORECAST_CONTACT === undefined ? undefined : config.NWS_BASE;
}

async function discordAndDatabase(config: Config, door: DoorChoice): Promise<readonly Finding[]> {
  const url = config.DATABASE_URL;
  if (door.kind === 'terminal') return databaseFindings(url, async () => []);
  const api = new DiscordApi({ token: door.token, apiBase: config.DISCORD_API_BASE, onTokenRefused: () => undefined });
  try {
    const { findings, botId } = await discordRead(api, config, door);
    const database = await databaseFindings(url, async (store) =>
      botId === undefined ? [] : channelFindings(api, botId, store),
    );
    return [...findings, ...database];
  } finally {
    api.close();
  }
}
