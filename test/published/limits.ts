import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { CROP_NAMES } from '../../rules/crops/crop-names-table.ts';
import { limitsTable } from './limits/limits-text.ts';

/** Writes the fitted limits of every crop to their table: `npm run limits`, after any change to rows, priors or the night model. */
const TABLE = 'rules/crops/limits-table.ts';

writeFileSync(TABLE, limitsTable());
execFileSync('npx', ['biome', 'format', '--write', TABLE], { stdio: 'ignore' });
process.stdout.write(`Fitted ${CROP_NAMES.length} crops: ${TABLE}\n`);
