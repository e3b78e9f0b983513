/**
 * The arithmetic mean; null of nothing. The unit is that of the values.
 *
 * By places and not by an iterator, as all sums over long lists here: those make an object for every number.
 */
export function mean(values: readonly number[]): number | null {
  const n = values.length;
  if (n === 0) return null;
  let sum = 0;
  for (let k = 0; k < n; k++) sum += values[k] as number;
  const first = sum / n;
  // A second pass takes off what rounding left in the first sum.
  let rest = 0;
  for (let k = 0; k < n; k++) rest += (values[k] as number) - first;
  return first + rest / n;
}
