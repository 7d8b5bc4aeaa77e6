/** A symmetric matrix whose rows reach no further from the diagonal than its band. */
export interface Banded {
  readonly size: number;
  /** How many places off the diagonal there may be numbers. */
  readonly band: number;
  /** Lower half, row by row: row r holds columns r − band to r. */
  readonly rows: Float64Array;
}

export function bandedZero(size: number, band: number): Banded {
  return { size, band, rows: new Float64Array(size * (band + 1)) };
}

/** Adds to a number of the matrix, and to its mirror image. */
export function addTo({ band, rows }: Banded, row: number, column: number, by: number): void {
  const [low, high] = row < column ? [row, column] : [column, row];
  const at = high * (band + 1) + band - (high - low);
  rows[at] = (rows[at] ?? 0) + by;
}

/**
 * Solves A x = b for a positive definite A, as often as it is asked: by Cholesky's factors, which keep the
 * band. Cost: size × band² once, size × band each time.
 */
export function solverOf(matrix: Banded): (right: Float64Array) => Float64Array {
  const { size, band } = matrix;
  const factor = cholesky(matrix);
  const low = (row: number, column: number) => factor[row * (band + 1) + band - row + column] ?? 0;
  return (right) => {
    const x = Float64Array.from(right);
    for (let row = 0; row < size; row++) {
      let sum = x[row] ?? 0;
      for (let k = Math.max(0, row - band); k < row; k++) sum -= low(row, k) * (x[k] ?? 0);
      x[row] = sum / low(row, row);
    }
    for (let row = size - 1; row >= 0; row--) {
      let sum = x[row] ?? 0;
      const last = Math.min(size - 1, row + band);
      for (let k = row + 1; k <= last; k++) sum -= low(k, row) * (x[k] ?? 0);
      x[row] = sum / low(row, row);
    }
    return x;
  };
}

function cholesky({ size, band, rows }: Banded): Float64Array {
  const factor = Float64Array.from(rows);
  const at = (row: number, column: number) => row * (band + 1) + band - row + column;
  for (let row = 0; row < size; row++) {
    const first = Math.max(0, row - band);
    for (let column = first; column <= row; column++) {
      let sum = factor[at(row, column)] ?? 0;
      for (let k = Math.max(first, column - band); k < column; k++) {
        sum -= (factor[at(row, k)] ?? 0) * (factor[at(column, k)] ?? 0);
      }
      factor[at(row, column)] =
        column === row ? Math.sqrt(sum) : sum / (factor[at(column, column)] ?? Number.NaN);
    }
  }
  return factor;
}
