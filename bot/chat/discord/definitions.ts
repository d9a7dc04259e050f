import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  ChannelType,
  InteractionContextType,
  PermissionFlagsBits,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord.js';
import type { Action, Command, OptionSpec } from '../../commands/command.ts';
import { LIMITS } from './limits.ts';

export type CommandDefinition = RESTPostAPIChatInputApplicationCommandsJSONBody;

/** Channels that a warning can be posted in. */
const WRITABLE_CHANNELS = [
  ChannelType.GuildText,
  ChannelType.GuildAnnouncement,
  ChannelType.PublicThread,
  ChannelType.PrivateThread,
] as const;

const NAME = /^[-_'\p{L}\p{N}]{1,32}$/u;

/**
 * The commands as Discord keeps them: in servers, in direct messages and between people, for servers and for single
 * persons who added the bot.
 *
 * @throws RangeError naming the command and the limit that it breaks: a fault of ours, found at start.
 */
export function commandDefinitions(commands: readonly Command[]): CommandDefinition[] {
  if (commands.length > LIMITS.commands) throw new RangeError(`${commands.length} commands are more than 100`);
  return commands.map(definition);
}

function definition(command: Command): CommandDefinition {
  const actions = command.action === undefined ? Object.values(command.actions) : [command.action];
  const options =
    command.action === undefined
      ? Object.entries(command.actions).map(([name, action]) => subcommand(name, action, command.name))
      : optionsOf(command.action, command.name);
  const made: CommandDefinition = {
    type: ApplicationCommandType.ChatInput,
    name: checkedName(command.name, command.name),
    description: checkedText(command.description, command.name),
    options: checkedCount(options, LIMITS.options, command.name),
    contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
    integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
    // This only hides the command, and a server's owner can change it: answering checks the right again.
    default_member_permissions: actions.every((action) => action.managersOnly === true)
      ? PermissionFlagsBits.ManageGuild.toString()
      : null,
  };
  const size = JSON.stringify(made).length;
  if (size > LIMITS.commandCharacters) throw new RangeError(`command ${command.name}: ${size} characters, not 8000`);
  return made;
}

function subcommand(name: string, action: Action, where: string): APIApplicationCommandOption {
  return {
    type: ApplicationCommandOptionType.Subcommand,
    name: checkedName(name, where),
    description: checkedText(action.description, `${where} ${name}`),
    options: optionsOf(action, `${where} ${name}`),
  };
}

/** Discord wants required options first. */
function optionsOf(action: Action, where: string): APIApplicationCommandBasicOption[] {
  const inOrder = [...action.options].sort((a, b) => Number(b.required === true) - Number(a.required === true));
  return checkedCount(inOrder, LIMITS.options, where).map((option) => optionOf(option, `${where} ${option.name}`));
}

function optionOf(spec: OptionSpec, where: string): APIApplicationCommandBasicOption {
  const base = {
    name: checkedName(spec.name, where),
    description: checkedText(spec.description, where),
    required: spec.required === true,
  };
  switch (spec.kind) {
    case 'text':
      return { ...base, type: ApplicationCommandOptionType.String, ...wording(spec, where) };
    case 'number':
      return { ...base, type: ApplicationCommandOptionType.Number };
    case 'whole-number':
      return { ...base, type: ApplicationCommandOptionType.Integer };
    case 'yes-no':
      return { ...base, type: ApplicationCommandOptionType.Boolean };
    case 'file':
      return { ...base, type: ApplicationCommandOptionType.Attachment };
    case 'channel':
      return { ...base, type: ApplicationCommandOptionType.Channel, channel_types: [...WRITABLE_CHANNELS] };
  }
}

/** Fixed choices where there are some, else completion while typing; Discord allows one of them. */
function wording(spec: OptionSpec, where: string) {
  if (spec.choices !== undefined && spec.choices.length > 0) {
    const choices = checkedCount(spec.choices, LIMITS.choices, where);
    return { choices: choices.map(({ label, value }) => ({ name: checkedText(label, where), value })) };
  }
  return spec.suggest === undefined ? {} : { autocomplete: true as const };
}

function checkedName(name: string, where: string): string {
  if (!NAME.test(name) || name !== name.toLowerCase()) {
    throw new RangeError(`command ${where}: the name "${name}" must be 1 to 32 small letters, digits or dashes`);
  }
  return name;
}

function checkedText(text: string, where: string): string {
  if (text === '' || text.length > LIMITS.descriptionCharacters) {
    throw new RangeError(`command ${where}: "${text}" must have 1 to ${LIMITS.descriptionCharacters} characters`);
  }
  return text;
}

function checkedCount<T>(things: readonly T[], most: number, where: string): T[] {
  if (things.length > most) throw new RangeError(`command ${where}: ${things.length} are more than ${most}`);
  return [...things];
}
