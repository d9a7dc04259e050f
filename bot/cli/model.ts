import { readFile } from 'node:fs/promises';
import { caseReport } from './model-cases/case-report.ts';
import { runOnce } from './run-once.ts';

await runOnce('npm run model -- cases.json', async (file) => caseReport(await readFile(file, 'utf8')));
