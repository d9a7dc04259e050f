import { newId } from './ids.ts';
import type { Json, SentFile } from './wire.ts';

export interface WorldRole {
  readonly id: string;
  readonly permissions: bigint;
}

export interface WorldOverwrite {
  readonly id: string;
  readonly allow?: bigint;
  readonly deny?: bigint;
}

export interface WorldMessage {
  readonly id: string;
  readonly channelId: string;
  readonly authorId: string;
  readonly body: Json;
  readonly files: readonly SentFile[];
  /** Only Discord knows it: it is not given back with older messages. */
  readonly nonce?: string;
  readonly atMs: number;
}

export interface WorldChannel {
  readonly id: string;
  readonly type: number;
  readonly guildId?: string;
  /** Of a thread. */
  readonly parentId?: string;
  /** Of a direct channel. */
  readonly recipientId?: string;
  overwrites: readonly WorldOverwrite[];
  deleted: boolean;
  readonly messages: WorldMessage[];
}

export interface WorldGuild {
  readonly id: string;
  readonly roles: WorldRole[];
  /** Roles of the bot there, besides the one for all, which has the guild's own id. */
  botRoleIds: string[];
}

/** What members may do unless said: View Channel, Send Messages, Attach Files, Read Message History, in threads too. */
export const USUAL_RIGHTS = (1n << 10n) | (1n << 11n) | (1n << 15n) | (1n << 16n) | (1n << 38n);
export const ADMINISTRATOR = 1n << 3n;
export const MANAGE_GUILD = 1n << 5n;
const VIEW_CHANNEL = 1n << 10n;
const SEND_MESSAGES = 1n << 11n;
const ATTACH_FILES = 1n << 15n;
const SEND_IN_THREADS = 1n << 38n;

/** Servers, channels and messages: what is there besides the bot. */
export class World {
  readonly botId = newId();
  readonly guilds = new Map<string, WorldGuild>();
  readonly channels = new Map<string, WorldChannel>();
  /** Members who take no direct messages. */
  readonly closedTo = new Set<string>();

  addGuild(rights = USUAL_RIGHTS): WorldGuild {
    const id = newId();
    const guild: WorldGuild = { id, roles: [{ id, permissions: rights }], botRoleIds: [] };
    this.guilds.set(id, guild);
    return guild;
  }

  addChannel(guildId: string, more: { readonly type?: number; readonly parentId?: string } = {}): WorldChannel {
    const made = { id: newId(), guildId, overwrites: [], deleted: false, messages: [] };
    const channel: WorldChannel = { type: 0, ...made, ...more };
    this.channels.set(channel.id, channel);
    return channel;
  }

  directChannel(memberId: string): WorldChannel {
    const present = [...this.channels.values()].find((channel) => channel.recipientId === memberId);
    if (present !== undefined) return present;
    const made: WorldChannel = {
      id: newId(),
      type: 1,
      recipientId: memberId,
      overwrites: [],
      deleted: false,
      messages: [],
    };
    this.channels.set(made.id, made);
    return made;
  }

  /** Why the bot may not post there, as Discord's code; undefined when it may. */
  postProblem(channel: WorldChannel, withFiles: boolean): number | undefined {
    if (channel.recipientId !== undefined) return this.closedTo.has(channel.recipientId) ? 50007 : undefined;
    const rights = this.botRights(channel);
    if ((rights & VIEW_CHANNEL) === 0n) return 50001;
    const writing = channel.parentId === undefined ? SEND_MESSAGES : SEND_IN_THREADS;
    if ((rights & writing) === 0n) return 50013;
    return withFiles && (rights & ATTACH_FILES) === 0n ? 50013 : undefined;
  }

  canSee(channel: WorldChannel): boolean {
    return channel.guildId === undefined || (this.botRights(channel) & VIEW_CHANNEL) !== 0n;
  }

  /** Discord's documented order of roles and exceptions, for the bot. */
  botRights(channel: WorldChannel): bigint {
    const guild = this.guilds.get(channel.guildId ?? '');
    if (guild === undefined) return 0n;
    const own = guild.roles.filter((role) => role.id === guild.id || guild.botRoleIds.includes(role.id));
    const together = own.reduce((sum, role) => sum | role.permissions, 0n);
    if ((together & ADMINISTRATOR) !== 0n) return -1n;
    const holder = channel.parentId === undefined ? channel : (this.channels.get(channel.parentId) ?? channel);
    const forAll = excepted(together, holder, [guild.id]);
    const forRoles = excepted(forAll, holder, guild.botRoleIds);
    return excepted(forRoles, holder, [this.botId]);
  }
}

/** Exceptions of one layer: all that it denies, then all that it allows. */
function excepted(rights: bigint, channel: WorldChannel, ids: readonly string[]): bigint {
  let left = rights;
  const layer = channel.overwrites.filter((each) => ids.includes(each.id));
  for (const each of layer) left &= ~(each.deny ?? 0n);
  for (const each of layer) left |= each.allow ?? 0n;
  return left;
}
