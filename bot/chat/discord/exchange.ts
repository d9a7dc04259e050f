import {
  type APIInteraction,
  type APIInteractionResponse,
  InteractionResponseType,
  MessageFlags,
  type RawFile,
  Routes,
} from 'discord.js';
import { waited } from './back-off.ts';
import type { DiscordApi } from './discord-api.ts';
import { DiscordError } from './discord-error.ts';
import type { RenderedMessage } from './render.ts';

/** One interaction's way back to the person. */
export interface Exchange {
  /** Discord takes one first answer, within three seconds. */
  first(response: APIInteractionResponse, files: RawFile[]): Promise<void>;
  /** Puts a message in the place of a first answer that only said "thinking". */
  replace(message: RenderedMessage): Promise<void>;
  /** Another message after the first. */
  add(message: RenderedMessage): Promise<void>;
}

/** Discord's numbers. */
const ALREADY_ANSWERED = 40060;
const UNKNOWN_WEBHOOK = 10015;

/** Discord's three seconds less what the way to us may have taken; each attempt. */
const FIRST_WITHIN_MS = 2500;
/** How long Discord may need to note a first answer that it has only just read; after that it is not coming. */
const NOTING_WAITS_MS = [150, 400, 1000];

/** Answers over Discord's HTTP interface: all of it for the gateway, what does not fit into the response for the HTTP door. */
export function restExchange(api: DiscordApi, interaction: APIInteraction): Exchange {
  const { id, token, application_id: applicationId } = interaction;
  return {
    async first(response, files) {
      try {
        await api.call({
          method: 'POST',
          route: Routes.interactionCallback(id, token),
          body: response,
          files,
          withToken: false,
          // A second copy is refused by Discord, which then means that the first has arrived.
          repeatable: true,
          withinMs: FIRST_WITHIN_MS,
        });
      } catch (error) {
        if (!(error instanceof DiscordError && error.discordCode === ALREADY_ANSWERED)) throw error;
      }
    },
    async replace({ body, files }) {
      // Whether only one person sees it was settled by the first answer.
      const { flags: _settled, ...edit } = body;
      const route = Routes.webhookMessage(applicationId, token);
      await onceNoted(() => api.call({ method: 'PATCH', route, body: edit, files, withToken: false }));
    },
    async add({ body, files }) {
      const route = Routes.webhook(applicationId, token);
      await onceNoted(() => api.call({ method: 'POST', route, body, files, withToken: false }));
    },
  };
}

/** Tries again while Discord has not yet noted the first answer. */
async function onceNoted(send: () => Promise<unknown>): Promise<void> {
  for (const waitMs of [...NOTING_WAITS_MS, undefined]) {
    try {
      await send();
      return;
    } catch (error) {
      const early = error instanceof DiscordError && error.discordCode === UNKNOWN_WEBHOOK;
      if (!early || waitMs === undefined) throw error;
    }
    await waited(waitMs);
  }
}

/** A first answer that says "thinking" while the work goes on. */
export function deferral(isPrivate: boolean): APIInteractionResponse {
  return {
    type: InteractionResponseType.DeferredChannelMessageWithSource,
    ...(isPrivate ? { data: { flags: MessageFlags.Ephemeral } } : {}),
  };
}
