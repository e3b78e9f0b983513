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
  const unsigned =
    begun === undefined
      ? []
      : [recheckUrgency(begun.recheck), ...(begun.condition === null ? [] : [recheckUrgency(null)])];
  return Math.min(...charted, ...unsigned);
}

/** Whether the pressure is severe, or worse: it stands before what is late and less, though its own time has not come. */
export function isGrave(
  latest: Pick<PersonRow['latest'], 'actNow' | 'recheck'>,
  begun: BegunAlarm | undefined,
): boolean {
  return urgencyOf(latest, begun) <= recheckUrgency('recheck-severe');
}

/** The time, ms, of what has none of its own: of equally urgent ones it stands after those of whom something is due as well. */
export const NO_TIME = Number.MAX_SAFE_INTEGER;
