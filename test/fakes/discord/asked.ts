import { newId } from './ids.ts';
import type { Json, SentFile } from './wire.ts';
import type { WorldChannel } from './world.ts';

/** A person at Discord, and where they are. */
export interface Asker {
  /** Default: somebody. */
  readonly userId?: string;
  readonly locale?: string;
  /** A channel in a server; without one, the direct channel with the bot. */
  readonly channel?: WorldChannel;
  /** In a conversation between other people, where the person added the bot for themselves. */
  readonly betweenPeople?: boolean;
  /** Rights of the person in the channel. */
  readonly rights?: bigint;
  readonly attachmentLimitBytes?: number;
}

export interface OfferedFile {
  readonly file: SentFile;
  readonly contentType?: string;
  /** What the host of files answers with it; 200 unless said. */
  readonly status?: number;
}

export type TypedOption = string | number | boolean | OfferedFile;

export interface TypedCommand extends Asker {
  readonly command: string;
  readonly action?: string;
  readonly options?: Readonly<Record<string, TypedOption>>;
  /** The option being typed, when suggestions are wanted. */
  readonly focused?: string;
}

/** What every interaction has. */
export function interactionBase(asker: Asker, type: number, applicationId: string, directChannelId: string): Json {
  const user = {
    id: asker.userId ?? newId(),
    username: 'grower',
    discriminator: '0',
    avatar: null,
    global_name: 'A grower',
  };
  const guildId = asker.channel?.guildId;
  const channelId = asker.channel?.id ?? directChannelId;
  const context = contextOf(asker);
  const member = {
    user,
    roles: [],
    joined_at: '2024-01-01T00:00:00.000Z',
    deaf: false,
    mute: false,
    flags: 0,
    permissions: String(asker.rights ?? 0n),
  };
  return {
    id: newId(),
    application_id: applicationId,
    type,
    token: `token-${newId()}`,
    version: 1,
    channel_id: channelId,
    channel: { id: channelId, type: asker.channel?.type ?? (context === 1 ? 1 : 3) },
    ...(guildId === undefined
      ? { user }
      : { guild_id: guildId, guild: { id: guildId, locale: 'en-US', features: [] }, guild_locale: 'en-US', member }),
    locale: asker.locale ?? 'en-US',
    app_permissions: '0',
    entitlements: [],
    authorizing_integration_owners: guildId === undefined ? { 1: user.id } : { 0: guildId },
    context,
    attachment_size_limit: asker.attachmentLimitBytes ?? 10 * 1024 * 1024,
  };
}

/** Server, direct channel with the bot, or between people. */
function contextOf(asker: Asker): number {
  if (asker.betweenPeople === true) return 2;
  return asker.channel?.guildId === undefined ? 1 : 0;
}

/**
 * Options as Discord sends them, by the registered definition.
 *
 * @param host - Keeps an offered file and tells its address.
 * @throws Error for what Discord's client would not let anybody send.
 */
export function commandData(definition: Json, typed: TypedCommand, host: (file: OfferedFile) => string): Json {
  const attachments: Record<string, Json> = {};
  const definitions = definedOptions(definition);
  const sub = definitions.find((each) => each['type'] === 1 && each['name'] === typed.action);
  if (typed.action !== undefined && sub === undefined) throw new Error(`no action ${typed.action} is registered`);
  if (typed.action === undefined && definitions.some((each) => each['type'] === 1))
    throw new Error('an action is needed');
  const own = sub === undefined ? definitions : definedOptions(sub);
  const missing = own.find((each) => each['required'] === true && typed.options?.[String(each['name'])] === undefined);
  if (missing !== undefined && typed.focused === undefined) throw new Error(`${String(missing['name'])} is required`);
  const options = Object.entries(typed.options ?? {}).map(([name, value]) => {
    const type = own.find((each) => each['name'] === name)?.['type'];
    if (type === undefined) throw new Error(`no option ${name} is registered`);
    const focused = typed.focused === name ? { focused: true } : {};
    if (typeof value !== 'object') return { name, type, value, ...focused };
    const id = newId();
    const { file, contentType } = value;
    attachments[id] = { id, filename: file.name, size: file.bytes.length, url: host(value), content_type: contentType };
    return { name, type, value: id };
  });
  return {
    id: definition['id'],
    name: definition['name'],
    type: 1,
    options: sub === undefined ? options : [{ type: 1, name: typed.action, options }],
    ...(Object.keys(attachments).length === 0 ? {} : { resolved: { attachments } }),
  };
}

function definedOptions(definition: Json): readonly Json[] {
  return (definition['options'] as readonly Json[] | undefined) ?? [];
}
