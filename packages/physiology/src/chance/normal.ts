import { normalQuantile } from '../exact/normalQuantile.js';
import { uniformOf } from './uniform.js';

/** No normal number lies further from 0: the quantile of 2^-74, the least uniform one there is. */
export const MOST_SD = 9.8;
/** The quantile of a share of 0.0001, and a little more. */
const USUAL_SD = 3.72;
const UNUSUAL = 0.0001;

/** A standard normal number for the `lane`-th draw of the `index`-th event of a key. */
export function normalOf(key: number, index: number, lane = 0): number {
  return normalQuantile(uniformOf(key, index, lane));
}

/** A normal number cut to its bounds: one beyond them is put on the nearer one. */
export function normalWithin(
  key: number,
  index: number,
  lane: number,
  mean: number,
  sd: number,
  low: number,
  high: number,
): number {
  const value = mean + sd * normalOf(key, index, lane);
  return value < low ? low : Math.min(value, high);
}

/** A bound of the size of that number, without making it. */
export function normalBound(key: number, index: number, lane = 0): number {
  const share = uniformOf(key, index, lane);
  return share > UNUSUAL && share < 1 - UNUSUAL ? USUAL_SD : MOST_SD;
}
