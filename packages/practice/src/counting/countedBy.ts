import type { CountOf } from '@evenfall/clinical';
import { beats, breaths, type Circumstances, type Person } from '@evenfall/physiology';
import type { Counted } from '../exercise/exercise.js';
import type { Counting } from '../observer/observer.js';
import { countOf } from './countOf.js';

/** Events just past the end of a window are looked at too, for a clock that starts on a beat. */
const BEYOND_SECONDS = 15;

/** What a finger on the open wrist, or an eye on the chest, counts from a second of the visit on. Null: nothing to start on. */
export function countedBy(
  counting: Counting,
  of: CountOf,
  person: Person,
  circumstances: Circumstances,
  startSeconds: number,
): Counted | null {
  const windowSeconds = of === 'pulse' ? counting.pulseWindowSeconds : counting.breathsWindowSeconds;
  const to = startSeconds + windowSeconds + BEYOND_SECONDS;
  const seconds = countedEvents(of, person, circumstances, startSeconds, to);
  return countOf(of, seconds, startSeconds, windowSeconds, counting);
}

/** What there is to count in [fromSeconds, toSeconds), seconds in order: beats that a finger feels, breaths as they begin. */
export function countedEvents(
  of: CountOf,
  person: Person,
  circumstances: Circumstances,
  fromSeconds: number,
  toSeconds: number,
): number[] {
  if (of === 'breaths')
    return breaths(person, circumstances, fromSeconds, toSeconds).map((one) => one.startSeconds);
  return beats(person, circumstances, fromSeconds, toSeconds)
    .filter(({ isFelt }) => isFelt)
    .map(({ footSeconds }) => footSeconds);
}
