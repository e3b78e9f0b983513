import type { UsualResult } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

type Settled = Pick<UsualResult, 'isSettled' | 'settledAfterDays' | 'oneMoreDay'>;

/**
 * Whether it stands clear already, how many more days would make it so, or that none would. Nothing of more days where nobody
 * measured at home.
 */
export function settledText(
  { isSettled, settledAfterDays, oneMoreDay }: Settled,
  mmHg: number,
  words: Words,
): string {
  if (isSettled) return words.sentence('away.settled', { mmHg });
  if (oneMoreDay === null) return '';
  return settledAfterDays === null
    ? words.sentence('away.notSettled', { mmHg })
    : words.sentence('away.settledAfter', { days: settledAfterDays, mmHg });
}
