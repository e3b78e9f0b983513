import { mean } from '../statistics/mean.js';

/**
 * What the line of diastolic (y) on systolic (x) says: index = 1 - slope; and what takes neither pressure for the cause, the
 * symmetric index (1 - slope / r) and the slope of the line that halves the angle between both regressions.
 */
export type Stiffness = {
  readonly slope: number;
  readonly intercept: number;
  readonly r: number;
  readonly index: number;
  readonly symmetric: number;
  readonly bisectorSlope: number;
};

/**
 * The stiffness index of a recording; off by default, for it depends on scatter and on the night's fall. Null where
 * the pressures do not vary. Source: out-of-office handbook 14 (Li 2006; Ben-Dov 2008).
 */
export function stiffnessIndex(systolic: readonly number[], diastolic: readonly number[]): Stiffness | null {
  const [x, y] = [mean(systolic), mean(diastolic)];
  if (x === null || y === null) return null;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let k = 0; k < systolic.length; k++) {
    const dx = (systolic[k] as number) - x;
    const dy = (diastolic[k] as number) - y;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  if (xx === 0 || yy === 0 || xy === 0) return null;
  const slope = xy / xx;
  const r = xy / Math.sqrt(xx * yy);
  // Of x on y, seen as a slope of y on x.
  const steep = slope / r ** 2;
  return {
    slope,
    intercept: y - slope * x,
    r,
    index: 1 - slope,
    symmetric: 1 - slope / r,
    bisectorSlope: (slope * steep - 1 + Math.sqrt((1 + slope ** 2) * (1 + steep ** 2))) / (slope + steep),
  };
}
