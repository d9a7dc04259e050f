import { type DestinationStream, type Logger, pino } from 'pino';
import { ForecastServiceError } from './forecast/forecast-error.ts';
import { PlainProblem } from './ground/errors.ts';
import { StoreProblem } from './store/store-problem.ts';
import { PostError } from './talk/channel-poster.ts';

/** Their messages are ours, and hold no token, no place and nothing that a member wrote. */
const OURS = [PlainProblem, PostError, ForecastServiceError, StoreProblem];
/** Faults of the program; their messages name code, not values. */
const FAULTS_OF_CODE = [TypeError, ReferenceError];
const MOST_FRAMES = 12;

/** The log of the program, one JSON object a line. */
export function openLog(level: string, to: DestinationStream): Logger {
  return pino({ level, base: null, timestamp: pino.stdTimeFunctions.isoTime, serializers: { err: errorFacts } }, to);
}

/** What may be written of an error: where it arose always, what it says only where that can hold no value. */
export function errorFacts(error: unknown): object {
  if (!(error instanceof Error)) return { type: typeof error };
  const code = 'code' in error && typeof error.code === 'string' ? { code: error.code } : {};
  const speaks = [...OURS, ...FAULTS_OF_CODE].some((kind) => error instanceof kind);
  const frames = (error.stack ?? '').split('\n').filter((line) => line.startsWith('    at '));
  return {
    type: error.name,
    ...code,
    ...(speaks && { message: error.message }),
    stack: frames.slice(0, MOST_FRAMES).map((line) => line.trim()),
  };
}

/** Log lines for somebody who types beside them: in words, each kind once. */
export function plainWords(to: DestinationStream): DestinationStream {
  const told = new Set<string>();
  return {
    write(line) {
      const words = inWords(line);
      if (told.has(words)) return;
      told.add(words);
      to.write(`(${words})\n`);
    },
  };
}

/** "a forecast service did not serve: metno, unavailable". */
function inWords(line: string): string {
  const { msg, service, code, err } = JSON.parse(line) as Readonly<Record<string, unknown>>;
  const details = [service, code, errorWords(err)].filter((each) => typeof each === 'string');
  return [msg, details.join(', ')].filter((part) => part !== '').join(': ');
}

function errorWords(err: unknown): unknown {
  if (typeof err !== 'object' || err === null) return undefined;
  return 'message' in err ? err.message : 'type' in err ? err.type : undefined;
}
