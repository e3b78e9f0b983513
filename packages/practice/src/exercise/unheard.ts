import { backgroundThresholdDb, noiseOf } from '@evenfall/physiology';
import type { DebriefMark } from './debrief.js';
import { heardIn, soundsIn } from './ear.js';
import type { Exercise } from './exercise.js';
import type { FallOf } from './fall.js';
import { circumstancesAt, type Replay } from './replay.js';

/** A first sound and a last one are two. */
export const LEAST_SOUNDS = 2;

/** Of how many beats a sound was to be heard by this observer in a fall. */
export function soundsHeard(exercise: Exercise, played: Replay, fall: FallOf): number {
  if (isSilent(exercise)) return 0;
  return new Set(heardIn(exercise, played, fall).map(({ beat }) => beat)).size;
}

/** Whether there was neither a sound on nor one shown. */
export function isSilent({ aids, evidence }: Exercise): boolean {
  return aids?.hadSound === false && !evidence.wasShown;
}

/** Whether numbers were written of no letting down at all: whatever they are, nothing was measured. */
export function isUnmeasured({ entered }: Exercise, fall: FallOf | null): boolean {
  return fall === null && (entered.systolic !== null || entered.diastolic !== null);
}

/**
 * Whether numbers were written by ear of a letting down in which nothing was to be heard that they could be of: whatever they are,
 * they are no reading. An ear that hears more than its check told shows it by a mark on a sound that the room let through.
 * Source: docs/conventions.md section 6 (a pressure by ear is a first sound and a last one).
 */
export function isUnheard(
  exercise: Exercise,
  played: Replay,
  fall: FallOf | null,
  marks: readonly DebriefMark[],
): boolean {
  const { entered, evidence } = exercise;
  const method = evidence.run?.run.method ?? 'auscultation';
  if (method !== 'auscultation' || (entered.systolic === null && entered.diastolic === null)) return false;
  if (fall === null) return true;
  if (soundsHeard(exercise, played, fall) >= LEAST_SOUNDS) return false;
  if (isSilent(exercise)) return true;
  const then = circumstancesAt(exercise, fall.peakSeconds, played.firstInflationSeconds);
  const roomDb = evidence.wasShown ? 0 : backgroundThresholdDb(noiseOf(played.person.scenario, then));
  const inRoom = soundsIn(played, fall).filter(({ levelDb }) => levelDb >= roomDb);
  const isMarked = marks.some(
    ({ soundSeconds }) => soundSeconds !== null && inRoom.some(({ atSeconds }) => atSeconds === soundSeconds),
  );
  return inRoom.length < LEAST_SOUNDS || !isMarked;
}
