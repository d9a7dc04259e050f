/**
 * The part of the solver that the second opinion uses. The package carries its sources, which our stricter compiler would check in place
 * of its types, so test/tsconfig.json leads here.
 */
export class Solver {
  constructor(dimension: number);
  denseOutput: boolean;
  maxSteps: number;
  relativeTolerance: number;
  absoluteTolerance: number;
  grid(stepS: number, out: (timeS: number, state: number[]) => void): unknown;
  solve(
    derivative: (timeS: number, state: number[]) => number[],
    from: number,
    start: number[],
    to: number,
    output: unknown,
  ): { readonly outcome: number };
}
