import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { ButtonHandler, Command } from '../../commands/command.ts';
import { shortAnswer, shortAnswerPress } from '../../commands/more.ts';
import type { Services } from '../../commands/services.ts';
import { drawn } from '../../talk/plain-text.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Place } from '../../talk/request.ts';
import { chartAsked, writtenChart } from './chart-file.ts';
import { handedOut } from './handed-out.ts';
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
const PROMPT = '\n> ';
const PARTING_WORDS = new Set(['quit', 'exit', 'bye']);

/**
 * Prints the greeting, then answers typed lines until the input ends.
 *
 * @returns How many lines came in.
 */
export async function runTerminal(door: TerminalDoor): Promise<number> {
  const { input, interactive } = door;
  const say = sayer(door.output);
  say(drawn(door.greeting, widthOf(door.output)));
  if (interactive) say(`\nAsk anything about a frost night, or type help. Type quit to leave.${PROMPT}`);
  const lines = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY });
  let offered: Reply['buttons'] = [];
  let count = 0;
  for await (const line of lines) {
    const text = line.trim();
    count += 1;
    if (interactive && PARTING_WORDS.has(text.toLowerCase())) break;
    if (text !== '') offered = await answered(text, offered, door);
    if (interactive) say(PROMPT);
  }
  lines.close();
  return count;
}

/** Answers one line; gives back the choices that the answer offers. */
async function answered(text: string, offered: Reply['buttons'], door: TerminalDoor): Promise<Reply['buttons']> {
  const say = sayer(door.output);
  if (!door.interactive) say(`\n> ${text}`);
  const { line, file } = chartAsked(text);
  const reply = await replyTo(line, offered, door);
  say(`\n${drawn(reply, widthOf(door.output))}${choices(reply.buttons)}`);
  for (const line of await handedOut(reply, door.folder)) say(`\n${line}`);
  if (file !== undefined) say(`\n${await writtenChart(reply, file)}`);
  return reply.buttons;
}

function sayer(output: Writable): (text: string) => void {
  return (text) => output.write(text.endsWith(PROMPT) ? text : `${text}\n`);
}

function widthOf(output: Writable): number {
  return Math.min(WIDEST, 'columns' in output && typeof output.columns === 'number' ? output.columns : 80);
}

/** A line that is the label of an offered button presses it. */
async function replyTo(text: string, offered: Reply['buttons'], door: TerminalDoor): Promise<Reply> {
  const asking = {
    memberId: TERMINAL_MEMBER,
    place: PLACE,
    locale: door.locale,
    mayManageChannel: true,
    now: door.services.clock.now(),
  };
  const pressed = offered?.find(({ label }) => label.toLowerCase() === text.toLowerCase());
  if (pressed !== undefined) return shortAnswerPress({ ...asking, buttonId: pressed.id }, door.services, door.buttons);
  const typed = typedLine(text, door.commands);
  if (!typed.ok) return { headline: typed.problem, sections: [], private: true, refused: true };
  return shortAnswer({ ...asking, ...typed.value }, door.services, door.commands);
}

function choices(buttons: Reply['buttons']): string {
  if (buttons === undefined || buttons.length === 0) return '';
  return `\n\nType one of: ${buttons.map(({ label }) => label).join(', ')}.`;
}
