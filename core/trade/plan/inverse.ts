/** Inverses of square matrices, row by row in one array, as the simplex method needs them. */

const SINGULAR = 1e-9;

/** Gauss and Jordan, with row exchange; `undefined` for a matrix that has no inverse. The matrix is used up. */
export function inverted(matrix: Float64Array, size: number): Float64Array | undefined {
  const inverse = new Float64Array(size * size);
  for (let i = 0; i < size; i++) inverse[i * size + i] = 1;
  const at = (table: Float64Array, row: number, column: number) => table[row * size + column] as number;
  for (let place = 0; place < size; place++) {
    let pivotRow = place;
    for (let row = place + 1; row < size; row++)
      if (Math.abs(at(matrix, row, place)) > Math.abs(at(matrix, pivotRow, place))) pivotRow = row;
    const pivot = at(matrix, pivotRow, place);
    if (Math.abs(pivot) <= SINGULAR) return undefined;
    for (const table of [matrix, inverse]) {
      for (let j = 0; j < size; j++) {
        const moved = at(table, place, j);
        table[place * size + j] = at(table, pivotRow, j) / pivot;
        if (pivotRow !== place) table[pivotRow * size + j] = moved;
      }
    }
    for (let row = 0; row < size; row++) {
      const factor = at(matrix, row, place);
      if (row === place || factor === 0) continue;
      for (const table of [matrix, inverse])
        for (let j = 0; j < size; j++)
          table[row * size + j] = at(table, row, j) - factor * at(table, place, j);
    }
  }
  return inverse;
}

/**
 * The inverse of a matrix that gains a column (0 but for `sign`, 1 or −1, in the last row) and a row.
 *
 * @param ones where the new row is 1; elsewhere it is 0.
 */
export function widened(
  inverse: Float64Array,
  size: number,
  ones: readonly boolean[],
  sign: number,
): Float64Array {
  const width = size + 1;
  const wide = new Float64Array(width * width);
  const last = size * width;
  for (let row = 0; row < size; row++) {
    const from = inverse.subarray(row * size, (row + 1) * size);
    wide.set(from, row * width);
    if (ones[row])
      for (let j = 0; j < size; j++) wide[last + j] = (wide[last + j] as number) - sign * (from[j] as number);
  }
  wide[last + size] = sign;
  return wide;
}
