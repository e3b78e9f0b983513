/**
 * The arithmetic mean, also of those from one place up to another that is not of them; null of nothing. The unit is that of
 * the values.
 *
 * By places and not by an iterator, as all sums over long lists here: those make an object for every number.
 */
export function mean(values: readonly number[], from = 0, to = values.length): number | null {
  const n = to - from;
  if (n <= 0) return null;
  let sum = 0;
  for (let k = from; k < to; k++) sum += values[k] as number;
  const first = sum / n;
  // A second pass takes off what rounding left in the first sum.
  let rest = 0;
  for (let k = from; k < to; k++) rest += (values[k] as number) - first;
  return first + rest / n;
}
