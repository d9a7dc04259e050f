import { processEnvironment } from '../config.ts';
import { examined } from '../doctor/examined.ts';
import { closingLine, findingLines } from '../doctor/finding.ts';
import { runProgram } from './run-program.ts';

/** Says what stands in the way of the bot, and what to do: `npm run doctor`. Exits with 1 where something must be put right. */
await runProgram(async () => {
  const findings = await examined({ environment: processEnvironment(), zoneDataVersion: process.versions['tz'] });
  process.stdout.write(`${[...findingLines(findings), '', closingLine(findings)].join('\n')}\n`);
  return findings.some(({ state }) => state === 'fix') ? 1 : 0;
});
