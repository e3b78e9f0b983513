import { normalQuantile } from '../exact/normalQuantile.js';
import { uniformOf } from './uniform.js';

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
