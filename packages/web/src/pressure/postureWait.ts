import { lyingDue, standingDue } from '@evenfall/clinical';
import type { RunPlace, Stamp } from '@evenfall/record';
import type { RoundDraft } from '../round/draft.js';
import { lainUntil } from './lying.js';
import { type Instant, isLying, type PressureDraft } from './pressureDraft.js';
import { uprightUntil } from './upright.js';

/** How long the posture of the next reading still has to last before the cuff goes up, s; 0 where no clock of it runs. */
export function postureWait(pressure: PressureDraft, place: RunPlace, now: Instant, at: Stamp): number {
  const { lying = null, upright = null, values } = pressure;
  if (place.posture === 'stand') {
    const stood = uprightUntil(upright, now, at);
    const taken = values.flatMap(({ uprightMinutes }) => uprightMinutes ?? []);
    return stood === null ? 0 : (standingDue(stood.seconds, taken)?.inSeconds ?? 0);
  }
  const lain = isLying(place) ? lainUntil(lying, now, at) : null;
  return lain === null ? 0 : lyingDue(lain.seconds);
}

/**
 * Whether the minutes in a posture are begun before the cuff goes up: of standing always, of lying where it is the rest
 * before the standing ones. Elsewhere somebody may have lain in bed all day.
 */
export function isToBegin({ pressure, wanted }: RoundDraft, place: RunPlace): boolean {
  const { upright = null, lying = null, values } = pressure;
  if (place.posture === 'stand') return upright === null;
  const isBaseline = wanted.includes('lying-and-standing') && !values.some((one) => isLying(one.place));
  return isLying(place) && isBaseline && lying === null;
}

/** Which of two waits is said, where there are both: the one that ends last. */
export type WaitSaid = 'posture' | 'arm';

/**
 * One clock before the cuff goes up: of the minutes in a posture and the rest of the arm the one that ends last, the posture where
 * its minutes are not begun, as they outlast a rest that goes on meanwhile.
 *
 * @param armSeconds how long the arm still rests; null is not known
 */
export function waitSaid(
  draft: RoundDraft,
  place: RunPlace,
  armSeconds: number | null,
  { isAtOnce, now, at }: { readonly isAtOnce: boolean; readonly now: Instant; readonly at: Stamp },
): WaitSaid {
  if (!isPostureFirst(draft, place, { isAtOnce, now, at })) return 'arm';
  if (armSeconds === null || isToBegin(draft, place)) return 'posture';
  return postureWait(draft.pressure, place, now, at) >= armSeconds ? 'posture' : 'arm';
}

/**
 * Whether minutes lying or on the feet are still to pass, so that nothing says meanwhile that the cuff may go up. What is asked for
 * at once lying waits for none: whoever was laid down from their feet is measured now.
 * Source: bedside handbook 3.15 (at once, do not wait; common practice) before 3.14 (five minutes lying).
 */
export function isPostureFirst(
  draft: RoundDraft,
  place: RunPlace,
  { isAtOnce, now, at }: { readonly isAtOnce: boolean; readonly now: Instant; readonly at: Stamp },
): boolean {
  if (isAtOnce && isLying(place)) return false;
  return isToBegin(draft, place) || postureWait(draft.pressure, place, now, at) > 0;
}
