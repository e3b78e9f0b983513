import type { PersonRow } from '@evenfall/api';
import { recheckUrgency } from '@evenfall/clinical';
import type { BegunAlarm } from '../round/begunAlarm.js';

/** How urgent somebody is among others, by what is charted and by a round that nobody signed yet: 0 comes first. */
export function urgencyOf(
  { actNow, recheck }: Pick<PersonRow['latest'], 'actNow' | 'recheck'>,
  begun: BegunAlarm | undefined,
): number {
  const charted = actNow === 0 && recheck === null ? [] : [recheckUrgency(recheck?.code ?? null)];
  return Math.min(...charted, ...(begun === undefined ? [] : [recheckUrgency(begun.recheck)]));
}
