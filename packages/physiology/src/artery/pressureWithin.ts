import type { Contour } from './contour.js';
import { CONTOUR_INTERVAL } from './contour.js';

/** From here on, in a beat of 0.857 s, the contour is run-off and is stretched to the next beat. */
const RUN_OFF_FROM = 0.45;

/**
 * Arterial pressure at so many seconds after the foot of a beat: up the contour from its own foot to its top, and down
 * to the foot of the next beat, `interval` seconds after. `stretch` is that of the contour for the beat before.
 */
export function pressureWithin(
  contour: Contour,
  seconds: number,
  interval: number,
  stretch: number,
  foot: number,
  top: number,
  nextFoot: number,
): number {
  const height = heightWithin(contour, seconds, interval, stretch);
  const base = seconds <= contour.peakSeconds * stretch ? foot : nextFoot;
  return base + (top - base) * height;
}

/** The contour at so many seconds after the foot of a beat that lasts `interval`: 0 at both ends, 1 at the top. */
export function heightWithin(contour: Contour, seconds: number, interval: number, stretch: number): number {
  const from = RUN_OFF_FROM * stretch;
  const turn = Math.min(from, 0.7 * interval);
  if (seconds <= turn) return contour.at(seconds / stretch);
  const start = turn / stretch;
  const left = (seconds - turn) / (interval - turn);
  return contour.at(start + left * (CONTOUR_INTERVAL - start));
}
