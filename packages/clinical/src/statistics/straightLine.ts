import { mean } from './mean.js';

/** y = intercept + slope x. */
export type StraightLine = { readonly slope: number; readonly intercept: number };

/**
 * The line of y on x by least squares; null where x does not vary.
 *
 * @param y the mean of `ys`, where it was worked out before
 */
export function straightLine(
  xs: readonly number[],
  ys: readonly number[],
  y: number | null = mean(ys),
): StraightLine | null {
  const x = mean(xs);
  if (x === null || y === null) return null;
  let xx = 0;
  let xy = 0;
  for (let k = 0; k < xs.length; k++) {
    const dx = (xs[k] as number) - x;
    xx += dx * dx;
    xy += dx * ((ys[k] as number) - y);
  }
  if (xx === 0) return null;
  return { slope: xy / xx, intercept: y - (xy / xx) * x };
}
