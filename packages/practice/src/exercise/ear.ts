import { backgroundThresholdDb, noiseOf, type SoundEvent } from '@evenfall/physiology';
import type { Evidence, Exercise } from './exercise.js';
import type { FallOf } from './fall.js';
import { circumstancesAt, type Replay } from './replay.js';

/**
 * The softest tap of the loudness check, dB over a normal listener's threshold: who hears it may hear softer ones too, and
 * counts as a normal listener. Source: physiology handbook 13 (the check).
 */
export const SOFTEST_TAP_DB = 5;

/** What this ear does not hear in a quiet room, with whatever helps it, dB; 0: as a normal listener. */
export function earThresholdDb({ wasShown, thresholdDb }: Evidence): number {
  if (wasShown || thresholdDb === null || thresholdDb <= SOFTEST_TAP_DB) return 0;
  return thresholdDb;
}

/** What this observer does not hear in a fall, in this place, dB; where sounds were shown, as a normal ear in a quiet room. */
function earIn(
  exercise: Exercise,
  { person, firstInflationSeconds }: Replay,
  { peakSeconds }: FallOf,
): number {
  const { evidence } = exercise;
  if (evidence.wasShown) return 0;
  const then = circumstancesAt(exercise, peakSeconds, firstInflationSeconds);
  return earThresholdDb(evidence) + backgroundThresholdDb(noiseOf(person.scenario, then));
}

/** The sounds of a fall, heard or not. */
export function soundsIn({ sounds }: Pick<Replay, 'sounds'>, fall: FallOf): SoundEvent[] {
  return sounds.filter(({ atSeconds }) => atSeconds >= fall.peakSeconds && atSeconds <= fall.endSeconds);
}

/** The sounds of a fall that this observer could hear. */
export function heardIn(exercise: Exercise, played: Replay, fall: FallOf): SoundEvent[] {
  const ear = earIn(exercise, played, fall);
  return soundsIn(played, fall).filter(({ levelDb }) => levelDb >= ear);
}
