import { type APIApplication, Routes } from 'discord.js';
import type { Logger } from 'pino';
import type { Command } from '../../commands/command.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { type BackOff, waited, waitMs } from './back-off.ts';
import { commandDefinitions } from './definitions.ts';
import type { DiscordApi } from './discord-api.ts';
import { DiscordError } from './discord-error.ts';
import { registerCommands } from './registration.ts';

export const START_BACK_OFF: BackOff = { firstMs: 1000, mostMs: 60_000 };

export const TOKEN_REFUSED =
  "Discord refused the bot's token. Copy the token again from the application's page at Discord into DISCORD_TOKEN.";

export interface StartOptions {
  readonly log: Logger;
  readonly signal: AbortSignal;
  readonly backOff: BackOff;
}

/** Learns who we are at Discord and puts our commands there; keeps trying while Discord cannot be reached. */
export async function introduced(
  api: DiscordApi,
  commands: readonly Command[],
  options: StartOptions,
): Promise<APIApplication> {
  const wanted = commandDefinitions(commands);
  return persistently(options, async () => {
    const application = await api.call<APIApplication>({ method: 'GET', route: Routes.currentApplication() });
    const outcome = await registerCommands(api, application.id, wanted);
    options.log.info({ commands: wanted.length, outcome }, 'commands are registered at Discord');
    return application;
  });
}

/**
 * Repeats the work, with growing waits, as long as waiting can help.
 *
 * @throws PlainProblem when only a host can put it right, or when the signal came.
 */
export async function persistently<T>(options: StartOptions, work: () => Promise<T>): Promise<T> {
  for (let attempt = 1; ; attempt += 1) {
    if (options.signal.aborted) throw new PlainProblem('The start was given up.');
    try {
      return await work();
    } catch (error) {
      const failure = passing(error);
      const ms = Math.max(waitMs(attempt, options.backOff), (failure.retryAfterS ?? 0) * 1000);
      options.log.warn({ code: failure.code, waitMs: Math.round(ms) }, `${failure.message} Trying again.`);
      await waited(ms, options.signal);
    }
  }
}

/** The failure, if it may pass by itself; else throws what a host must do. */
function passing(error: unknown): DiscordError {
  if (!(error instanceof DiscordError)) throw error;
  if (error.code === 'unavailable' || error.code === 'rate-limited') return error;
  if (error.code === 'token-refused') throw new PlainProblem(TOKEN_REFUSED);
  throw new PlainProblem(`Discord does not let the bot start: ${error.message}`);
}
