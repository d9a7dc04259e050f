import type { Comparison } from './accuracy/comparison.ts';
import { comparisons } from './accuracy/comparisons.ts';
import { asJson, asMarkdown, asText } from './accuracy/print.ts';

/** Everything that is held against a source outside the project: `npm run accuracy`, with `--markdown` or `--json`. */
function main(words: readonly string[]): number {
  const [word = '--text', ...more] = words;
  const shown = SHOWN[word];
  if (shown === undefined || more.length > 0) {
    process.stderr.write(`I know one of ${Object.keys(SHOWN).join(', ')}; text is what I print without a word.\n`);
    return 1;
  }
  shown(comparisons());
  return 0;
}

const SHOWN: Readonly<Record<string, (all: readonly Comparison[]) => void>> = {
  '--text': (all) => print(asText(all)),
  '--markdown': (all) => print(asMarkdown(all)),
  '--json': (all) => print(asJson(all)),
};

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

process.exitCode = main(process.argv.slice(2));
