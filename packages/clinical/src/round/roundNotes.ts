import type { Flag } from '../contract/flag.js';
import { type ArmCuffsCode, armCuffFlags, type CuffedReading } from './armCuffs.js';

/** A reading with what is said of it beside its value and that of its round. */
export type NotedReading = CuffedReading;

/**
 * What is to be said beside the result of a round and is not part of it: it is made anew whenever it is shown, from the
 * same evidence, so that no kept value changes with it.
 */
export type RoundNotes = {
  /** Beside the comparison of the two arms. */
  readonly arms: readonly Flag<ArmCuffsCode>[];
};

export const NO_ROUND_NOTES: RoundNotes = { arms: [] };

/** @param readings those that stand, in the order in which they were taken */
export function roundNotes(readings: readonly NotedReading[]): RoundNotes {
  return { arms: armCuffFlags(readings) };
}
