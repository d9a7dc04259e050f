import {
  type APIApplicationCommandInteractionDataOption,
  type APIChatInputApplicationCommandInteraction,
  type APIInteraction,
  type APIModalSubmitInteraction,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ChannelType,
  ComponentType,
  InteractionContextType,
  InteractionType,
  PermissionFlagsBits,
} from 'discord.js';
import type { OptionValue, Place, Press, Request } from '../../talk/request.ts';
import { uploadedFile } from './uploaded-file.ts';

type Option = APIApplicationCommandInteractionDataOption<
  InteractionType.ApplicationCommand | InteractionType.ApplicationCommandAutocomplete
>;
type Resolved = APIChatInputApplicationCommandInteraction['data']['resolved'];

/** What a member did, in the words that every door uses. */
export type Asked =
  | { readonly kind: 'command'; readonly request: Request }
  | { readonly kind: 'suggest'; readonly request: Request; readonly option: string; readonly typed: string }
  | { readonly kind: 'press'; readonly press: Press }
  | { readonly kind: 'unknown' };

/**
 * Discord's interaction as a neutral request. The gateway and the signed HTTP door carry the same JSON, so this one
 * function serves both.
 *
 * @param apiBase - Discord's address in use, for attachments.
 */
export function askedBy(interaction: APIInteraction, now: Date, apiBase: string): Asked {
  const who = person(interaction, now);
  if (who === undefined) return { kind: 'unknown' };
  switch (interaction.type) {
    case InteractionType.ApplicationCommand: {
      const { data } = interaction;
      if (data.type !== ApplicationCommandType.ChatInput) return { kind: 'unknown' };
      const typed = typedIn(data.options ?? [], data.resolved, apiBase);
      return { kind: 'command', request: { ...who, command: data.name, ...typed } };
    }
    case InteractionType.ApplicationCommandAutocomplete: {
      const { name, options } = interaction.data;
      const typed = typedIn(options, undefined, apiBase);
      const focused = innermost(options).find((option) => 'focused' in option && option.focused === true);
      if (focused === undefined || !('value' in focused)) return { kind: 'unknown' };
      const request: Request = { ...who, command: name, ...typed };
      return { kind: 'suggest', request, option: focused.name, typed: String(focused.value) };
    }
    case InteractionType.MessageComponent:
      return { kind: 'press', press: { ...who, buttonId: interaction.data.custom_id } };
    case InteractionType.ModalSubmit:
      return { kind: 'command', request: { ...who, ...filledIn(interaction) } };
    default:
      return { kind: 'unknown' };
  }
}

function person(interaction: APIInteraction, now: Date): Omit<Press, 'buttonId'> | undefined {
  const memberId: unknown = (interaction.member?.user ?? interaction.user)?.id;
  if (typeof memberId !== 'string') return undefined;
  const said: unknown = 'locale' in interaction ? interaction.locale : undefined;
  const locale = typeof said === 'string' ? said : 'en-US';
  return { memberId, place: placeOf(interaction, memberId), locale, mayManageChannel: mayManage(interaction), now };
}

/** A conversation between other people is no direct message: what is said there, others read. */
function placeOf(interaction: APIInteraction, memberId: string): Place {
  const channelId = interaction.channel?.id ?? interaction.channel_id;
  const guildId = interaction.guild_id;
  const withBotAlone =
    interaction.context === InteractionContextType.BotDM ||
    (interaction.context === undefined && guildId === undefined && interaction.channel?.type === ChannelType.DM);
  return {
    kind: withBotAlone ? 'direct' : 'channel',
    ...(channelId === undefined ? {} : { channelId }),
    ...(guildId === undefined ? {} : { guildId }),
    conversationId: `${channelId ?? 'nowhere'}:${memberId}`,
  };
}

function mayManage(interaction: APIInteraction): boolean {
  const rights = BigInt(interaction.member?.permissions ?? '0');
  return (rights & (PermissionFlagsBits.ManageGuild | PermissionFlagsBits.Administrator)) !== 0n;
}

function typedIn(options: readonly Option[], resolved: Resolved, apiBase: string): Pick<Request, 'action' | 'options'> {
  const [first] = options;
  const action = first?.type === ApplicationCommandOptionType.Subcommand ? { action: first.name } : {};
  const values = innermost(options).map((option) => [option.name, optionValue(option, resolved, apiBase)] as const);
  return { ...action, options: Object.fromEntries(values) };
}

/** The options themselves, whether or not they belong to a sub-command. */
function innermost(options: readonly Option[]): readonly Option[] {
  const [first] = options;
  return first?.type === ApplicationCommandOptionType.Subcommand ? (first.options ?? []) : options;
}

function optionValue(option: Option, resolved: Resolved, apiBase: string): OptionValue {
  if (!('value' in option)) return undefined;
  if (option.type !== ApplicationCommandOptionType.Attachment) return option.value;
  const attachment = resolved?.attachments?.[option.value];
  return attachment === undefined ? undefined : uploadedFile(attachment, apiBase);
}

/** A form's id names the command, and perhaps the action, that its answers fill in. */
function filledIn(interaction: APIModalSubmitInteraction): Pick<Request, 'command' | 'action' | 'options'> {
  const [command = '', action] = interaction.data.custom_id.split(' ');
  const answers: Record<string, string> = {};
  for (const part of interaction.data.components) {
    const field = part.type === ComponentType.Label ? part.component : undefined;
    if (field?.type === ComponentType.TextInput && field.value.trim() !== '') answers[field.custom_id] = field.value;
  }
  return { command, ...(action === undefined ? {} : { action }), options: answers };
}
