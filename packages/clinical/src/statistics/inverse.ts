/**
 * The inverse of a square matrix by Gauss-Jordan with pivots. Null where its rows do not tell each other apart.
 *
 * @param matrix row by row in one list, `stride` numbers from the start of a row to that of the next; it is used up
 * @param size rows and columns that are taken; the rest of the answer, which has the same shape, is 0
 */
export function inverse(matrix: Float64Array, size: number, stride = size): Float64Array | null {
  const found = new Float64Array(matrix.length);
  let scale = 0;
  for (let a = 0; a < size; a++) {
    found[a * stride + a] = 1;
    for (let b = 0; b < size; b++) scale = Math.max(scale, Math.abs(matrix[a * stride + b] as number));
  }
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let a = column + 1; a < size; a++) {
      if (
        Math.abs(matrix[a * stride + column] as number) > Math.abs(matrix[best * stride + column] as number)
      )
        best = a;
    }
    const pivot = matrix[best * stride + column] as number;
    if (Math.abs(pivot) <= scale * SINGULAR) return null;
    exchange(matrix, size, best * stride, column * stride, pivot);
    exchange(found, size, best * stride, column * stride, pivot);
    for (let a = 0; a < size; a++) {
      if (a === column) continue;
      const factor = matrix[a * stride + column] as number;
      takeOff(matrix, size, a * stride, column * stride, factor);
      takeOff(found, size, a * stride, column * stride, factor);
    }
  }
  return found;
}

/** Puts the row that begins at `chosen`, divided, where another begins, and that one in its place. */
function exchange(rows: Float64Array, size: number, chosen: number, other: number, divisor: number): void {
  for (let b = 0; b < size; b++) {
    const value = rows[chosen + b] as number;
    rows[chosen + b] = rows[other + b] as number;
    rows[other + b] = value / divisor;
  }
}

function takeOff(rows: Float64Array, size: number, from: number, row: number, factor: number): void {
  for (let b = 0; b < size; b++)
    rows[from + b] = (rows[from + b] as number) - factor * (rows[row + b] as number);
}

/** A pivot this small beside the largest number is what rounding left of a zero. */
const SINGULAR = 1e-12;
