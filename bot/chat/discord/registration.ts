import { type APIApplicationCommand, Routes } from 'discord.js';
import type { CommandDefinition } from './definitions.ts';
import type { DiscordApi } from './discord-api.ts';

/**
 * Makes Discord's list of our commands what it should be: looks first, and sends nothing when it is so already. What we
 * do not have any more disappears there.
 */
export async function registerCommands(
  api: DiscordApi,
  applicationId: string,
  wanted: readonly CommandDefinition[],
): Promise<'changed' | 'unchanged'> {
  const route = Routes.applicationCommands(applicationId);
  const present = await api.call<APIApplicationCommand[]>({ method: 'GET', route });
  if (fingerprint(present) === fingerprint(wanted)) return 'unchanged';
  await api.call({ method: 'PUT', route, body: wanted });
  return 'changed';
}

/** What matters of a list of commands, whoever wrote it down: Discord adds ids, and leaves out or fills in what is usual. */
export function fingerprint(commands: readonly object[]): string {
  const sorted = commands.map((command) => essential(command, COMMAND_DEFAULTS)).map((each) => JSON.stringify(each));
  return JSON.stringify(sorted.sort());
}

type Defaults = Readonly<Record<string, unknown>>;

const COMMAND_DEFAULTS: Defaults = {
  type: 1,
  name: '',
  description: '',
  options: [],
  contexts: null,
  integration_types: [0],
  default_member_permissions: null,
  nsfw: false,
};

const OPTION_DEFAULTS: Defaults = {
  type: 0,
  name: '',
  description: '',
  required: false,
  autocomplete: false,
  choices: [],
  options: [],
  channel_types: [],
  min_value: null,
  max_value: null,
  min_length: null,
  max_length: null,
};

const CHOICE_DEFAULTS: Defaults = { name: '', value: '' };

function essential(given: object, defaults: Defaults): Defaults {
  const fields = given as Record<string, unknown>;
  return Object.fromEntries(
    Object.entries(defaults).map(([name, usual]) => [name, essentialValue(name, fields[name] ?? usual)]),
  );
}

function essentialValue(name: string, value: unknown): unknown {
  if (!Array.isArray(value)) return value;
  if (name === 'options') return value.map((option: object) => essential(option, OPTION_DEFAULTS));
  if (name === 'choices') return value.map((choice: object) => essential(choice, CHOICE_DEFAULTS));
  // Contexts and kinds of channels are sets.
  return value.map(String).sort();
}
