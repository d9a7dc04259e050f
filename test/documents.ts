import { readFileSync, writeFileSync } from 'node:fs';
import { withAnswers } from './documents/answers.ts';
import { parts } from './published/accuracy/comparisons.ts';
import { withTable } from './published/accuracy/page.ts';
import { asMarkdown } from './published/accuracy/print.ts';

/** Renews what pages show of the program's own output: `npm run documents`. */
function renew(file: string, renewed: (page: string) => string): void {
  writeFileSync(file, renewed(readFileSync(file, 'utf8')));
}

renew('README.md', withAnswers);
renew('test/published/README.md', (page) => withTable(page, asMarkdown(parts())));
