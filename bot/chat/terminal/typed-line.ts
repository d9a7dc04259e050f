import type { Action, Command } from '../../commands/command.ts';
import type { OptionValue } from '../../talk/request.ts';
import { saidBack } from '../../text/phrases.ts';

/** A line that names a command, taken apart. */
export interface TypedCommand {
  readonly command: string;
  readonly action?: string;
  readonly options: Readonly<Record<string, OptionValue>>;
}

export type TypedLine =
  | { readonly ok: true; readonly value: TypedCommand }
  | { readonly ok: false; readonly problem: string };

/**
 * Reads a typed line. `check crop:spinach low:14F covers:"row cover, low tunnel"` names a command; a leading slash is
 * allowed; a command with one text option takes the rest of the line; anything else is a question for `ask`.
 */
export function typedLine(line: string, commands: readonly Command[]): TypedLine {
  const text = line.trim();
  const words = splitWords(text.startsWith('/') ? text.slice(1) : text);
  const [first, second, ...others] = words;
  const command = commands.find((each) => each.name === first?.toLowerCase());
  if (command === undefined || first === undefined) return text.startsWith('/') ? stray(first, commands) : asked(text);
  if (command.action !== undefined) return withOptions({ command: command.name }, command.action, words.slice(1));
  const action = second === undefined ? undefined : command.actions[second.toLowerCase()];
  if (action !== undefined && second !== undefined) {
    return withOptions({ command: command.name, action: second.toLowerCase() }, action, others);
  }
  const names = Object.keys(command.actions).join(', ');
  return looksLikeQuestion(words)
    ? asked(text)
    : { ok: false, problem: `After "${command.name}" say what to do: ${names}.` };
}

function stray(word: string | undefined, commands: readonly Command[]): TypedLine {
  const names = commands.map(({ name }) => name).join(', ');
  const problem = `There is no command "/${saidBack(word ?? '', 30)}". There are ${names}. A question needs no slash.`;
  return { ok: false, problem };
}

function asked(question: string): TypedLine {
  return { ok: true, value: { command: 'ask', options: { question } } };
}

/** "bed in the corner, will it freeze tonight" begins with a command's name but is a question. */
function looksLikeQuestion(words: readonly string[]): boolean {
  return words.length > 3 && !words.some((word) => word.includes(':'));
}

function withOptions(
  named: { readonly command: string; readonly action?: string },
  action: Action,
  words: readonly string[],
): TypedLine {
  const stray = strayOption(words, action);
  if (stray !== undefined) {
    const names = action.options.map((option) => `${option.name}:`);
    return { ok: false, problem: `"${stray}" is no option here; there are ${names.join(' ')}.` };
  }
  const { options, loose } = sorted(words, action);
  if (loose.length === 0) return { ok: true, value: { ...named, options } };
  const free = action.options.find((option) => option.kind === 'text' && options[option.name] === undefined);
  if (free === undefined) {
    const names = action.options.map((option) => `${option.name}:`).join(' ');
    return {
      ok: false,
      problem: `I do not know what "${loose.join(' ')}" belongs to; write ${names || 'nothing more'}.`,
    };
  }
  return { ok: true, value: { ...named, options: { ...options, [free.name]: loose.join(' ') } } };
}

/** A word that looks like an option and is none; what a single free text holds is the asker's own. */
function strayOption(words: readonly string[], { options }: Action): string | undefined {
  const [only, ...others] = options;
  if (only === undefined || (others.length === 0 && only.choices === undefined)) return undefined;
  const names = words.flatMap((word) => /^([a-z][a-z-]*:)(?!\/\/)/i.exec(word)?.[1] ?? []);
  return names.find((name) => !options.some((option) => `${option.name}:` === name.toLowerCase()));
}

/** Words by the option they follow; words before the first named option stand loose. */
function sorted(words: readonly string[], action: Action): { options: Record<string, string>; loose: string[] } {
  const options: Record<string, string> = {};
  const loose: string[] = [];
  let open: string | undefined;
  for (const word of words) {
    const name = word.slice(0, Math.max(0, word.indexOf(':'))).toLowerCase();
    if (action.options.some((option) => option.name === name)) {
      options[name] = word.slice(name.length + 1);
      open = name;
    } else if (open === undefined) {
      loose.push(word);
    } else {
      options[open] = `${options[open] ?? ''} ${word}`.trim();
    }
  }
  return { options, loose };
}

/** Splits at blanks, keeping "quoted words" together and dropping the quotes. One pass. */
function splitWords(text: string): string[] {
  const words: string[] = [];
  let word = '';
  let quoted = false;
  let begun = false;
  for (const glyph of text) {
    if (glyph === '"' || glyph === '“' || glyph === '”') {
      quoted = !quoted;
      begun = true;
    } else if (!quoted && /\s/.test(glyph)) {
      if (begun) words.push(word);
      word = '';
      begun = false;
    } else {
      word += glyph;
      begun = true;
    }
  }
  if (begun) words.push(word);
  return words;
}
