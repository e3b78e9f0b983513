import { sinesOfTurns } from '../exact/circle.js';

/** Breath and slow wave at an instant: turns, then their sines. */
const WAVES = new Float64Array(2);
export const BREATH = 0;
export const SLOW = 1;
/** A quarter turn makes a cosine. */
const QUARTER = 0.25;

/** Where both stand: the cosine of a breath at its turns, the sine of the slow wave at its own. Good until it is asked again. */
export function wavesAt(breathTurns: number, slowTurns: number): Float64Array {
  WAVES[BREATH] = breathTurns + QUARTER;
  WAVES[SLOW] = slowTurns;
  sinesOfTurns(WAVES);
  return WAVES;
}
