import { minutesUpright, numberFrom, SCORE_FIGURES } from '@evenfall/clinical';
import type { Stamp } from '@evenfall/record';
import type { Say } from '@evenfall/words';
import { withPoint } from '../app/withPoint.js';
import {
  type Instant,
  type PressureDraft,
  secondsBetween,
  type TypedAs,
  type UprightDraft,
} from './pressureDraft.js';

/** How long somebody has stood, seconds; why it goes by the device's wall clock, null where it does not. */
export type Upright = { readonly seconds: number; readonly byWallClock: 'reload' | 'sleep' | null };

/**
 * How much further the wall clock may run before it is taken, seconds: less than the tenth of a minute that a reading
 * holds. Source: decision of this project.
 */
const SLEPT_SECONDS = 5;

/**
 * How long the person has stood until now. Within a visit it goes by the monotonic clock, which on most devices stands
 * while they sleep (MDN, `performance.now()`, "Ticking during sleep"): where the wall clock ran further, that one is
 * taken. A reload ends the monotonic clock and the person stands on: then the wall clock is all there is. Which it goes by
 * is said. Null where nobody said since when, or where the wall clock is needed and was set back behind it or is past what
 * a reading can hold.
 *
 * @param at the wall clock now
 */
export function uprightUntil(upright: UprightDraft | null, now: Instant, at: Stamp): Upright | null {
  if (upright === null) return null;
  const within = secondsBetween(upright.since, now);
  const seconds = (Date.parse(at.at) - Date.parse(upright.at.at)) / 1000;
  if (within !== null && seconds - within <= SLEPT_SECONDS) return { seconds: within, byWallClock: null };
  const isPossible = seconds >= 0 && seconds <= SCORE_FIGURES.longestStandingMinutes.value * 60;
  return isPossible ? { seconds, byWallClock: within === null ? 'reload' : 'sleep' } : null;
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

/** The minutes on the feet as typed in its language; null for a blank or what is no such time. */
export function uprightOf(text: string | undefined, say: Say): number | null {
  const minutes = numberFrom(withPoint((text ?? '').trim(), say));
  const isPossible =
    minutes !== null && minutes >= 0 && minutes <= SCORE_FIGURES.longestStandingMinutes.value;
  return isPossible ? minutes : null;
}
