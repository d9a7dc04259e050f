import { type APIApplication, Routes } from 'discord.js';
import type { Logger } from 'pino';
import type { DiscordApi } from './discord-api.ts';
import type { Door } from './door.ts';
import { persistently, START_BACK_OFF } from './startup.ts';

/** For a process that only posts: it takes no commands, and is ready once Discord takes its token. */
export function closedDoor(api: DiscordApi, log: Logger): Door {
  const stopping = new AbortController();
  let isKnown = false;
  const opened = async () => {
    const start = { log, signal: stopping.signal, backOff: START_BACK_OFF };
    await persistently(start, () => api.call<APIApplication>({ method: 'GET', route: Routes.currentApplication() }));
    isKnown = true;
  };
  return {
    ready: opened(),
    isOpen: () => isKnown && !stopping.signal.aborted,
    stop: async () => stopping.abort(),
  };
}
