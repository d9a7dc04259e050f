import { comparisons, parts } from './accuracy/comparisons.ts';
import { cropsMarkdown, outcomesMarkdown } from './accuracy/outcome-print.ts';
import { asJson, asMarkdown, asText } from './accuracy/print.ts';

/** Everything that is held against a source outside the project: `npm run accuracy`, with `--markdown`, `--json`, `--outcomes` or `--crops`. */
function main(words: readonly string[]): number {
  const [word = '--text', ...more] = words;
  const shown = SHOWN[word];
  if (shown === undefined || more.length > 0) {
    process.stderr.write(`I know one of ${Object.keys(SHOWN).join(', ')}; text is what I print without a word.\n`);
    return 1;
  }
  shown();
  return 0;
}

const SHOWN: Readonly<Record<string, () => void>> = {
  '--text': () => print(`${asText(parts())}\n\n${outcomesMarkdown()}`),
  '--markdown': () => print(asMarkdown(parts())),
  '--json': () => print(asJson(comparisons())),
  '--outcomes': () => print(outcomesMarkdown()),
  '--crops': () => print(cropsMarkdown()),
};

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

process.exitCode = main(process.argv.slice(2));
