import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factorize, solvedColumn } from '../../../rules/crops/cholesky.ts';

const SIZE = 6;
const cell = fc.double({ min: -1, max: 1, noNaN: true });

test('what is solved, put back, gives the right-hand side, with zeros in the matrix or without', () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(cell, fc.constant(0)), { minLength: SIZE * SIZE, maxLength: SIZE * SIZE }),
      fc.array(cell, { minLength: SIZE, maxLength: SIZE }),
      (cells, right) => {
        const at = (row: number, column: number) => cells[row * SIZE + column] ?? 0;
        const indices = [...right.keys()];
        // A product with its own transpose, and 1 on the diagonal: symmetric and positive definite.
        const matrix = indices.flatMap((row) =>
          indices.map(
            (column) => indices.reduce((sum, k) => sum + at(row, k) * at(column, k), 0) + (row === column ? 1 : 0),
          ),
        );
        const factor = Float64Array.from(matrix);
        factorize(factor, SIZE);
        const found = solvedColumn(factor, Float64Array.from(right));
        for (const row of indices) {
          const back = indices.reduce((sum, k) => sum + (matrix[row * SIZE + k] ?? 0) * (found[k] ?? 0), 0);
          expect(back).toBeCloseTo(right[row] ?? 0, 9);
        }
      },
    ),
  );
});

test('a matrix that is not positive definite is refused', () => {
  expect(() => factorize(Float64Array.from([1, 2, 2, 1]), 2)).toThrow(/not positive definite at row 1/);
});
