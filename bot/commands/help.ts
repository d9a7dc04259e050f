import { z } from 'zod';
import { PlainProblem } from '../ground/errors.ts';
import type { Reply, Section } from '../talk/reply.ts';
import { capitalised, list, saidBack } from '../text/phrases.ts';
import type { Action, Command } from './command.ts';
import { checkedOptions, maybe } from './options.ts';
import { read } from './typed/read.ts';

/** Help on the commands given and on itself. */
export function helpOn(others: readonly Command[]): Command {
  const description = 'What I can do, with an example of each';
  const help: Command = {
    name: 'help',
    description,
    action: {
      description,
      example: 'help command:bed',
      options: [
        {
          name: 'command',
          description: 'Which command; all of them in short unless you say',
          kind: 'text',
          choices: others.map(({ name }) => ({ label: name, value: name })),
        },
      ],
      private: true,
      async run(request) {
        const { command: typed } = checkedOptions(request, z.object({ command: maybe(read) }));
        return typed === undefined ? overview([...others, help]) : inFull(typed, [...others, help]);
      },
    },
  };
  return help;
}

function overview(commands: readonly Command[]): Reply {
  return {
    headline: 'Ask me whether your crops live through the night, and what to do before dark.',
    sections: [
      { lines: commands.map(({ name, description }) => `/${name}: ${description}.`) },
      { lines: ['For one of them with its examples: /help command:bed.'] },
    ],
    private: true,
  };
}

function inFull(typed: string, commands: readonly Command[]): Reply {
  // "bed add" is found under bed.
  const [wanted] = typed.toLowerCase().replace(/^\//, '').split(' ');
  const command = commands.find(({ name }) => name === wanted);
  if (command === undefined) {
    const names = list(commands.map(({ name }) => name));
    throw new PlainProblem(`There is no command "${saidBack(typed)}". There are ${names}.`);
  }
  const actions =
    command.action === undefined ? Object.entries(command.actions) : [[undefined, command.action] as const];
  return {
    headline: `/${command.name}: ${command.description}.`,
    sections: actions.map(([name, action]) => section(name, action)),
    private: true,
  };
}

function section(name: string | undefined, action: Action): Section {
  const managers = action.managersOnly === true ? ' For who may manage the server.' : '';
  const lines = [
    ...(name === undefined ? [] : [`${action.description}.${managers}`]),
    ...optionLine(action),
    `Example: /${action.example}`,
  ];
  return name === undefined ? { lines } : { title: name, lines };
}

/** "Needs crop and low; may have covers and hardened." */
function optionLine({ options }: Action): string[] {
  const needed = options.filter(({ required }) => required === true).map(({ name }) => name);
  const free = options.filter(({ required }) => required !== true).map(({ name }) => name);
  const parts = [
    ...(needed.length === 0 ? [] : [`needs ${list(needed)}`]),
    ...(free.length === 0 ? [] : [`may have ${list(free)}`]),
  ];
  return parts.length === 0 ? [] : [`${capitalised(parts.join('; '))}.`];
}
