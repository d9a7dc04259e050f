import {
  type APIChannel,
  type APIGuildMember,
  type APIOverwrite,
  type APIRole,
  PermissionFlagsBits,
  Routes,
} from 'discord.js';
import type { DiscordApi } from './discord-api.ts';
import { DiscordError } from './discord-error.ts';

/** What a post needs, by the names in Discord's settings. History: to find an earlier post after a fault. */
const NEEDED = [
  ['View Channel', PermissionFlagsBits.ViewChannel],
  ['Send Messages', PermissionFlagsBits.SendMessages],
  ['Attach Files', PermissionFlagsBits.AttachFiles],
  ['Read Message History', PermissionFlagsBits.ReadMessageHistory],
] as const;

const NEEDED_IN_THREAD = NEEDED.map(([name, bit]) =>
  name === 'Send Messages'
    ? (['Send Messages in Threads', PermissionFlagsBits.SendMessagesInThreads] as const)
    : ([name, bit] as const),
);

/** The rights that the bot lacks to post in the channel, by name. */
export async function missingRights(api: DiscordApi, botId: string, channelId: string): Promise<readonly string[]> {
  const channel = await visibleChannel(api, channelId);
  if (channel === undefined) return NEEDED.map(([name]) => name);
  if (!('guild_id' in channel) || channel.guild_id === undefined) return [];
  const isThread = 'thread_metadata' in channel;
  const carrier = isThread && channel.parent_id ? await visibleChannel(api, channel.parent_id) : channel;
  const [roles, member] = await Promise.all([
    api.call<APIRole[]>({ method: 'GET', route: Routes.guildRoles(channel.guild_id) }),
    api.call<APIGuildMember>({ method: 'GET', route: Routes.guildMember(channel.guild_id, botId) }),
  ]);
  const overwrites =
    carrier !== undefined && 'permission_overwrites' in carrier ? (carrier.permission_overwrites ?? []) : [];
  const rights = rightsIn(overwrites, { roles, memberRoleIds: member.roles, botId, guildId: channel.guild_id });
  return (isThread ? NEEDED_IN_THREAD : NEEDED).filter(([, bit]) => (rights & bit) === 0n).map(([name]) => name);
}

/** The server of a channel; undefined where the bot cannot see it, or it belongs to none. */
export async function guildIdOf(api: DiscordApi, channelId: string): Promise<string | undefined> {
  const channel = await visibleChannel(api, channelId);
  return channel !== undefined && 'guild_id' in channel ? channel.guild_id : undefined;
}

async function visibleChannel(api: DiscordApi, channelId: string): Promise<APIChannel | undefined> {
  try {
    return await api.call<APIChannel>({ method: 'GET', route: Routes.channel(channelId) });
  } catch (error) {
    if (error instanceof DiscordError && error.code === 'missing-access') return undefined;
    throw error;
  }
}

interface Holder {
  readonly roles: readonly APIRole[];
  readonly memberRoleIds: readonly string[];
  readonly botId: string;
  readonly guildId: string;
}

/** Discord's order (topics/permissions): roles together, then the channel's exceptions for all, for roles, for the member. */
function rightsIn(overwrites: readonly APIOverwrite[], holder: Holder): bigint {
  const held = new Set([holder.guildId, ...holder.memberRoleIds]);
  let rights = holder.roles
    .filter((role) => held.has(role.id))
    .reduce((sum, role) => sum | BigInt(role.permissions), 0n);
  if ((rights & PermissionFlagsBits.Administrator) !== 0n) return ALL_RIGHTS;
  const layers = [[holder.guildId], holder.memberRoleIds, [holder.botId]];
  for (const ids of layers) {
    const own = overwrites.filter((each) => ids.includes(each.id));
    const deny = own.reduce((sum, each) => sum | BigInt(each.deny), 0n);
    const allow = own.reduce((sum, each) => sum | BigInt(each.allow), 0n);
    rights = (rights & ~deny) | allow;
  }
  return rights;
}

const ALL_RIGHTS = Object.values(PermissionFlagsBits).reduce((sum, bit) => sum | bit, 0n);
