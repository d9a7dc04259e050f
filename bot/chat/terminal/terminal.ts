import { type CompleterResult, createInterface, type ReadLineOptions } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { ButtonHandler, Command } from '../../commands/command.ts';
import { refusal } from '../../commands/dispatch.ts';
import { readerFor } from '../../commands/kept-for.ts';
import { shortAnswer, shortAnswerPress } from '../../commands/more.ts';
import type { Services } from '../../commands/services.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { drawn } from '../../talk/plain-text.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Place } from '../../talk/request.ts';
import { writtenChart } from './chart-file.ts';
import { completion } from './completion.ts';
import { handedOut } from './handed-out.ts';
import { lineWithFiles } from './line-files.ts';
import { onSavedForecast } from './on-saved-forecast.ts';
import { typedLine } from './typed-line.ts';

export interface TerminalDoor {
  readonly services: Services;
  readonly commands: readonly Command[];
  readonly buttons: readonly ButtonHandler[];
  readonly input: Readable;
  readonly output: Writable;
  /** Someone types: show a prompt. Without, lines are answered one after the other and nothing else is printed. */
  readonly interactive: boolean;
  /** BCP 47 tag of the person's language. */
  readonly locale: string;
  /** Where files that an answer hands out are written; the folder of the process unless said. */
  readonly folder?: string;
  /** Printed first. */
  readonly greeting: Reply;
}

/** The one member of the terminal door. */
export const TERMINAL_MEMBER = 'terminal';
const PLACE: Place = { kind: 'terminal', conversationId: 'terminal' };
const WIDEST = 100;
/** A terminal that says less does not know its width. */
const NARROWEST = 20;
const USUAL_WIDTH = 80;
const LINES_CALLED_BACK = 200;
const PARTING_WORDS = new Set(['quit', 'exit', 'bye']);

/**
 * Prints the greeting, then answers typed lines until the input ends.
 *
 * @returns How many lines came in.
 */
export async function runTerminal(door: TerminalDoor): Promise<number> {
  const { interactive } = door;
  const say = sayer(door.output);
  say(drawn(door.greeting, widthOf(door.output)));
  if (interactive) say('\nAsk anything about a frost night, or type help. Tab completes, quit leaves.');
  const lines = createInterface(lineReader(door));
  const ready = () => {
    if (!interactive) return;
    say('');
    lines.prompt();
  };
  ready();
  let offered: Reply['buttons'] = [];
  let count = 0;
  for await (const line of lines) {
    const text = line.trim();
    count += 1;
    if (interactive && PARTING_WORDS.has(text.toLowerCase())) break;
    if (text !== '') offered = await answered(text, offered, door);
    ready();
  }
  lines.close();
  return count;
}

/** Answers one line; gives back the choices that the answer offers. */
async function answered(text: string, offered: Reply['buttons'], door: TerminalDoor): Promise<Reply['buttons']> {
  const say = sayer(door.output);
  if (!door.interactive) say(`\n> ${text}`);
  const { line, chart, forecast } = lineWithFiles(text);
  const reply = await replyOn(forecast, line, offered, door);
  say(`\n${drawn(reply, widthOf(door.output))}${choices(reply.buttons)}`);
  for (const line of await handedOut(reply, door.folder)) say(`\n${line}`);
  if (chart !== undefined) say(`\n${await writtenChart(reply, chart)}`);
  return reply.buttons;
}

/** On a real terminal the line can be edited, completed and called back; a pipe gives plain lines. */
function lineReader(door: TerminalDoor): ReadLineOptions {
  const { input, output, interactive, services, commands } = door;
  const plain = { input, crlfDelay: Number.POSITIVE_INFINITY };
  if (!interactive) return plain;
  const desk = { services, commands, doorWords: ['sample', ...PARTING_WORDS] };
  return {
    ...plain,
    output,
    prompt: '> ',
    historySize: LINES_CALLED_BACK,
    removeHistoryDuplicates: true,
    completer: (line: string, done: (error: null, found: CompleterResult) => void) => {
      completion(line, asking(door), desk).then(
        ([hits, fragment]) => done(null, [hits.length === 1 ? hits.map(ended) : [...hits], fragment]),
        () => done(null, [[], line]),
      );
    },
  };
}

/** The only way on is taken with the blank after it. */
function ended(hit: string): string {
  return hit.endsWith(':') ? hit : `${hit} `;
}

function sayer(output: Writable): (text: string) => void {
  return (text) => output.write(`${text}\n`);
}

function asking({ services, locale }: TerminalDoor) {
  const now = services.clock.now();
  return { memberId: TERMINAL_MEMBER, place: PLACE, locale, mayManageChannel: true, now };
}

function widthOf(output: Writable): number {
  const columns = 'columns' in output && typeof output.columns === 'number' ? output.columns : 0;
  return Math.min(WIDEST, columns >= NARROWEST ? columns : USUAL_WIDTH);
}

/** The answer, on a saved forecast where one is named. */
async function replyOn(
  forecast: string | undefined,
  line: string,
  offered: Reply['buttons'],
  door: TerminalDoor,
): Promise<Reply> {
  if (forecast === undefined) return replyTo(line, offered, door);
  try {
    return await replyTo(line, offered, { ...door, services: await onSavedForecast(door.services, forecast) });
  } catch (error) {
    if (error instanceof PlainProblem) return refusal(error.message);
    throw error;
  }
}

/** A line that is the label of an offered button presses it. */
async function replyTo(text: string, offered: Reply['buttons'], door: TerminalDoor): Promise<Reply> {
  const asker = asking(door);
  const pressed = offered?.find(({ label }) => label.toLowerCase() === text.toLowerCase());
  if (pressed !== undefined) return shortAnswerPress({ ...asker, buttonId: pressed.id }, door.services, door.buttons);
  if (text.toLowerCase() === 'sample' && door.services.sample !== undefined) {
    return door.services.sample(await readerFor(asker, door.services), 'tonight');
  }
  const typed = typedLine(text, door.commands);
  if (!typed.ok) return refusal(typed.problem);
  return shortAnswer({ ...asker, ...typed.value }, door.services, door.commands);
}

function choices(buttons: Reply['buttons']): string {
  if (buttons === undefined || buttons.length === 0) return '';
  return `\n\nType one of: ${buttons.map(({ label }) => label).join(', ')}.`;
}
