import type { NextStep } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { type Instant, type PressureDraft, secondsBetween } from './pressureDraft.js';

/** How long the next reading at the place of the last one still waits, s; 0 for not at all, null where that is not known. */
export function againSeconds(
  { values }: PressureDraft,
  next: Pick<NextStep, 'step' | 'waitSeconds'> | null,
  now: Instant,
): number | null {
  const last = values.at(-1);
  if (last === undefined || next?.step !== 'repeat' || next.waitSeconds === null) return 0;
  const gone = secondsBetween(last.keptAt, now);
  return gone === null ? null : Math.max(0, Math.ceil(next.waitSeconds - gone));
}

/** That wait in words: a rest of the person is longer than that of an arm, and read as a clock. */
export function againText(seconds: number, gapSeconds: number, words: Words): string {
  return words.sentence(seconds > gapSeconds ? 'pressure.againAfterRest' : 'pressure.againIn', { seconds });
}
