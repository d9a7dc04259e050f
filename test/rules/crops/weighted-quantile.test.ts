import fc from 'fast-check';
import { expect, test } from 'vitest';
import { weightedQuantileC } from '../../../rules/crops/weighted-quantile.ts';

const WEIGHTED = fc.array(
  fc.record({
    valueC: fc.double({ min: -30, max: 5, noNaN: true }),
    weight: fc.constantFrom(0.25, 0.5, 1, 2, 3),
  }),
  { minLength: 1, maxLength: 12 },
);

test('the heavier value is the median, and equal weights meet half-way', () => {
  expect(weightedQuantileC([voice(-10, 2), voice(-4, 1)], 0.5)).toBe(-10);
  expect(weightedQuantileC([voice(-10, 1), voice(-4, 1)], 0.5)).toBe(-7);
  expect(weightedQuantileC([voice(-10, 1), voice(-6, 1), voice(-4, 1)], 0.5)).toBe(-6);
});

test('a quantile lies within the values and rises with its share', () => {
  fc.assert(
    fc.property(WEIGHTED, (values) => {
      const temperatures = values.map((value) => value.valueC);
      const quartiles = [0.25, 0.5, 0.75].map((share) => weightedQuantileC(values, share));
      const ordered = [Math.min(...temperatures), ...quartiles, Math.max(...temperatures)];
      expect([...ordered].sort((a, b) => a - b)).toEqual(ordered);
    }),
  );
});

test('a colder value more never makes the median warmer', () => {
  fc.assert(
    fc.property(WEIGHTED, (values) => {
      const medianC = weightedQuantileC(values, 0.5);
      expect(weightedQuantileC([...values, voice(medianC - 1, 1)], 0.5)).toBeLessThanOrEqual(medianC);
    }),
  );
});

test('no value at all is refused', () => {
  expect(() => weightedQuantileC([], 0.5)).toThrow(/values is empty/);
});

function voice(valueC: number, weight: number) {
  return { valueC, weight };
}
