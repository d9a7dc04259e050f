import { processEnvironment } from '../config.ts';
import { examined } from '../doctor/examined.ts';
import { closingLine, findingLines } from '../doctor/finding.ts';

/** Says what stands in the way of the bot, and what to do: `npm run doctor`. Exits with 1 where something must be put right. */
const findings = await examined({ environment: processEnvironment(), zoneDataVersion: process.versions['tz'] });
process.stdout.write(`${[...findingLines(findings), '', closingLine(findings)].join('\n')}\n`);
process.exitCode = findings.some(({ state }) => state === 'fix') ? 1 : 0;
