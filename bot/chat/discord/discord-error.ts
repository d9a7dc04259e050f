import { DiscordAPIError, HTTPError, RateLimitError } from 'discord.js';
import { PostError, type PostFailure } from '../../talk/channel-poster.ts';

/** A call to Discord that failed. `discordCode` is Discord's own number, where it gave one. */
export class DiscordError extends PostError {
  override readonly name = 'DiscordError';
  readonly discordCode: number | undefined;
  /** True when the request surely never reached Discord. */
  readonly neverSent: boolean;

  constructor(
    code: PostFailure,
    message: string,
    more: {
      readonly retryAfterS?: number;
      readonly cause?: unknown;
      readonly discordCode?: number;
      readonly neverSent?: boolean;
    } = {},
  ) {
    super(code, message, more);
    this.discordCode = more.discordCode;
    this.neverSent = more.neverSent ?? false;
  }
}

/** Discord's numbers that a gardener or host can do something about (topics/opcodes-and-status-codes). */
const MEANING_BY_DISCORD_CODE: Readonly<Record<number, readonly [PostFailure, string]>> = {
  10003: ['channel-gone', 'The channel does not exist any more.'],
  10004: ['channel-gone', 'The server does not exist any more.'],
  10013: ['dm-closed', 'The member does not exist any more.'],
  20016: ['rate-limited', 'The channel is in slow mode.'],
  20028: ['rate-limited', 'The channel gets too many messages.'],
  40003: ['rate-limited', 'Too many direct messages were opened.'],
  50001: ['missing-access', 'The bot cannot see the channel.'],
  50007: ['dm-closed', 'The member takes no direct messages from the bot.'],
  50013: ['missing-permission', 'The bot lacks a right in the channel.'],
  50083: ['missing-permission', 'The thread is archived.'],
  50278: ['dm-closed', 'The member shares no server with the bot.'],
  160005: ['missing-permission', 'The thread is locked.'],
};

/** Where Discord names no time. [s] */
const USUAL_WAIT_S = 60;

const NEVER_SENT_CODES = new Set(['ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'UND_ERR_CONNECT_TIMEOUT']);

/**
 * What the library threw, in our own words. The library's error is not kept as a cause: it carries the address with the
 * interaction's token and the text that was sent, and neither may reach a log.
 *
 * @param withToken - Whether the call was made with the bot's token, so that an answer of 401 speaks of it.
 */
export function discordError(error: unknown, withToken = true): DiscordError {
  if (error instanceof DiscordError) return error;
  if (error instanceof RateLimitError) {
    const retryAfterS = Math.ceil(error.retryAfter / 1000);
    return new DiscordError('rate-limited', `Discord asks to wait ${retryAfterS} s.`, { retryAfterS });
  }
  if (error instanceof DiscordAPIError) return answeredError(error, withToken);
  if (error instanceof HTTPError) {
    return new DiscordError('unavailable', `Discord answered ${error.status}.`);
  }
  // The library drops its token after an answer of 401, and every later call fails with this sentence.
  if (error instanceof Error && error.message.startsWith('Expected token to be set')) return tokenRefused();
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined;
  return new DiscordError('unavailable', 'Discord did not answer.', {
    cause: error,
    neverSent: code !== undefined && NEVER_SENT_CODES.has(code),
  });
}

function answeredError(error: DiscordAPIError, withToken: boolean): DiscordError {
  const discordCode = Number(error.code);
  if (error.status === 401 && withToken) return tokenRefused();
  const [code, message] = MEANING_BY_DISCORD_CODE[discordCode] ?? meaningOfStatus(error.status, discordCode);
  return new DiscordError(code, message, {
    discordCode,
    ...(code === 'rate-limited' ? { retryAfterS: USUAL_WAIT_S } : {}),
  });
}

function meaningOfStatus(status: number, discordCode: number): readonly [PostFailure, string] {
  const numbers = Number.isFinite(discordCode) ? `${status}, code ${discordCode}` : `${status}`;
  return status === 403
    ? ['missing-permission', `Discord forbade it (${numbers}).`]
    : ['refused', `Discord refused the request (${numbers}).`];
}

function tokenRefused(): DiscordError {
  return new DiscordError('token-refused', "Discord refused the bot's token.");
}
