/**
 * The inverse of a square matrix of `size` rows, row by row in one list, by Gauss-Jordan with pivots. Null where the
 * rows do not tell each other apart.
 */
export function inverse(matrix: Float64Array, size: number): Float64Array | null {
  const work = matrix.slice();
  const found = new Float64Array(size * size);
  let scale = 0;
  for (let at = 0; at < work.length; at++) scale = Math.max(scale, Math.abs(work[at] as number));
  for (let a = 0; a < size; a++) found[a * size + a] = 1;
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let a = column + 1; a < size; a++) {
      if (Math.abs(work[a * size + column] as number) > Math.abs(work[best * size + column] as number))
        best = a;
    }
    const pivot = work[best * size + column] as number;
    if (Math.abs(pivot) <= scale * SINGULAR) return null;
    for (const one of [work, found]) {
      for (let b = 0; b < size; b++) {
        const chosen = one[best * size + b] as number;
        one[best * size + b] = one[column * size + b] as number;
        one[column * size + b] = chosen / pivot;
      }
    }
    for (let a = 0; a < size; a++) {
      if (a === column) continue;
      const factor = work[a * size + column] as number;
      for (const one of [work, found]) {
        for (let b = 0; b < size; b++) {
          one[a * size + b] = (one[a * size + b] as number) - factor * (one[column * size + b] as number);
        }
      }
    }
  }
  return found;
}

/** A pivot this small beside the largest number is what rounding left of a zero. */
const SINGULAR = 1e-12;
