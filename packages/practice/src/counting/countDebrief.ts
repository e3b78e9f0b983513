import {
  type CountResult,
  countResult,
  DEFAULT_COUNT_RULES,
  UNKNOWN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import { type Circumstances, type Person, truth } from '@evenfall/physiology';
import type { Counted } from '../exercise/exercise.js';

/** A count beside what was true of the minute about its window; per minute. `error` is counted minus true. */
export type CountDebrief = {
  readonly startSeconds: number;
  readonly result: CountResult;
  readonly truePerMinute: number;
  /** Beats of the heart, where not each of them reaches the wrist; null of breaths. */
  readonly heartPerMinute: number | null;
  readonly error: number;
};

/** What came of a count. A pulse is held against what a practised finger feels at the wrist. */
export function countDebrief(
  { startSeconds, count }: Counted,
  person: Person,
  circumstances: Circumstances,
): CountDebrief {
  const result = countResult(count, UNKNOWN_CIRCUMSTANCES, DEFAULT_COUNT_RULES);
  const then = truth(person, circumstances, startSeconds + count.windowSeconds / 2);
  const isPulse = count.of === 'pulse';
  const truePerMinute = isPulse ? then.wristPerMinute : then.breathsPerMinute;
  return {
    startSeconds,
    result,
    truePerMinute,
    heartPerMinute: isPulse ? then.pulsePerMinute : null,
    error: result.perMinute - truePerMinute,
  };
}
