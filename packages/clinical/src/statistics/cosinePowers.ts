/**
 * The power of a series at its `count` slowest cosines: squares of the orthonormal discrete cosine transform
 * (type II) at frequencies 1 to `count`, in squared units of the values. A series of n has n - 1 of them; together
 * they are the sum of squares about the mean. The slow ones say how uncertain the mean is, however the values
 * depend on each other.
 */
export function cosinePowers(values: readonly number[], count: number): Float64Array {
  const n = values.length;
  const powers = new Float64Array(count);
  for (let j = 1; j <= count; j++) {
    // cos((t + 1/2) a) for t = 0, 1, ... by the recurrence cos((t + 1) a) = 2 cos(a) cos(t a) - cos((t - 1) a).
    const angle = (Math.PI * j) / n;
    const twice = 2 * Math.cos(angle);
    let current = Math.cos(angle / 2);
    let before = current;
    let sum = 0;
    for (let t = 0; t < n; t++) {
      sum += (values[t] as number) * current;
      const next = twice * current - before;
      before = current;
      current = next;
    }
    powers[j - 1] = (2 / n) * sum * sum;
  }
  return powers;
}
