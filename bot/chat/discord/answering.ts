import {
  type APIApplicationCommandOptionChoice,
  type APIInteraction,
  type APIInteractionResponse,
  InteractionResponseType,
  InteractionType,
} from 'discord.js';
import { actionOf } from '../../commands/dispatch.ts';
import type { Reply } from '../../talk/reply.ts';
import { waited } from './back-off.ts';
import { cut, formWindow } from './buttons.ts';
import { DiscordError } from './discord-error.ts';
import type { Desk } from './door.ts';
import { plainLine } from './escape.ts';
import { deferral, type Exchange } from './exchange.ts';
import { type Asked, askedBy } from './interaction-request.ts';
import { LIMITS } from './limits.ts';
import { type RenderedMessage, rendered } from './render.ts';

/** When "thinking" is shown: well inside Discord's three seconds, whatever the network takes. Judgement. */
const THINK_AFTER_MS = 700;
/** Suggestions cannot be put off; nothing is better than an error after three seconds. */
const SUGGEST_WITHIN_MS = 2000;
/** After that nobody waits any more. Judgement; Discord would take an answer for 15 minutes. */
const ANSWER_WITHIN_MS = 120_000;

const SORRY = 'Something went wrong on my side. Please try again in a minute.';
const TOO_SLOW = 'That took too long, and I have stopped waiting for it. Please try again in a minute.';
const RESTARTING = 'I am just being restarted. Please ask again in a minute.';
/** Discord's numbers: request too large, file too large; and a body that it finds faulty. */
const FAULTS_OF_SIZE = new Set([40005, 50045]);
const FAULT_OF_FORM = 50035;

const FOLLOWS = 'The answer is for you alone; it follows.';

/** How the person is to be answered. */
interface Manner {
  readonly isPrivate: boolean;
  readonly fileBytes: number;
  readonly mayOpenForm: boolean;
}

/** Answers interactions, the same way for both doors. Nothing that goes wrong in here reaches the door. */
export class Answering {
  readonly #desk: Desk;
  readonly #apiBase: string;
  readonly #underway = new Set<Promise<void>>();
  #closing = false;

  constructor(desk: Desk, apiBase: string) {
    this.#desk = desk;
    this.#apiBase = apiBase;
  }

  /** Settles when the person has everything; never rejects. */
  handle(interaction: APIInteraction, exchange: Exchange): Promise<void> {
    const work = this.#handled(interaction, exchange).catch((error: unknown) => this.#told(error));
    this.#underway.add(work);
    return work.finally(() => this.#underway.delete(work));
  }

  /** From now on new questions are put off politely; waits for those underway, but not for ever. */
  async close(withinMs: number): Promise<void> {
    this.#closing = true;
    const patience = new AbortController();
    const done = Promise.all(this.#underway).then(() => patience.abort());
    await Promise.race([done, waited(withinMs, patience.signal)]);
  }

  async #handled(interaction: APIInteraction, exchange: Exchange): Promise<void> {
    const desk = this.#desk;
    const asked = askedBy(interaction, desk.services.clock.now(), this.#apiBase);
    if (this.#closing) return putOff(asked, exchange);
    const manner = {
      fileBytes: interaction.attachment_size_limit ?? LIMITS.fileBytes,
      // Discord opens no form upon a form.
      mayOpenForm: interaction.type !== InteractionType.ModalSubmit,
    };
    switch (asked.kind) {
      case 'suggest':
        return exchange.first(choices(await this.#suggested(asked)), []);
      case 'command': {
        const isPrivate = actionOf(asked.request, desk.commands)?.private ?? true;
        const work = () => desk.answer(asked.request, desk.services, desk.commands);
        return this.#give(work, { ...manner, isPrivate }, exchange);
      }
      case 'press': {
        const isPrivate = desk.buttons.find((each) => asked.press.buttonId.startsWith(each.prefix))?.private ?? true;
        const work = () => desk.answerPress(asked.press, desk.services, desk.buttons);
        return this.#give(work, { ...manner, isPrivate }, exchange);
      }
      case 'unknown':
        desk.services.log.warn({ type: interaction.type }, 'an interaction of an unknown kind was left alone');
        return undefined;
    }
  }

  async #give(work: () => Promise<Reply>, manner: Manner, exchange: Exchange): Promise<void> {
    const answer = this.#guarded(work);
    const early = await firstOf(answer, THINK_AFTER_MS);
    if (early !== undefined) return this.#giveAtOnce(early, manner, exchange);
    await exchange.first(deferral(manner.isPrivate), []);
    const late = await answer;
    const message = asMessage(late, manner);
    if (manner.isPrivate || !late.private) return this.#orLess(message, (each) => exchange.replace(each));
    // "Thinking" was shown to all, and cannot be made private any more.
    await exchange.replace(rendered({ headline: FOLLOWS, sections: [], private: false }));
    return this.#orLess(message, (each) => exchange.add(each));
  }

  async #giveAtOnce(reply: Reply, manner: Manner, exchange: Exchange): Promise<void> {
    const form = reply.form === undefined || !manner.mayOpenForm ? undefined : formWindow(reply.form);
    if (form !== undefined) return exchange.first({ type: InteractionResponseType.Modal, data: form }, []);
    return this.#orLess(asMessage(reply, manner), (each) => exchange.first(asResponse(each), each.files));
  }

  /** If Discord refuses what we made of a reply, the person still gets the words, or at least a sentence. */
  async #orLess(message: RenderedMessage, send: (message: RenderedMessage) => Promise<void>): Promise<void> {
    try {
      await send(message);
    } catch (error) {
      const fault = error instanceof DiscordError ? (error.discordCode ?? 0) : 0;
      if (!FAULTS_OF_SIZE.has(fault) && fault !== FAULT_OF_FORM) throw error;
      this.#told(error);
      const { body } = message;
      const less = FAULTS_OF_SIZE.has(fault) ? body : { ...body, content: SORRY, components: [] };
      await send({ body: { ...less, attachments: [] }, files: [] });
    }
  }

  /** The reply, or words of regret; never rejects, never takes for ever. */
  async #guarded(work: () => Promise<Reply>): Promise<Reply> {
    try {
      return (await firstOf(work(), ANSWER_WITHIN_MS)) ?? plain(TOO_SLOW);
    } catch (error) {
      this.#desk.services.log.error({ err: error }, 'an answer failed');
      return plain(SORRY);
    }
  }

  async #suggested(asked: Asked & { kind: 'suggest' }): Promise<APIApplicationCommandOptionChoice<string>[]> {
    const { commands, services } = this.#desk;
    const action = actionOf(asked.request, commands);
    const suggest = action?.options.find((option) => option.name === asked.option)?.suggest;
    if (suggest === undefined) return [];
    try {
      const found = (await firstOf(suggest(asked.typed, asked.request, services), SUGGEST_WITHIN_MS)) ?? [];
      return found
        .map(({ label, value }) => ({ name: cut(plainLine(label), LIMITS.suggestionCharacters), value }))
        .filter(({ name, value }) => name !== '' && value !== '' && value.length <= LIMITS.suggestionCharacters)
        .slice(0, LIMITS.suggestions);
    } catch (error) {
      services.log.error({ err: error }, 'suggestions failed');
      return [];
    }
  }

  /** The log names what Discord said, never whom it concerned or what was written. */
  #told(error: unknown): void {
    if (error instanceof DiscordError) {
      const { code, discordCode, message } = error;
      this.#desk.services.log.warn({ code, discordCode }, `an answer did not arrive: ${message}`);
    } else {
      this.#desk.services.log.error({ err: error }, 'an interaction could not be answered');
    }
  }
}

async function putOff(asked: Asked, exchange: Exchange): Promise<void> {
  if (asked.kind === 'suggest') return exchange.first(choices([]), []);
  const message = rendered(plain(RESTARTING), { private: true });
  return asked.kind === 'unknown' ? undefined : exchange.first(asResponse(message), []);
}

function asMessage(reply: Reply, { isPrivate, fileBytes }: Manner): RenderedMessage {
  return rendered(reply, { fileBytes, private: isPrivate || reply.private });
}

function asResponse({ body }: RenderedMessage): APIInteractionResponse {
  return { type: InteractionResponseType.ChannelMessageWithSource, data: { ...body, allowed_mentions: { parse: [] } } };
}

function choices(found: APIApplicationCommandOptionChoice<string>[]): APIInteractionResponse {
  return { type: InteractionResponseType.ApplicationCommandAutocompleteResult, data: { choices: found } };
}

function plain(sentence: string): Reply {
  return { headline: sentence, sections: [], private: true, refused: true };
}

/** What the work gives, or undefined once the time is over; the work goes on. */
async function firstOf<T>(work: Promise<T>, ms: number): Promise<T | undefined> {
  const timer = new AbortController();
  try {
    return await Promise.race([work, waited(ms, timer.signal).then(() => undefined)]);
  } finally {
    timer.abort();
  }
}
