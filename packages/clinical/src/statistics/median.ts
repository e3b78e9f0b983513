/** The middle value, or the mean of the two middle ones; null of nothing. */
export function median(values: readonly number[]): number | null {
  return medianOfSorted(Float64Array.from(values).sort());
}

/** The median of the absolute distances from the median, not scaled; null of nothing. */
export function medianAbsoluteDeviation(values: readonly number[]): number | null {
  const centre = median(values);
  return centre === null ? null : median(values.map((value) => Math.abs(value - centre)));
}

/**
 * What turns a median absolute deviation into the standard deviation of a normal distribution:
 * 1 / normalQuantile(0.75), as it is commonly printed and as CONVENTIONS 5 has it.
 */
export const MAD_TO_SD = 1.4826;

function medianOfSorted(sorted: Float64Array): number | null {
  const upper = sorted[sorted.length >> 1];
  if (upper === undefined) return null;
  if (sorted.length % 2 === 1) return upper;
  const lower = sorted[(sorted.length >> 1) - 1] as number;
  return lower + (upper - lower) / 2;
}
