/** The middle value, or the mean of the two middle ones; null of nothing. */
export function median(values: readonly number[]): number | null {
  return medianByMoving(new Float64Array(values));
}

/** The median of the absolute distances from the median, not scaled; null of nothing. */
export function medianAbsoluteDeviation(values: readonly number[]): number | null {
  const distances = new Float64Array(values);
  const centre = medianByMoving(distances);
  if (centre === null) return null;
  for (let i = 0; i < distances.length; i++) distances[i] = Math.abs((distances[i] as number) - centre);
  return medianByMoving(distances);
}

/**
 * What turns a median absolute deviation into the standard deviation of a normal distribution:
 * 1 / normalQuantile(0.75), as it is commonly printed and as docs/conventions.md section 5 has it.
 */
export const MAD_TO_SD = 1.4826;

function medianByMoving(values: Float64Array): number | null {
  const half = values.length >> 1;
  if (values.length === 0) return null;
  const upper = select(values, half);
  if (values.length % 2 === 1) return upper;
  // Everything before the middle is now at most the upper middle value; the lower one is the greatest of it.
  let lower = values[0] as number;
  for (let i = 1; i < half; i++) lower = Math.max(lower, values[i] as number);
  return lower + (upper - lower) / 2;
}

/** Hoare's selection: moves the values until the one at `place` is the one that sorting would put there. */
function select(values: Float64Array, place: number): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = values[(low + high) >> 1] as number;
    let i = low;
    let j = high;
    while (i <= j) {
      while ((values[i] as number) < pivot) i++;
      while ((values[j] as number) > pivot) j--;
      if (i <= j) {
        const value = values[i] as number;
        values[i] = values[j] as number;
        values[j] = value;
        i++;
        j--;
      }
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else break;
  }
  return values[place] as number;
}
