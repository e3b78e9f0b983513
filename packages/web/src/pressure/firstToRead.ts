import type { Mark, MarkOf } from './pressureDraft.js';

/** Which mark the gauge shows first: the first sound, which is remembered longest, or the pulse that came back. */
export function firstToRead(marks: readonly Mark[]): number {
  const placeOf = (of: MarkOf) => marks.findIndex(({ what }) => what === of);
  const sound = placeOf('first sound');
  return Math.max(0, sound === -1 ? placeOf('pulse back') : sound);
}
