import { PlainProblem } from '../../ground/errors.ts';
import { PostError } from '../../talk/channel-poster.ts';
import { list } from '../../text/phrases.ts';
import type { Services } from '../services.ts';
import type { Target } from './target.ts';

/**
 * Makes sure that the channel is one of this server, and that the bot may post there.
 *
 * @throws PlainProblem that names the rights it lacks.
 */
export async function refuseWithoutRights({ poster }: Services, { id, words, guildId }: Target): Promise<void> {
  if (poster === undefined) throw new PlainProblem('There is nothing here to post warnings with; they need Discord.');
  try {
    // Whoever types an id may name any channel where the bot is.
    const theirs = await poster.guildIdOf(id);
    if (theirs !== undefined && theirs !== guildId) {
      throw new PlainProblem('That channel belongs to another server. Choose a channel of this one.');
    }
    const missing = await poster.rights(id);
    if (missing.length === 0) return;
    throw new PlainProblem(
      `I may not post ${words} yet: I lack ${list(missing)}. Give me that in the channel’s settings, then start again.`,
    );
  } catch (error) {
    throw error instanceof PostError ? (sentence(error) ?? error) : error;
  }
}

function sentence({ code }: PostError): PlainProblem | undefined {
  if (code === 'channel-gone') return new PlainProblem('That channel is not there any more; choose another.');
  if (code === 'missing-access' || code === 'missing-permission') {
    return new PlainProblem('I cannot see that channel: give me View Channel there, then start again.');
  }
  if (code === 'unavailable' || code === 'rate-limited') {
    return new PlainProblem('Discord does not tell me my rights just now; nothing was changed. Try again in a minute.');
  }
  return undefined;
}
