/**
 * Cholesky factor of a symmetric positive definite matrix, in place; zeros are skipped, so that a matrix whose first rows are
 * nearly empty costs little.
 *
 * @param matrix - Rows one after the other; only the lower triangle is read. Becomes the factor.
 * @param size - Number of rows.
 * @throws RangeError when it is not positive definite.
 */
export function factorize(matrix: Float64Array, size: number): void {
  const at = (row: number, column: number) => matrix[row * size + column] ?? 0;
  for (let column = 0; column < size; column++) {
    const square = at(column, column);
    if (!(square > 0)) throw new RangeError(`matrix is not positive definite at row ${column}`);
    const root = Math.sqrt(square);
    matrix[column * size + column] = root;
    const below = filledBelow(matrix, size, column);
    for (const row of below) matrix[row * size + column] = at(row, column) / root;
    for (const [index, left] of below.entries()) {
      for (const row of below.slice(index)) {
        matrix[row * size + left] = at(row, left) - at(row, column) * at(left, column);
      }
    }
  }
}

function filledBelow(matrix: Float64Array, size: number, column: number): readonly number[] {
  const rows: number[] = [];
  for (let row = column + 1; row < size; row++) {
    if (matrix[row * size + column] !== 0) rows.push(row);
  }
  return rows;
}

/**
 * Solves `factor · factorᵀ · x = right`.
 *
 * @param factor - From {@link factorize}.
 * @param rightColumn - Right-hand side; left as it is.
 * @returns The solution.
 */
export function solvedColumn(factor: Float64Array, rightColumn: Float64Array): Float64Array {
  const size = rightColumn.length;
  const at = (row: number, column: number) => factor[row * size + column] ?? 0;
  const found = Float64Array.from(rightColumn);
  for (let row = 0; row < size; row++) {
    let rest = found[row] ?? 0;
    for (let column = 0; column < row; column++) rest -= at(row, column) * (found[column] ?? 0);
    found[row] = rest / at(row, row);
  }
  for (let row = size - 1; row >= 0; row--) {
    let rest = found[row] ?? 0;
    for (let below = row + 1; below < size; below++) rest -= at(below, row) * (found[below] ?? 0);
    found[row] = rest / at(row, row);
  }
  return found;
}
