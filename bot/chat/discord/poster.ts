import { type APIDMChannel, type APIMessage, type APIUser, Routes, SnowflakeUtil } from 'discord.js';
import type { ChannelPoster, Posted } from '../../talk/channel-poster.ts';
import type { Reply } from '../../talk/reply.ts';
import { PHONE_CHARACTERS } from '../../talk/short-reply.ts';
import type { DiscordApi } from './discord-api.ts';
import { DiscordError } from './discord-error.ts';
import { LIMITS } from './limits.ts';
import { type RenderedMessage, rendered } from './render.ts';
import { guildIdOf, missingRights } from './rights.ts';

/** Three attempts and their waits stay below the minute that a worker holds a delivery. */
const POST_WITHIN_MS = 10_000;
/** Our clock may be ahead of Discord's. */
const CLOCK_MARGIN_MS = 60_000;
const PAGE = 100;
/** Beyond this many messages a search ends. */
const PAGES = 10;
/** Direct channels remembered, so that they are not opened anew each night; Discord minds that. */
const DIRECT_CHANNELS = 5000;

/** Posts over Discord's HTTP interface, whichever door is open. */
export class DiscordPoster implements ChannelPoster {
  readonly #api: DiscordApi;
  readonly #directChannels = new Map<string, string>();
  #botId: Promise<string> | undefined;

  constructor(api: DiscordApi) {
    this.#api = api;
  }

  async send(channelId: string, reply: Reply, nonce: string): Promise<Posted> {
    if (nonce === '' || nonce.length > LIMITS.nonceCharacters) {
      throw new RangeError(`nonce has ${nonce.length} characters, not 1 to ${LIMITS.nonceCharacters}`);
    }
    const reference = referenceOf(nonce);
    try {
      return await this.#post(channelId, rendered(reply, { reference, characters: PHONE_CHARACTERS }), nonce);
    } catch (error) {
      const bare = withoutFiles(reply);
      // The right to attach may be all that is missing, and a warning without its picture beats none.
      if (!(error instanceof DiscordError && error.code === 'missing-permission') || bare === undefined) throw error;
      return this.#post(channelId, rendered(bare, { reference, characters: PHONE_CHARACTERS }), nonce);
    }
  }

  async findRecent(channelId: string, since: Date, nonce: string): Promise<Posted | undefined> {
    const botId = await this.#ownId();
    const timestamp = Math.max(since.getTime() - CLOCK_MARGIN_MS, Number(SnowflakeUtil.epoch));
    let after = SnowflakeUtil.generate({ timestamp, increment: 0n, workerId: 0n, processId: 0n }).toString();
    for (let page = 0; page < PAGES; page += 1) {
      const messages = await this.#api.call<APIMessage[]>({
        method: 'GET',
        route: Routes.channelMessages(channelId),
        query: { after, limit: String(PAGE) },
      });
      const ours = messages.find((each) => each.author.id === botId && isReferredTo(each, nonce));
      if (ours !== undefined) return { messageId: ours.id };
      if (messages.length < PAGE) return undefined;
      after = messages.map((each) => each.id).reduce((a, b) => (BigInt(a) > BigInt(b) ? a : b));
    }
    return undefined;
  }

  async direct(memberId: string, reply: Reply, nonce: string): Promise<Posted> {
    return this.send(await this.directChannelId(memberId), reply, nonce);
  }

  async directChannelId(memberId: string): Promise<string> {
    const known = this.#directChannels.get(memberId);
    if (known !== undefined) return known;
    const { id } = await this.#api.call<APIDMChannel>({
      method: 'POST',
      route: Routes.userChannels(),
      body: { recipient_id: memberId },
      // Discord gives back the channel that there is.
      repeatable: true,
    });
    const [oldest] = this.#directChannels.keys();
    if (oldest !== undefined && this.#directChannels.size >= DIRECT_CHANNELS) this.#directChannels.delete(oldest);
    this.#directChannels.set(memberId, id);
    return id;
  }

  async rights(channelId: string): Promise<readonly string[]> {
    return missingRights(this.#api, await this.#ownId(), channelId);
  }

  guildIdOf(channelId: string): Promise<string | undefined> {
    return guildIdOf(this.#api, channelId);
  }

  async #post(channelId: string, { body, files }: RenderedMessage, nonce: string): Promise<Posted> {
    const { id } = await this.#api.call<APIMessage>({
      method: 'POST',
      route: Routes.channelMessages(channelId),
      body: { ...body, nonce, enforce_nonce: true },
      files,
      // The nonce keeps a second copy from appearing.
      repeatable: true,
      withinMs: POST_WITHIN_MS,
    });
    return { messageId: id };
  }

  async #ownId(): Promise<string> {
    this.#botId ??= this.#api.call<APIUser>({ method: 'GET', route: Routes.user() }).then(({ id }) => id);
    try {
      return await this.#botId;
    } catch (error) {
      this.#botId = undefined;
      throw error;
    }
  }
}

/** Discord does not give a nonce back with older messages, so that each post carries a short one in small print. */
function referenceOf(nonce: string): string {
  return `Notice ${nonce.slice(0, REFERENCE_CHARACTERS)}`;
}

const REFERENCE_CHARACTERS = 8;

function isReferredTo(message: APIMessage, nonce: string): boolean {
  return message.content.endsWith(`-# ${referenceOf(nonce)}`);
}

function withoutFiles(reply: Reply): Reply | undefined {
  const { picture, files, ...bare } = reply;
  return picture === undefined && (files === undefined || files.length === 0) ? undefined : bare;
}
