import { passes } from '../contract/threshold.js';
import { type ScoreLimit, SCORE_COMPARISONS as SIDE } from './comparisons.js';
import { SCORE_FIGURES as F } from './figures.js';

/** Whether a value is past a limit of a score, on the side that the limit has. */
export function isPast(value: number, limit: ScoreLimit): boolean {
  return passes(value, SIDE[limit], F[limit].value);
}

/** A limit with what holds past it. */
export type Step<Held> = readonly [limit: ScoreLimit, held: Held];

/** What holds at a value: of the first limit that it is past, else `otherwise`. */
export function heldAt<Held>(value: number, steps: readonly Step<Held>[], otherwise: Held): Held {
  return steps.find(([limit]) => isPast(value, limit))?.[1] ?? otherwise;
}
