import { PlainProblem } from '../errors.ts';
import { StoreProblem } from '../store/store-problem.ts';

/** Runs a command that takes one file, says how it went in one sentence, and exits with 1 where it did not. */
export async function runOnce(usage: string, work: (words: readonly [string]) => Promise<string>): Promise<void> {
  const [file, ...more] = process.argv.slice(2);
  try {
    if (file === undefined || more.length > 0) throw new PlainProblem(`Name one file: ${usage}`);
    process.stdout.write(`${await work([file])}\n`);
  } catch (thrown) {
    process.exitCode = 1;
    process.stderr.write(`${sentence(thrown)}\n`);
  }
}

function sentence(thrown: unknown): string {
  if (thrown instanceof PlainProblem || thrown instanceof StoreProblem) return thrown.message;
  if (thrown instanceof Error && 'code' in thrown) return `The file could not be read or written (${thrown.code}).`;
  return 'It did not work, and the reason is not known.';
}
