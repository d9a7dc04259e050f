import { PlainProblem } from '../../ground/errors.ts';
import type { Channel, ChannelKind } from '../../store/port/channels.ts';
import type { Store } from '../../store/store.ts';
import type { Request } from '../../talk/request.ts';
import type { OptionSpec } from '../command.ts';
import { maybe } from '../options.ts';
import { read, unread } from '../typed/read.ts';

/** Where warnings are to go, or go. */
export interface Target {
  readonly id: string;
  readonly kind: ChannelKind;
  readonly guildId: string | undefined;
  /** "in this channel", "in that channel", "to you". */
  readonly words: string;
}

export const channelOption: OptionSpec = {
  name: 'channel',
  description: 'Which channel; this one unless you say',
  kind: 'channel',
};

export const channelSchema = maybe((text) =>
  /^\d{15,21}$/.test(text) ? read(text) : unread('Choose a channel of this server.'),
);

/**
 * The channel that is meant; in direct messages that conversation itself.
 *
 * @throws PlainProblem where no warning could be posted.
 */
export function targetOf({ place }: Pick<Request, 'place'>, chosen: string | undefined): Target {
  if (place.kind === 'terminal' || place.channelId === undefined) {
    throw new PlainProblem('There is no channel here to post warnings in; they need the bot at Discord.');
  }
  if (place.kind === 'direct') {
    if (chosen !== undefined) throw new PlainProblem('Give this command in the server of that channel.');
    return { id: place.channelId, kind: 'direct', guildId: undefined, words: 'to you' };
  }
  if (place.guildId === undefined) {
    throw new PlainProblem('I cannot post between people: give this command in a server’s channel, or to me alone.');
  }
  const words = chosen === undefined || chosen === place.channelId ? 'in this channel' : 'in that channel';
  return { id: chosen ?? place.channelId, kind: 'channel', guildId: place.guildId, words };
}

/** The subscription there, if any; one of another server is none. */
export async function subscriptionAt(store: Store, target: Target): Promise<Channel | undefined> {
  const channel = await store.channels.find(target.id);
  return channel?.guildId === target.guildId ? channel : undefined;
}

/** @throws PlainProblem when there is none. */
export async function neededSubscription(store: Store, target: Target): Promise<Channel> {
  const channel = await subscriptionAt(store, target);
  if (channel !== undefined) return channel;
  const who = target.kind === 'direct' ? '' : ' Who may manage the server can do that.';
  throw new PlainProblem(`No warnings come ${target.words} yet: they start with /warnings start.${who}`);
}
