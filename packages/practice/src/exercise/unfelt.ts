import type { Exercise } from './exercise.js';
import type { FeltBack } from './feltBack.js';

/** Whether a reading was made by feel: the pulse that came back was written, and no sound. */
export function isReadByFeel({ evidence }: Exercise): boolean {
  return evidence.run?.run.method === 'palpation';
}

/**
 * Whether a number was written by feel of a letting down in which no pulse came back under a finger: whatever it is, it is no reading.
 * @param back what the fingers felt of that letting down; null: the cuff was never pumped up for it
 * Source: docs/conventions.md section 6 (a pressure by feel is where the pulse came back).
 */
export function isUnfelt(exercise: Exercise, back: FeltBack | null): boolean {
  return isReadByFeel(exercise) && exercise.entered.systolic !== null && (back?.first ?? null) === null;
}
