import type { Exercise } from './exercise.js';

/** Whether nothing at all was written: the truth of such an exercise was looked up, and there is no attempt to judge. A zero is written. */
export function wasLookedUp({ entered }: Pick<Exercise, 'entered'>): boolean {
  return Object.values(entered).every((one) => one === null);
}
