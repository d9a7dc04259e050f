import { readFileSync, writeFileSync } from 'node:fs';
import { comparisons } from './accuracy/comparisons.ts';
import { asJson, asMarkdown, asText } from './accuracy/print.ts';
import { withTable } from './accuracy/readme.ts';

/** Everything that is held against a source outside the project: `npm run accuracy`, with `--markdown`, `--json`, or `--readme` to renew the README. */
function main(words: readonly string[]): number {
  const [word, ...more] = words;
  const all = comparisons();
  if (more.length > 0) return refuse();
  switch (word) {
    case undefined:
      return print(asText(all));
    case '--markdown':
      return print(asMarkdown(all));
    case '--json':
      return print(asJson(all));
    case '--readme':
      writeFileSync('README.md', withTable(readFileSync('README.md', 'utf8'), asMarkdown(all)));
      return 0;
    default:
      return refuse();
  }
}

function print(text: string): number {
  process.stdout.write(`${text}\n`);
  return 0;
}

function refuse(): number {
  process.stderr.write('I know one of --markdown, --json and --readme, or nothing for text.\n');
  return 1;
}

process.exitCode = main(process.argv.slice(2));
