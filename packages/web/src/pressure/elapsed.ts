import type { Stamp } from '@evenfall/record';
import { type Instant, type SinceDraft, secondsBetween } from './pressureDraft.js';

/** How long somebody has stood or lain, seconds; why it goes by the device's wall clock, null where it does not. */
export type Elapsed = { readonly seconds: number; readonly byWallClock: 'reload' | 'sleep' | null };

/**
 * How much further the wall clock may run before it is taken, seconds: less than the tenth of a minute that a reading
 * holds. Source: decision of this project.
 */
const SLEPT_SECONDS = 5;

/**
 * How long the person has stood or lain until now. Within a visit it goes by the monotonic clock, which on most devices
 * stands while they sleep (MDN, `performance.now()`, "Ticking during sleep"): where the wall clock ran further, that one is
 * taken. A reload ends the monotonic clock and the person stands on: then the wall clock is all there is. Which it goes by
 * is said. Null where nobody said since when, or where the wall clock is needed and was set back behind it or is past what
 * a reading can hold.
 *
 * @param at the wall clock now
 * @param mostMinutes the longest time that a reading can hold
 */
export function elapsedUntil(
  since: SinceDraft | null,
  now: Instant,
  at: Stamp,
  mostMinutes: number,
): Elapsed | null {
  if (since === null) return null;
  const within = secondsBetween(since.since, now);
  const seconds = (Date.parse(at.at) - Date.parse(since.at.at)) / 1000;
  if (within !== null && seconds - within <= SLEPT_SECONDS) return { seconds: within, byWallClock: null };
  const isPossible = seconds >= 0 && seconds <= mostMinutes * 60;
  return isPossible ? { seconds, byWallClock: within === null ? 'reload' : 'sleep' } : null;
}
