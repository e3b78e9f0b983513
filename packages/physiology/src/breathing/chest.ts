import { cosineOfTurns } from '../exact/circle.js';
import { exp } from '../exact/exponential.js';
import type { BreathStream } from './breathStream.js';

/** How fast breathing out begins beside its end. */
const RELAXING = 1.2;

/** How far the chest has moved out at an instant within the breath at hand: 0 at rest, 1 at the top of a usual breath. */
export function chestOf(breath: BreathStream, seconds: number): number {
  const t = seconds - breath.start;
  if (t <= 0 || t >= breath.moving) return 0;
  if (t < breath.inspiration) return breath.depth * 0.5 * (1 - cosineOfTurns((0.5 * t) / breath.inspiration));
  const out = (t - breath.inspiration) / (breath.moving - breath.inspiration);
  return breath.depth * 0.5 * (1 + cosineOfTurns(0.5 * out)) * exp(-RELAXING * out);
}
