import type { Reply } from './reply.ts';

/** Why a post did not arrive; what to do about it follows from the code alone. */
export const POST_FAILURES = [
  /** The bot cannot see the channel: stop posting there and tell who set it up. */
  'missing-access',
  /** It sees the channel but may not write or attach: tell which right is missing. */
  'missing-permission',
  /** The channel, thread or server is gone: stop posting there. */
  'channel-gone',
  /** The member takes no direct messages from the bot. */
  'dm-closed',
  /** Too many posts: again after `retryAfterS`. */
  'rate-limited',
  /** No answer, or a fault at the service: again soon, with the same nonce. */
  'unavailable',
  /** The bot's token is not valid any more: the program must end. */
  'token-refused',
  /** The service found the post itself faulty: ours to put right, no use in repeating it. */
  'refused',
] as const;

export type PostFailure = (typeof POST_FAILURES)[number];

/** A post that did not arrive. The message holds no text of the post, no token and no address. */
export class PostError extends Error {
  override readonly name: string = 'PostError';
  readonly code: PostFailure;
  readonly retryAfterS: number | undefined;

  constructor(
    code: PostFailure,
    message: string,
    more: { readonly retryAfterS?: number | undefined; readonly cause?: unknown } = {},
  ) {
    super(message, more.cause === undefined ? undefined : { cause: more.cause });
    this.code = code;
    this.retryAfterS = more.retryAfterS;
  }
}

export interface Posted {
  readonly messageId: string;
}

/** Posts that nobody asked for a moment ago: warnings, plans. Every failure is a `PostError`. */
export interface ChannelPoster {
  /** Posts once: repeated with the same nonce (at most 25 characters) within a few minutes, it gives back the first post. */
  send(channelId: string, reply: Reply, nonce: string): Promise<Posted>;
  /**
   * Looks for what an earlier `send` with this nonce left in the channel, for when the nonce may have been forgotten.
   *
   * @param since - Wall-clock time before which nothing of ours can be.
   */
  findRecent(channelId: string, since: Date, nonce: string): Promise<Posted | undefined>;
  /** Posts to the member alone, once as `send` does. */
  direct(memberId: string, reply: Reply, nonce: string): Promise<Posted>;
  /** The member's own channel, for `findRecent`. */
  directChannelId(memberId: string): Promise<string>;
  /** The server that the channel belongs to; undefined where the bot cannot see it, or it belongs to none. */
  guildIdOf(channelId: string): Promise<string | undefined>;
  /** What the bot lacks to post in the channel, in the words that the service's settings use; empty when nothing. */
  rights(channelId: string): Promise<readonly string[]>;
}
