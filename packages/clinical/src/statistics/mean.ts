/** The arithmetic mean; null of nothing. The unit is that of the values. */
export function mean(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  let sum = 0;
  for (const value of values) sum += value;
  const first = sum / values.length;
  // A second pass takes off what rounding left in the first sum.
  let rest = 0;
  for (const value of values) rest += value - first;
  return first + rest / values.length;
}
