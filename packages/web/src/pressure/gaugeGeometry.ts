import { gaugeRead } from '@evenfall/clinical';

/** The whole face: 0 at the lower left, the top of the scale at the lower right, open below. Degrees from the top. */
const LOW_DEGREES = -150;
const HIGH_DEGREES = 150;
const MIDDLE = 100;

export type GaugeScale = {
  /** Where the needle points at a pressure, in degrees clockwise from the top. */
  readonly degrees: (mmHg: number) => number;
  /** A place on the face of 200 by 200, at a radius from its middle. */
  readonly at: (mmHg: number, radius: number) => { readonly x: number; readonly y: number };
  /** Every mark of the scale, by its graduation. */
  readonly marks: readonly number[];
};

/** A gauge from 0 to `topMmHg`, graduated every `stepMmHg`. */
export function gaugeScale(topMmHg: number, stepMmHg: number): GaugeScale {
  const perMmHg = (HIGH_DEGREES - LOW_DEGREES) / topMmHg;
  const degrees = (mmHg: number) => LOW_DEGREES + Math.min(topMmHg, Math.max(0, mmHg)) * perMmHg;
  return {
    degrees,
    at: (mmHg, radius) => {
      const angle = (degrees(mmHg) * Math.PI) / 180;
      return {
        x: Math.round((MIDDLE + radius * Math.sin(angle)) * 100) / 100,
        y: Math.round((MIDDLE - radius * Math.cos(angle)) * 100) / 100,
      };
    },
    marks: Array.from({ length: Math.floor(topMmHg / stepMmHg) + 1 }, (_, mark) => mark * stepMmHg),
  };
}

/**
 * The pressure under a finger at a place of the face, on the nearest mark. Below, where the face is open, it is the end of
 * the scale that the needle is nearer to, so that a finger that slips over the gap does not throw it to the other end.
 *
 * @param from where the needle stands now, mmHg
 */
export function mmHgUnder(
  { x, y }: { readonly x: number; readonly y: number },
  from: number,
  topMmHg: number,
  stepMmHg: number,
): number {
  const angle = (Math.atan2(x - MIDDLE, MIDDLE - y) * 180) / Math.PI;
  if (angle < LOW_DEGREES || angle > HIGH_DEGREES) return from > topMmHg / 2 ? topMmHg : 0;
  const mmHg = ((angle - LOW_DEGREES) / (HIGH_DEGREES - LOW_DEGREES)) * topMmHg;
  return gaugeRead(mmHg, stepMmHg, 'nearest');
}
