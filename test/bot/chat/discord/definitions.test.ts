import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { commandDefinitions } from '../../../../bot/chat/discord/definitions.ts';
import { DiscordApi } from '../../../../bot/chat/discord/discord-api.ts';
import { registerCommands } from '../../../../bot/chat/discord/registration.ts';
import type { Action, Command, OptionSpec } from '../../../../bot/commands/command.ts';
import { commandProblems } from '../../../fakes/discord/documented-limits.ts';
import { DiscordDouble } from '../../../fakes/discord/double.ts';
import { said, smallDesk } from './small-desk.ts';

let double: DiscordDouble;
let api: DiscordApi;
beforeAll(async () => {
  double = await DiscordDouble.open();
  api = new DiscordApi({ token: double.token, apiBase: double.apiBase, onTokenRefused: () => undefined });
});
beforeEach(() => {
  double.commands = [];
  double.requests.length = 0;
});
afterAll(async () => {
  expect(double.problems).toEqual([]);
  api.close();
  await double.close();
});

const action = (more: Partial<Action> = {}): Action => ({
  description: 'Does it',
  options: [],
  example: 'do',
  private: true,
  run: async () => said('done'),
  ...more,
});
const one = (more: Partial<Action> = {}): Command => ({ name: 'do', description: 'Does it', action: action(more) });
const option = (more: Partial<OptionSpec> = {}): OptionSpec => ({
  name: 'what',
  description: 'What',
  kind: 'text',
  ...more,
});
const register = (commands: readonly Command[]) =>
  registerCommands(api, double.applicationId, commandDefinitions(commands));

test('the commands of these tests keep Discord’s limits', () => {
  expect(commandProblems(commandDefinitions(smallDesk().desk.commands).map((each) => ({ ...each })))).toEqual([]);
});

test('commands work in servers, with the bot and between people, for servers and for persons', () => {
  expect(commandDefinitions([one()])[0]).toMatchObject({ contexts: [0, 1, 2], integration_types: [0, 1] });
});

test('a command is hidden from others only where all of it is for managers', () => {
  const mixed: Command = {
    name: 'mix',
    description: 'Both',
    actions: { see: action(), set: action({ managersOnly: true }) },
  };
  const [all, part] = commandDefinitions([one({ managersOnly: true }), mixed]);
  expect([all?.default_member_permissions, part?.default_member_permissions]).toEqual(['32', null]);
});

test('required options come first, choices and suggestions never together', () => {
  const suggest = async () => [];
  const [made] = commandDefinitions([
    one({
      options: [
        option({ name: 'a', suggest }),
        option({ name: 'b', required: true }),
        option({ name: 'c', choices: [{ label: 'Moist', value: 'moist' }], suggest }),
      ],
    }),
  ]);
  expect(made?.options).toEqual([
    { type: 3, name: 'b', description: 'What', required: true },
    { type: 3, name: 'a', description: 'What', required: false, autocomplete: true },
    { type: 3, name: 'c', description: 'What', required: false, choices: [{ name: 'Moist', value: 'moist' }] },
  ]);
});

test.each<[string, Command]>([
  ['a name in capitals', { ...one(), name: 'Do' }],
  ['a name with a blank', { ...one(), name: 'do it' }],
  ['no description', { ...one(), description: '' }],
  ['a long description of an option', one({ options: [option({ description: 'x'.repeat(101) })] })],
  ['26 options', one({ options: Array.from({ length: 26 }, (_, n) => option({ name: `o${n}` })) })],
  [
    '26 choices',
    one({ options: [option({ choices: Array.from({ length: 26 }, (_, n) => ({ label: `${n}`, value: `${n}` })) })] }),
  ],
])('%s is refused before Discord could', (_name, command) => {
  expect(() => commandDefinitions([command])).toThrow(RangeError);
});

test('commands are sent once, and again only when something about them changes', async () => {
  const { commands } = smallDesk().desk;
  expect(await register(commands)).toBe('changed');
  expect(await register(commands)).toBe('unchanged');
  expect(await register([...commands].reverse())).toBe('unchanged');
  expect(double.asked('PUT', /commands$/)).toHaveLength(1);
});

test.each<[string, Command, Command]>([
  ['a description', one(), { ...one(), description: 'Does it well' }],
  ['an option', one(), one({ options: [option()] })],
  ['whether an option is required', one({ options: [option()] }), one({ options: [option({ required: true })] })],
  ['suggestions', one({ options: [option()] }), one({ options: [option({ suggest: async () => [] })] })],
  ['the rights', one(), one({ managersOnly: true })],
  [
    'the order of options',
    one({ options: [option({ name: 'a' }), option({ name: 'b' })] }),
    one({ options: [option({ name: 'b' }), option({ name: 'a' })] }),
  ],
])('a change of %s is sent', async (_name, before, after) => {
  await register([before]);
  expect(await register([after])).toBe('changed');
  expect(await register([after])).toBe('unchanged');
});

test('a command that we do not have any more disappears', async () => {
  await register([one(), { ...one(), name: 'old' }]);
  await register([one()]);
  expect(double.commands.map((command) => command['name'])).toEqual(['do']);
});
