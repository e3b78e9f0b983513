import { type CountRules, firstWindow, type Refusal, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';

/** Whether a pulse of this person is counted the full minute, since it is known to be irregular. */
export function isAskedForRhythm(hasIrregularRhythm: boolean, rules: CountRules): boolean {
  return firstWindow('pulse', UNKNOWN_CIRCUMSTANCES, hasIrregularRhythm, rules).why.some(
    ({ code }) => code === 'irregular-known',
  );
}

/**
 * Over how many seconds the pulse of a set was counted: as said for this set, else as whoever measures does it. Of a pulse known to
 * be irregular it is said for each set and never presumed; null while nobody said.
 */
export function setWindowSeconds(
  said: string,
  habit: string,
  hasIrregularRhythm: boolean,
  rules: CountRules,
): number | null {
  if (said !== '') return Number(said);
  return isAskedForRhythm(hasIrregularRhythm, rules) ? null : Number(habit);
}

/** A rate that its window cannot give: its number, the window, and by how much a count over it goes; null for any other. */
export function notInWindow(wrong: Refusal | null) {
  const seconds = wrong?.figures.windowSeconds;
  if (wrong?.field !== '/pulse' || wrong.code !== 'impossible' || seconds === undefined) return null;
  return { perMinute: Number(wrong.got), seconds, stepPerMinute: 60 / seconds };
}
