import { minutesLying, ROUND_FIGURES } from '@evenfall/clinical';
import type { RunPlace, Stamp } from '@evenfall/record';
import type { Say } from '@evenfall/words';
import { type Elapsed, elapsedUntil } from './elapsed.js';
import { type Instant, isLying, type PressureDraft, type SinceDraft, type TypedAs } from './pressureDraft.js';
import { minutesTyped, uprightField } from './upright.js';

/** How long the person has lain until now (see `elapsedUntil`). */
export function lainUntil(lying: SinceDraft | null, now: Instant, at: Stamp): Elapsed | null {
  return elapsedUntil(lying, now, at, ROUND_FIGURES.longestLyingMinutes.value);
}

/** The minutes on the feet or lying as the field of a reading that is begun now holds them; no field where not known. */
export function postureField(pressure: PressureDraft, now: Instant, at: Stamp): TypedAs['fields'] {
  const { lying = null, place } = pressure;
  const lain = place !== null && isLying(place) ? lainUntil(lying, now, at) : null;
  const minutes = lain === null ? null : minutesLying(lain.seconds);
  return minutes === null ? uprightField(pressure, now, at) : { lyingMinutes: String(minutes) };
}

/** The minutes lying as typed in its language; null for a blank or what is no such time. */
export function lainOf(text: string | undefined, say: Say): number | null {
  return minutesTyped(text, say, ROUND_FIGURES.longestLyingMinutes.value);
}

/** Whether something stands in the field of the minutes lying that is no such time; a blank is not known. */
export function isLainWrong(place: RunPlace, text: string | undefined, say: Say): boolean {
  return isLying(place) && (text ?? '').trim() !== '' && lainOf(text, say) === null;
}
