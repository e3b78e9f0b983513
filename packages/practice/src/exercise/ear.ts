import { backgroundThresholdDb, type Person } from '@evenfall/physiology';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import type { Exercise } from './exercise.js';

/**
 * What this observer does not hear, dB over a normal ear's threshold: by the ear and by the noise of the place. Where
 * sounds were shown, and for an ear that heard the softest tap of the loudness check, none of it is the ear's.
 */
export function earOf(
  { evidence }: Pick<Exercise, 'evidence'>,
  { person }: { readonly person: Person },
): { readonly thresholdDb: number; readonly noiseDb: number } {
  if (evidence.wasShown) return { thresholdDb: 0, noiseDb: 0 };
  const { thresholdDb } = evidence;
  const isHeard = thresholdDb === null || thresholdDb <= F.softestTapDb.value;
  return {
    thresholdDb: isHeard ? 0 : thresholdDb,
    noiseDb: backgroundThresholdDb(person.scenario.noiseDbA),
  };
}
