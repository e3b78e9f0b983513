import { minutesUpright, numberFrom, SCORE_FIGURES } from '@evenfall/clinical';
import type { Stamp } from '@evenfall/record';
import type { Say } from '@evenfall/words';
import { withPoint } from '../app/withPoint.js';
import { type Elapsed, elapsedUntil } from './elapsed.js';
import type { Instant, PressureDraft, SinceDraft, TypedAs } from './pressureDraft.js';

/** How long the person has stood until now (see `elapsedUntil`). */
export function uprightUntil(upright: SinceDraft | null, now: Instant, at: Stamp): Elapsed | null {
  return elapsedUntil(upright, now, at, SCORE_FIGURES.longestStandingMinutes.value);
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
  return minutesTyped(text, say, SCORE_FIGURES.longestStandingMinutes.value);
}

/** Minutes as typed in their language; null for a blank or what is no such time. */
export function minutesTyped(text: string | undefined, say: Say, mostMinutes: number): number | null {
  const minutes = numberFrom(withPoint((text ?? '').trim(), say));
  return minutes !== null && minutes >= 0 && minutes <= mostMinutes ? minutes : null;
}
