import { newId } from './ids.ts';
import type { Answer, RecordedRequest } from './wire.ts';
import { type Json, refusal } from './wire.ts';
import type { World, WorldChannel, WorldMessage } from './world.ts';

/** How long a nonce is remembered; Discord says "a few minutes". */
const NONCE_WINDOW_MS = 120_000;

/** Messages in channels: posted, deduplicated by nonce, read back. */
export class Messages {
  readonly #world: World;
  /** Posts to one channel in a window, where a test limits them. */
  limit: { readonly most: number; readonly windowMs: number } | undefined;
  /** Posts that came although the headers had said no. */
  limitViolations = 0;
  readonly #windows = new Map<string, { count: number; endsMs: number }>();

  constructor(world: World) {
    this.#world = world;
  }

  post(channelId: string, request: RecordedRequest): Answer {
    const channel = this.#world.channels.get(channelId);
    if (channel === undefined || channel.deleted) return refusal(404, 10003, 'Unknown Channel');
    const problem = this.#world.postProblem(channel, request.files.length > 0);
    if (problem !== undefined) return refusal(403, problem, 'Missing');
    const limited = this.#limited(channelId);
    if (limited?.status === 429) return limited;
    const body = request.body as Json;
    const nonce = body['nonce'] === undefined ? undefined : String(body['nonce']);
    const present = body['enforce_nonce'] === true ? this.#withNonce(channel, nonce) : undefined;
    const message = present ?? this.#added(channel, body, nonce, request);
    return { status: 200, json: { ...this.asJson(message), nonce }, headers: limited?.headers ?? {} };
  }

  /** The newest first, as Discord gives them; with `after`, those right after it. */
  list(channelId: string, query: URLSearchParams): Answer {
    const channel = this.#world.channels.get(channelId);
    if (channel === undefined || channel.deleted) return refusal(404, 10003, 'Unknown Channel');
    if (!this.#world.canSee(channel)) return refusal(403, 50001, 'Missing Access');
    const limit = Number(query.get('limit') ?? 50);
    const after = query.get('after');
    const inOrder = channel.messages.filter((message) => after === null || BigInt(message.id) > BigInt(after));
    const chosen = after === null ? inOrder.slice(-limit) : inOrder.slice(0, limit);
    return { status: 200, json: chosen.reverse().map((message) => this.asJson(message)) };
  }

  asJson(message: WorldMessage): Json {
    const { nonce: _nonce, enforce_nonce: _enforce, attachments: _sent, ...shown } = message.body;
    return {
      content: '',
      components: [],
      ...shown,
      id: message.id,
      channel_id: message.channelId,
      type: 0,
      author: {
        id: message.authorId,
        username: 'eiderdown',
        discriminator: '0',
        avatar: null,
        bot: true,
        global_name: null,
      },
      timestamp: new Date(message.atMs).toISOString(),
      edited_timestamp: null,
      tts: false,
      mention_everyone: false,
      mentions: [],
      mention_roles: [],
      embeds: [],
      pinned: false,
      attachments: message.files.map((file) => ({
        id: newId(),
        filename: file.name,
        size: file.bytes.length,
        url: `https://cdn.discordapp.com/${file.name}`,
        proxy_url: `https://media.discordapp.net/${file.name}`,
      })),
    };
  }

  #added(channel: WorldChannel, body: Json, nonce: string | undefined, request: RecordedRequest): WorldMessage {
    const message: WorldMessage = {
      id: newId(),
      channelId: channel.id,
      authorId: this.#world.botId,
      body,
      files: request.files,
      atMs: Date.now(),
      ...(nonce === undefined ? {} : { nonce }),
    };
    channel.messages.push(message);
    return message;
  }

  #withNonce(channel: WorldChannel, nonce: string | undefined): WorldMessage | undefined {
    const since = Date.now() - NONCE_WINDOW_MS;
    return nonce === undefined ? undefined : channel.messages.find((each) => each.nonce === nonce && each.atMs > since);
  }

  /** Headers of the channel's bucket, or 429 for a client that did not read them. */
  #limited(channelId: string): Answer | undefined {
    if (this.limit === undefined) return undefined;
    const now = Date.now();
    let window = this.#windows.get(channelId);
    if (window === undefined || window.endsMs <= now) {
      window = { count: 0, endsMs: now + this.limit.windowMs };
      this.#windows.set(channelId, window);
    }
    const resetAfterS = (window.endsMs - now) / 1000;
    window.count += 1;
    const headers = {
      'x-ratelimit-limit': String(this.limit.most),
      'x-ratelimit-remaining': String(Math.max(0, this.limit.most - window.count)),
      'x-ratelimit-reset-after': resetAfterS.toFixed(3),
      'x-ratelimit-reset': String(window.endsMs / 1000),
      'x-ratelimit-bucket': 'channel-messages',
    };
    if (window.count <= this.limit.most) return { status: 200, headers };
    this.limitViolations += 1;
    const json = { message: 'You are being rate limited.', retry_after: resetAfterS, global: false };
    return { status: 429, json, headers: { ...headers, 'retry-after': String(Math.ceil(resetAfterS)) } };
  }
}
