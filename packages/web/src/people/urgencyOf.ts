import type { PersonRow } from '@evenfall/api';
import { recheckUrgency } from '@evenfall/clinical';
import type { BegunAlarm } from '../round/begunAlarm.js';

/**
 * How urgent somebody is among others, by what is charted and by a round that nobody signed yet: 0 comes first. Of an open alert and
 * a repeat that is due the more urgent counts: more to do puts nobody further down.
 */
export function urgencyOf(
  { actNow, recheck }: Pick<PersonRow['latest'], 'actNow' | 'recheck'>,
  begun: BegunAlarm | undefined,
): number {
  const charted = [
    ...(actNow === 0 ? [] : [recheckUrgency(null)]),
    ...(recheck === null ? [] : [recheckUrgency(recheck.code)]),
  ];
  return Math.min(...charted, ...(begun === undefined ? [] : [recheckUrgency(begun.recheck)]));
}

/** The time, ms, of what has none of its own: of equally urgent ones it stands after those of whom something is due as well. */
export const NO_TIME = Number.MAX_SAFE_INTEGER;
