import { minutesUpright, SCORE_FIGURES } from '@evenfall/clinical';
import type { Stamp } from '@evenfall/record';
import {
  type Instant,
  type PressureDraft,
  secondsBetween,
  type TypedAs,
  type UprightDraft,
} from './pressureDraft.js';

/** How long somebody has stood, seconds; `byWallClock` where the page was loaded anew in between. */
export type Upright = { readonly seconds: number; readonly byWallClock: boolean };

/**
 * How long the person has stood until now. Within a visit it goes by the monotonic clock. A reload ends that clock and the
 * person stands on: then the device's wall clock is all there is, and it is said that it is. Null where nobody said since
 * when, or where the clock was set back behind it or on past what a reading can hold.
 *
 * @param at the wall clock now
 */
export function uprightUntil(upright: UprightDraft | null, now: Instant, at: Stamp): Upright | null {
  if (upright === null) return null;
  const within = secondsBetween(upright.since, now);
  if (within !== null) return { seconds: within, byWallClock: false };
  const seconds = (Date.parse(at.at) - Date.parse(upright.at.at)) / 1000;
  const isPossible = seconds >= 0 && seconds <= SCORE_FIGURES.longestStandingMinutes.value * 60;
  return isPossible ? { seconds, byWallClock: true } : null;
}

/** The minutes on the feet as the field of a reading that is begun now holds them; no field where they are not known. */
export function uprightField(
  { upright = null, place }: PressureDraft,
  now: Instant,
  at: Stamp,
): TypedAs['fields'] {
  const stood = place?.posture === 'stand' ? uprightUntil(upright, now, at) : null;
  const minutes = stood === null ? null : minutesUpright(stood.seconds);
  return minutes === null ? {} : { uprightMinutes: String(minutes) };
}
