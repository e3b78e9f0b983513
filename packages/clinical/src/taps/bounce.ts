import { passes } from '../contract/threshold.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';

const BOUNCE_MS = TAP_FIGURES.touchBounceMs.value;

/**
 * Whether a tap on a touch screen is the last kept one again: sooner than 150 ms after it, since nobody has 400
 * beats a minute. This holds in any rhythm, so it needs no steady one around it. Compared at a
 * microsecond, the finest that the seconds of an epoch hold.
 */
function isBounce(lastKeptSeconds: number, seconds: number): boolean {
  const microseconds = Math.round((seconds - lastKeptSeconds) * 1000 * 1000);
  return passes(microseconds / 1000, SIDE.touchBounceMs, BOUNCE_MS);
}

/** Which taps of a touch screen are left without its bounces, by place from 0; the first of each burst is kept. */
export function placesWithoutBounces(seconds: readonly number[]): number[] {
  const kept: number[] = [];
  for (let at = 0; at < seconds.length; at++) {
    const last = kept.at(-1);
    if (last === undefined || !isBounce(seconds[last] as number, seconds[at] as number)) kept.push(at);
  }
  return kept;
}
