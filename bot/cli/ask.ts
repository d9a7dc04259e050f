import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import { withCautions } from '../commands/ask/answered.ts';
import { answerText } from '../commands/ask/ask.ts';
import { systemClock } from '../ground/clock.ts';
import { PlainProblem } from '../ground/errors.ts';
import { machineLocale } from '../ground/locale.ts';
import { drawn } from '../talk/plain-text.ts';
import { askLine } from './ask-json.ts';
import { runProgram } from './run-program.ts';

const USAGE = 'npm run ask -- "will my spinach survive 14 °F under a blanket?"';

/** One question from the command line, or with `--json` one question a line from standard input. */
async function main(words: readonly string[]): Promise<number> {
  const { values, positionals } = split(words);
  const locale = values.locale ?? (values.json === true ? 'en-US' : machineLocale());
  if (values.json === true) return answerLines(locale);
  const question = positionals.join(' ');
  if (question.trim() === '') throw new PlainProblem(`There is no question. Ask like this: ${USAGE}`);
  const answered = answerText(question, { locale, now: systemClock.now() });
  process.stdout.write(`${drawn(withCautions(answered), 80)}\n`);
  return answered.reply.refused === true ? 1 : 0;
}

/** Each line is a conversation of its own, without a place. */
async function answerLines(locale: string): Promise<number> {
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    const answered = answerText(line, { locale, now: systemClock.now() });
    process.stdout.write(`${JSON.stringify(askLine(answered))}\n`);
  }
  return 0;
}

function split(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      options: { json: { type: 'boolean' }, locale: { type: 'string' } },
      allowPositionals: true,
    });
  } catch {
    throw new PlainProblem(`I know --json and --locale only. Ask like this: ${USAGE}`);
  }
}

await runProgram(main);
