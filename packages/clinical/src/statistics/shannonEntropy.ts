/** Equal bins between the least and the greatest value. Source: bedside handbook 1.12. */
const BINS = 16;

/**
 * Shannon entropy of the values' histogram in 16 equal bins, as a share of the most it can be: 0 (all alike)
 * to 1 (spread evenly over all bins). Null of nothing; 0 if all are equal. It is scale-free and so blind to
 * how big the variation is. Bin rule: bedside handbook 1.12, index = min(15, floor((x - min) / (max - min) x 16)).
 */
export function shannonEntropy(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  let least = Infinity;
  let greatest = -Infinity;
  for (const value of values) {
    if (value < least) least = value;
    if (value > greatest) greatest = value;
  }
  if (greatest === least) return 0;
  const counts = new Array<number>(BINS).fill(0);
  for (const value of values) {
    const bin = Math.min(BINS - 1, Math.floor(((value - least) / (greatest - least)) * BINS));
    counts[bin] = (counts[bin] as number) + 1;
  }
  let entropy = 0;
  for (const count of counts) {
    const share = count / values.length;
    if (share > 0) entropy -= share * Math.log(share);
  }
  return entropy / Math.log(BINS);
}
