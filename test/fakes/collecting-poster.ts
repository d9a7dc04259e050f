import { type ChannelPoster, PostError, type Posted, type PostFailure } from '../../bot/talk/channel-poster.ts';
import type { Reply } from '../../bot/talk/reply.ts';

export interface CollectedPost {
  readonly channelId: string;
  readonly nonce: string;
  readonly messageId: string;
  readonly reply: Reply;
  readonly text: string;
}

interface Fault {
  readonly channelId: string;
  readonly code: PostFailure;
  readonly retryAfterS?: number;
  /** The post arrives all the same. */
  readonly posted?: boolean;
  left: number;
}

/** A chat service that keeps what is posted. It knows a nonce again, and forgets nonces when told to. */
export class CollectingPoster implements ChannelPoster {
  readonly posts: CollectedPost[] = [];
  /** Calls of any kind, refused ones included. */
  sends = 0;
  searches = 0;
  /** Channels whose history may not be read. */
  readonly unreadable = new Set<string>();
  readonly #faults: Fault[] = [];
  readonly #arrived: (post: CollectedPost) => void;
  #nonces = new Map<string, Posted>();

  /** @param arrived - Hears of each post as it arrives. */
  constructor(arrived: (post: CollectedPost) => void = () => undefined) {
    this.#arrived = arrived;
  }

  fail(
    channelId: string,
    code: PostFailure,
    more: { times?: number; retryAfterS?: number; posted?: boolean } = {},
  ): void {
    const { times = Number.POSITIVE_INFINITY, ...rest } = more;
    this.#faults.push({ channelId, code, left: times, ...rest });
  }

  heal(): void {
    this.#faults.length = 0;
  }

  /** A few minutes have gone by. */
  forgetNonces(): void {
    this.#nonces = new Map();
  }

  to(channelId: string): readonly CollectedPost[] {
    return this.posts.filter((post) => post.channelId === channelId);
  }

  async send(channelId: string, reply: Reply, nonce: string): Promise<Posted> {
    this.sends += 1;
    await Promise.resolve();
    const fault = this.#faults.find((each) => each.channelId === channelId && each.left > 0);
    if (fault !== undefined) fault.left -= 1;
    if (fault === undefined || fault.posted === true) this.#post(channelId, reply, nonce);
    if (fault !== undefined) throw new PostError(fault.code, 'a fault that a test ordered', fault);
    return this.#post(channelId, reply, nonce);
  }

  async findRecent(channelId: string, _since: Date, nonce: string): Promise<Posted | undefined> {
    this.searches += 1;
    await Promise.resolve();
    if (this.unreadable.has(channelId)) throw new PostError('missing-access', 'may not read');
    return this.posts.find((post) => post.channelId === channelId && post.nonce === nonce);
  }

  async direct(memberId: string, reply: Reply, nonce: string): Promise<Posted> {
    return this.send(await this.directChannelId(memberId), reply, nonce);
  }

  async directChannelId(memberId: string): Promise<string> {
    await Promise.resolve();
    return `dm-${memberId}`;
  }

  async guildIdOf(): Promise<undefined> {
    await Promise.resolve();
    return undefined;
  }

  async rights(): Promise<readonly string[]> {
    await Promise.resolve();
    return [];
  }

  #post(channelId: string, reply: Reply, nonce: string): Posted {
    const known = this.#nonces.get(nonce);
    if (known !== undefined) return known;
    const messageId = `message-${this.posts.length + 1}`;
    const text = [reply.headline, ...reply.sections.flatMap(({ title, lines }) => [title ?? '', ...lines])].join('\n');
    const post = { channelId, nonce, messageId, reply, text };
    this.posts.push(post);
    this.#arrived(post);
    this.#nonces.set(nonce, { messageId });
    return { messageId };
  }
}
