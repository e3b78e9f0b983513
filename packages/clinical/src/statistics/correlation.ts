import { mean } from './mean.js';

/** The correlation of two lists of one length; null where either does not vary. */
export function correlation(xs: readonly number[], ys: readonly number[]): number | null {
  const [x, y] = [mean(xs), mean(ys)];
  if (x === null || y === null) return null;
  let [xx, xy, yy] = [0, 0, 0];
  for (let k = 0; k < xs.length; k++) {
    const [dx, dy] = [(xs[k] as number) - x, (ys[k] as number) - y];
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  return xx === 0 || yy === 0 ? null : xy / Math.sqrt(xx * yy);
}
