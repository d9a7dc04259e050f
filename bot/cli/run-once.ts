import { PlainProblem } from '../ground/errors.ts';
import { runProgram } from './run-program.ts';

/** Runs a program that takes one file, says how it went in one sentence, and exits with 1 where it did not. */
export function runOnce(usage: string, work: (file: string) => Promise<string>): Promise<void> {
  return runProgram(async ([file, ...more]) => {
    if (file === undefined || more.length > 0) throw new PlainProblem(`Name one file: ${usage}`);
    process.stdout.write(`${await work(file).catch(readable)}\n`);
    return undefined;
  });
}

/** A file that cannot be had is no fault of ours. */
function readable(thrown: unknown): never {
  if (!(thrown instanceof Error) || !('syscall' in thrown) || !('code' in thrown)) throw thrown;
  throw new PlainProblem(`The file could not be read or written (${thrown.code}).`);
}
