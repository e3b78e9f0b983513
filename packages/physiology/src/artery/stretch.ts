import { CONTOUR_INTERVAL } from './contour.js';

/** The longest interval, seconds, that makes a contour longer. */
const LONGEST = 1.5;

/** How much longer the contour is at an interval than at the one it was drawn at. */
export function stretchOf(interval: number): number {
  return Math.sqrt(Math.min(interval, LONGEST) / CONTOUR_INTERVAL);
}
