import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { caseResult } from '../../bot/cli/model-cases/case-result.ts';
import { caseFileSchema, caseResultSchema } from '../../bot/cli/model-cases/case-schema.ts';
import { type CoverStack, nightRun, preparedWeather } from '../../rules/index.ts';
import { BARE, fabricInHighTunnel, fabricInTunnel, frame, hoops, referenceInput } from '../rules/night/spec-stacks.ts';
import type { Row } from './row.ts';

/** From four in the afternoon to nine in the morning. */
const START = new Date('2025-12-01T21:00Z');
const END = new Date('2025-12-02T14:00Z');
const WARM_UP_RUNS = 1500;
const BLOCKS = 300;
const RUNS_IN_BLOCK = 5;

const BEDS: readonly (readonly [string, CoverStack])[] = [
  ['bare', BARE],
  ['one cover, film', hoops('PE')],
  ['one cover, glass frame', frame('GL', 'wood')],
  ['two covers, fabric in film', fabricInTunnel('F30')],
  ['two covers and path, in a high tunnel', fabricInHighTunnel('F30')],
];

/** Time of one night of one bed, and how far the worked cases are off. */
export function benchModel(): readonly Row[] {
  const { site, weather } = referenceInput(BARE);
  const prepared = preparedWeather(site, weather, START, END);
  const nights = BEDS.map(([name, stack]) => {
    const input = { ...referenceInput(stack), start: START, end: END };
    return { name: `17 h bed-night, ${name}`, undisturbedUs: undisturbedUs(() => nightRun(input, { prepared })) };
  });
  const bareUs = nights[0]?.undisturbedUs ?? Number.NaN;
  const weatherUs = undisturbedUs(() => preparedWeather(site, weather, START, END));
  return [
    ...nights.map(({ name, undisturbedUs: value }) => ({ name, value, unit: 'µs', ratio: value / bareUs })),
    { name: '17 h weather, shared by all beds of a place', value: weatherUs, unit: 'µs', ratio: weatherUs / bareUs },
    ...deviations(),
  ];
}

/** The quickest of many short blocks: what the machine does when no other program takes its turn. */
function undisturbedUs(work: () => unknown): number {
  for (let run = 0; run < WARM_UP_RUNS; run++) work();
  const blocksUs = Array.from({ length: BLOCKS }, () => {
    const begun = performance.now();
    for (let run = 0; run < RUNS_IN_BLOCK; run++) work();
    return ((performance.now() - begun) * 1000) / RUNS_IN_BLOCK;
  });
  return Math.min(...blocksUs);
}

/** Largest difference from the reference solution over the twelve worked cases. */
function deviations(): Row[] {
  const path = fileURLToPath(new URL('../../../test/fixtures/model-cases/model-cases.json', import.meta.url));
  const { cases } = caseFileSchema.parse(JSON.parse(readFileSync(path, 'utf8')));
  const pairs = cases.map((one) => ({ found: caseResult(one), wanted: caseResultSchema.parse(one.expected) }));
  return (['leafMin', 'airMin', 'surfaceMin', 'thermoMax', 'airMax'] as const).map((column) => ({
    name: `worked cases, largest difference of ${column}`,
    value: Math.max(...pairs.map(({ found, wanted }) => Math.abs(found[column] - wanted[column]))),
    unit: 'K',
  }));
}
