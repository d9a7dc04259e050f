import type { DiscordApi } from '../chat/discord/discord-api.ts';
import { DiscordError } from '../chat/discord/discord-error.ts';
import { missingRights } from '../chat/discord/rights.ts';
import type { Store } from '../store/store.ts';
import { type Finding, findingsOn } from './finding.ts';

const { good, look } = findingsOn('Discord');

/** Each costs up to four requests. Judgement. */
const CHANNELS_LOOKED_AT = 50;

/** Whether the bot may post in the channels that get warnings. */
export async function channelFindings(api: DiscordApi, botId: string, store: Store): Promise<readonly Finding[]> {
  const page = await store.channels.running(undefined, CHANNELS_LOOKED_AT);
  const clubs = page.filter(({ channel }) => channel.kind === 'channel');
  const findings: Finding[] = [];
  for (const { channel } of clubs) {
    const lacks = await lackingIn(api, botId, channel.id);
    if (lacks === undefined) continue;
    const todo = "Allow it in the channel's settings at Discord, or end its warnings.";
    findings.push(look(`In channel ${channel.id} the bot ${lacks}.`, todo));
  }
  if (clubs.length === 0) return [good('No channel gets warnings yet.')];
  const whole = page.length < CHANNELS_LOOKED_AT ? '' : ` the first`;
  return [...findings, good(`The rights in${whole} ${clubs.length} channels with warnings were looked at.`)];
}

async function lackingIn(api: DiscordApi, botId: string, channelId: string): Promise<string | undefined> {
  try {
    const missing = await missingRights(api, botId, channelId);
    return missing.length === 0 ? undefined : `lacks ${missing.join(', ')}`;
  } catch (error) {
    if (!(error instanceof DiscordError)) throw error;
    return `cannot post: ${error.message}`;
  }
}
