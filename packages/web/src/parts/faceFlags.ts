import type { Flag } from '@evenfall/clinical';
import type { Content } from './ValueFigures.js';

/**
 * What must be said beside a value while it is being taken: its flags, and why a longer count is asked for or
 * why there is no rate. Of taps, also that the rhythm is too uneven to be named; why a statistic could not be told
 * belongs into the story.
 */
export function faceFlags(given: Content): readonly Flag[] {
  const { flags, why, perMinute } = given.content.value;
  if (given.kind === 'count' || perMinute === null) return [...flags, ...why];
  const uneven = why.filter(({ code }) => code === 'rhythm-not-clear');
  return [...flags, ...uneven, ...given.content.value.nextWhy];
}
