import { pino } from 'pino';
import { type Config, isService, processConfig } from './config.ts';
import { doorChoice } from './door-choice.ts';
import { PlainProblem } from './ground/errors.ts';
import { machineLocale } from './ground/locale.ts';
import { openLog, plainWords } from './log.ts';
import { runBot } from './program.ts';
import { StoreProblem } from './store/store-problem.ts';

const STDOUT = 1;
const STDERR = 2;
/** What a shell tells of a program that was interrupted. */
const INTERRUPTED = 130;

/** Runs the bot with the settings of this process; a stop lets it finish what it is answering. */
async function main(): Promise<number> {
  const config = processConfig();
  const log = logOf(config);
  const stop = new AbortController();
  let code = 0;
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.on(signal, () => {
      if (stop.signal.aborted) process.exit(INTERRUPTED);
      log.info({ signal }, 'stopping');
      stop.abort();
    });
  }
  // A promise that nobody waited for has spoilt no answer; growers count on the bot going on.
  process.on('unhandledRejection', (reason) => log.error({ err: reason }, 'a failure that nobody waited for'));
  process.on('uncaughtException', (error) => {
    log.fatal({ err: error }, 'a fault that nothing caught; stopping');
    code = 1;
    stop.abort();
  });
  const host = {
    log,
    stop: stop.signal,
    input: process.stdin,
    output: process.stdout,
    interactive: process.stdin.isTTY && process.stdout.isTTY,
    isService: isService(),
    locale: machineLocale(),
    ...forecastFile(process.argv.slice(2)),
  };
  try {
    await runBot(config, host);
  } catch (error) {
    if (!isPlain(error)) log.fatal({ err: error }, 'cannot go on');
    throw error;
  }
  return code;
}

/** `npm start -- --forecast FILE`. */
function forecastFile(words: readonly string[]): { forecastFile?: string } {
  const [option, file, ...more] = words;
  if (option === undefined) return {};
  if (option === '--forecast' && file !== undefined && more.length === 0) return { forecastFile: file };
  throw new PlainProblem('Start me with nothing more, or with --forecast FILE for a forecast that you saved.');
}

/** At the terminal the talk has standard output to itself, and only trouble is told beside it. */
function logOf(config: Config) {
  const atTerminal = doorChoice(config).kind === 'terminal';
  const level = atTerminal && config.LOG_LEVEL === 'info' ? 'warn' : config.LOG_LEVEL;
  const to = pino.destination({ fd: atTerminal ? STDERR : STDOUT, sync: true });
  return openLog(level, atTerminal ? plainWords(to) : to);
}

/** A host's sentence, without a stack: it may go to a log that many read. */
function lastWords(error: unknown): string {
  if (isPlain(error)) return error.message;
  return 'Eiderdown has to stop because of an internal error; see the log.';
}

/** Its message is a sentence of ours that says what to do; a stack before it would hide it. */
function isPlain(error: unknown): error is PlainProblem | StoreProblem {
  return error instanceof PlainProblem || error instanceof StoreProblem;
}

// Who reads the talk may leave before its end, as `head` does.
process.stdout.on('error', () => process.exit());
try {
  process.exitCode = await main();
} catch (error) {
  process.stderr.write(`${lastWords(error)}\n`);
  process.exitCode = 1;
}
// Libraries keep timers and sockets that must not hold up the end.
process.exit();
