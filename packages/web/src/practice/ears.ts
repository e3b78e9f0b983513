import type { Aids } from '@evenfall/record';
import type { PracticeDraft, PracticeShelf } from './keptPractice.js';

/** What was said of the ears on this device. */
export type Ears = Pick<PracticeDraft, 'aids' | 'thresholdDb'> & {
  readonly showsSounds: boolean;
  /** Whether a pulse under the finger is heard as well, softly; absent for not. */
  readonly hearsPulse?: boolean;
};

export const NO_AIDS: Aids = {
  hasHearingAid: false,
  isAmplified: false,
  isLoudspeakerVoice: false,
  hadSound: false,
};
export const FRESH_EARS: Ears = { aids: NO_AIDS, thresholdDb: null, showsSounds: false };

const KEY = 'evenfall.practice.ears';

export function readEars(shelf: PracticeShelf | null): Ears | null {
  try {
    const text = shelf?.getItem(KEY) ?? null;
    return text === null ? null : { ...FRESH_EARS, ...(JSON.parse(text) as Ears) };
  } catch {
    return null;
  }
}

export function keepEars(shelf: PracticeShelf | null, ears: Ears): void {
  try {
    shelf?.setItem(KEY, JSON.stringify(ears));
  } catch {
    // It is asked again next time.
  }
}

/** How many taps were heard -> quietest of them, dB; with none heard, something louder than the loudest. */
export function thresholdOf(heard: number, levelsDb: readonly number[]): number {
  return heard === 0 ? (levelsDb[0] ?? 0) + 1 : (levelsDb[heard - 1] ?? 0);
}

/** Noise of a place, dB(A), as it is played: none where a room is quiet. */
export function noiseHeard(noiseDbA: number): number | null {
  return noiseDbA > QUIET_DBA ? noiseDbA : null;
}

/** A room so quiet is heard as none. Source: no source, decision of this project. */
const QUIET_DBA = 45;
