import type { Action, Command, OptionSpec, Suggestion } from '../../commands/command.ts';
import type { Services } from '../../commands/services.ts';
import { suggestCover } from '../../commands/suggest/suggest-covers.ts';
import { suggestCrops } from '../../commands/suggest/suggest-crops.ts';
import type { Request } from '../../talk/request.ts';

/** What a line may go on with, and the end of it that each of them would take the place of. */
export type Completed = readonly [hits: readonly string[], fragment: string];

type Asking = Omit<Request, 'command' | 'action' | 'options'>;

export interface CompletionDesk {
  readonly commands: readonly Command[];
  readonly services: Services;
  /** Words of the door itself, such as `quit`. */
  readonly doorWords: readonly string[];
}

/** Fewer letters begin too many names. */
const FEWEST_LETTERS = 2;

/** Completes commands, actions, options and their values, and in a question the names of crops and covers. */
export async function completion(line: string, asking: Asking, desk: CompletionDesk): Promise<Completed> {
  const slash = line.startsWith('/') ? '/' : '';
  const words = line.slice(slash.length).split(' ');
  const [first = ''] = words;
  if (words.length === 1) return begun(first, [...desk.commands.map(({ name }) => name), ...desk.doorWords]);
  const command = desk.commands.find(({ name }) => name === first.toLowerCase());
  if (command === undefined) return inQuestion(line, asking, desk);
  if (command.action !== undefined) return ofAction(line, { command: command.name }, command.action, asking, desk);
  const [, second = ''] = words;
  if (words.length === 2) return begun(second, Object.keys(command.actions));
  const action = command.actions[second.toLowerCase()];
  const named = { command: command.name, action: second.toLowerCase() };
  return action === undefined ? inQuestion(line, asking, desk) : ofAction(line, named, action, asking, desk);
}

/** The value of the last option named, or the next option's name. */
async function ofAction(
  line: string,
  named: Pick<Request, 'command' | 'action'>,
  action: Action,
  asking: Asking,
  desk: CompletionDesk,
): Promise<Completed> {
  const { option, typed } = lastOption(line, action.options);
  const next = begun(lastWord(line), unused(line, action.options));
  if (option === undefined) return next[0].length > 0 ? next : inQuestion(line, asking, desk);
  const values = await valuesOf(option, typed, { ...asking, ...named, options: {} }, desk.services);
  const hits = begun(
    typed,
    values.map(({ label }) => label),
  )[0].map(quoted);
  return hits.length > 0 ? [hits, line.slice(line.lastIndexOf(`${option.name}:`) + option.name.length + 1)] : next;
}

function lastOption(line: string, options: readonly OptionSpec[]): { option?: OptionSpec; typed: string } {
  const places = options
    .map((option) => ({ option, at: line.lastIndexOf(` ${option.name}:`) }))
    .filter(({ at }) => at >= 0)
    .sort((one, other) => other.at - one.at);
  const [last] = places;
  if (last === undefined) return { typed: '' };
  const typed = line.slice(last.at + last.option.name.length + 2).replace(/^"/, '');
  return { option: last.option, typed };
}

async function valuesOf(
  option: OptionSpec,
  typed: string,
  request: Request,
  services: Services,
): Promise<readonly Suggestion[]> {
  if (option.choices !== undefined) return option.choices;
  return (await option.suggest?.(typed, request, services)) ?? [];
}

function unused(line: string, options: readonly OptionSpec[]): readonly string[] {
  return options.map(({ name }) => `${name}:`).filter((name) => !line.includes(` ${name}`));
}

/** The last two words of a question as a crop or a cover ("low tu"), else the last one. */
async function inQuestion(line: string, asking: Asking, desk: CompletionDesk): Promise<Completed> {
  const words = line.split(' ');
  const two = await named(words.slice(-2).join(' '), asking, desk);
  return words.length > 1 && two[0].length === 0 ? named(words.at(-1) ?? '', asking, desk) : two;
}

async function named(fragment: string, asking: Asking, { services }: CompletionDesk): Promise<Completed> {
  if (fragment.length < FEWEST_LETTERS) return [[], fragment];
  const request = { ...asking, command: 'ask', options: {} };
  const [crops, covers] = await Promise.all([
    suggestCrops(fragment, request, services),
    suggestCover(fragment, request, services),
  ]);
  return begun(
    fragment,
    [...crops, ...covers].map(({ label }) => label.toLowerCase()),
  );
}

function lastWord(line: string): string {
  return line.slice(line.lastIndexOf(' ') + 1);
}

function begun(fragment: string, names: readonly string[]): Completed {
  const small = fragment.toLowerCase();
  return [[...new Set(names)].filter((name) => name.toLowerCase().startsWith(small)), fragment];
}

function quoted(value: string): string {
  return value.includes(' ') ? `"${value}"` : value;
}
