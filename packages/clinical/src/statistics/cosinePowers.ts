/**
 * The power of a series at its `count` slowest cosines: squares of the orthonormal discrete cosine transform
 * (type II) at frequencies 1 to `count`, in squared units of the values. A series of n has n - 1 of them; together
 * they are the sum of squares about the mean. The slow ones say how uncertain the mean is, however the values
 * depend on each other.
 */
export function cosinePowers(values: readonly number[], count: number): Float64Array {
  const n = values.length;
  const { sums, differences } = folded(values);
  const powers = new Float64Array(count);
  for (let place = 1; place <= count; place++) {
    // An even cosine is the same from both ends, an odd one the opposite: half of the values are enough.
    const half = place % 2 === 0 ? sums : differences;
    // cos((t + 1/2) a) for t = 0, 1, ... by cos((t + 1) a) = 2 cos(a) cos(t a) - cos((t - 1) a).
    const angle = (Math.PI * place) / n;
    const twice = 2 * Math.cos(angle);
    let cosine = Math.cos(angle / 2);
    let before = cosine;
    let sum = 0;
    for (let t = 0; t < half.length; t++) {
      sum += (half[t] as number) * cosine;
      const next = twice * cosine - before;
      before = cosine;
      cosine = next;
    }
    powers[place - 1] = (2 / n) * sum * sum;
  }
  return powers;
}

/** Sums and differences of the values that lie equally far from both ends; the middle one, if any, stands alone. */
function folded(values: readonly number[]): { sums: Float64Array; differences: Float64Array } {
  const n = values.length;
  const sums = new Float64Array((n + 1) >> 1);
  const differences = new Float64Array(n >> 1);
  for (let t = 0; t < differences.length; t++) {
    const [first, last] = [values[t] as number, values[n - 1 - t] as number];
    sums[t] = first + last;
    differences[t] = first - last;
  }
  if (n % 2 === 1) sums[n >> 1] = values[n >> 1] as number;
  return { sums, differences };
}
