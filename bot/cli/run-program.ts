import { PlainProblem } from '../ground/errors.ts';
import { StoreProblem } from '../store/store-problem.ts';

/**
 * Runs a program of the command line: it exits with 1 where it did not work, and says why in one sentence.
 *
 * @param main - Given the words after the program's name; resolves to another code to exit with, if any.
 */
export async function runProgram(main: (words: readonly string[]) => Promise<number | undefined>): Promise<void> {
  // Who reads the output may leave before its end, as `head` does.
  process.stdout.on('error', () => process.exit());
  try {
    process.exitCode = await main(process.argv.slice(2));
  } catch (thrown) {
    process.exitCode = 1;
    process.stderr.write(`${sentence(thrown)}\n`);
  }
}

function sentence(thrown: unknown): string {
  if (thrown instanceof PlainProblem || thrown instanceof StoreProblem) return thrown.message;
  return 'This did not work because of an internal error; please report it with the command that you gave.';
}
