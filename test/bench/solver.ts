import { type CoverStack, type NightInput, nightRun, windowLow } from '../../rules/index.ts';
import { sampled } from '../published/accuracy/sampled.ts';
import { randomNight } from '../published/accuracy/second-opinion.ts';
import { type SolverTolerance, secondNight } from '../published/second-opinion/second-night.ts';
import { BARE, hoops } from '../rules/night/spec-stacks.ts';
import type { Row } from './row.ts';

const HOUR_MS = 3_600_000;
const NIGHTS = 3;
const TRUTH: SolverTolerance = { relative: 1e-6, absolute: 1e-4 };
/** From loose to fine. Looser than these it is no quicker, for stability and not accuracy bounds its steps, and in the end it loses its way. */
const OFFERED: readonly SolverTolerance[] = [
  { relative: 1e-3, absolute: 1e-1 },
  { relative: 1e-4, absolute: 1e-2 },
  { relative: 1e-5, absolute: 1e-3 },
];
const OUR_ROUNDS = 300;

interface Solved {
  readonly ms: number;
  readonly errorK: number;
  readonly evaluations: number;
}

/**
 * The night model against a general-purpose solver of differential equations (odex), which solves the second model of
 * `test/published/second-opinion/`. Both start from the same input, ours without weather prepared. What counts as true is the solver itself
 * at its finest; the time taken for it is that of the loosest tolerance which is no further off than we are.
 */
export function benchSolver(): readonly Row[] {
  return [...rowsUnder('bare', BARE), ...rowsUnder('one cover, film', hoops('PE'))];
}

function rowsUnder(name: string, stack: CoverStack): Row[] {
  const nights = sampled(randomNight(stack), NIGHTS).map(([, input]) => {
    const trueC = secondNight(input, TRUTH).leafLowC;
    return { input, trueC, ours: ours(input, trueC) };
  });
  const ourErrorK = Math.max(...nights.map((night) => night.ours.errorK));
  const solver = OFFERED.map((tolerance) => nights.map(({ input, trueC }) => theirs(input, tolerance, trueC)))
    .filter((solved) => Math.max(...solved.map(({ errorK }) => errorK)) <= ourErrorK)
    .toSorted((one, other) => mean(one, ({ ms }) => ms) - mean(other, ({ ms }) => ms))[0];
  if (solver === undefined) throw new Error('no tolerance offered to the solver is as fine as we are');
  const ourMs = mean(nights, (night) => night.ours.ms);
  const theirMs = mean(solver, ({ ms }) => ms);
  return [
    { name: `14 h bed-night, ${name}`, value: 1000 * ourMs, unit: 'µs' },
    { name: `the solver at the same accuracy, ${name}`, value: 1000 * theirMs, unit: 'µs', ratio: theirMs / ourMs },
    { name: `its evaluations, ${name}`, value: mean(solver, ({ evaluations }) => evaluations), unit: '' },
    { name: `our steps, ${name}`, value: mean(nights, (night) => night.ours.evaluations), unit: '' },
    { name: `largest error, ours, ${name}`, value: ourErrorK, unit: 'K' },
    { name: `largest error, the solver, ${name}`, value: Math.max(...solver.map(({ errorK }) => errorK)), unit: 'K' },
  ];
}

function theirs(input: NightInput, tolerance: SolverTolerance, trueC: number): Solved {
  const begun = performance.now();
  const { leafLowC, evaluations } = secondNight(input, tolerance);
  return { ms: performance.now() - begun, errorK: Math.abs(leafLowC - trueC), evaluations };
}

function ours(input: NightInput, trueC: number): Solved {
  const from = new Date(input.start.getTime() + HOUR_MS);
  const times: number[] = [];
  let run = nightRun(input);
  for (let round = 0; round < OUR_ROUNDS; round += 1) {
    const begun = performance.now();
    run = nightRun(input);
    times.push(performance.now() - begun);
  }
  const ms = times.sort((a, b) => a - b)[Math.floor(OUR_ROUNDS / 2)] ?? Number.NaN;
  const errorK = Math.abs(windowLow(run, 'leafC', from, input.end).valueC - trueC);
  return { ms, errorK, evaluations: run.timesMs.length - 1 };
}

function mean<T>(all: readonly T[], value: (one: T) => number): number {
  return all.reduce((sum, one) => sum + value(one), 0) / all.length;
}
