/** What a touch of the clock does: lets time go by, or nothing, and why. */
export type ClockTouch = 'rest' | 'cuff-is-up' | 'at-end';

const RESTED_MINUTES = 5;

/** What is said of it, beside how long they have sat. */
export function clockSays(minutes: number, touch: ClockTouch) {
  if (touch === 'cuff-is-up') return 'practice.fixedNow' as const;
  if (touch === 'at-end') return 'practice.noMoreTime' as const;
  return minutes < RESTED_MINUTES ? ('practice.letSit' as const) : ('practice.letPass' as const);
}

/** How long they have sat by a second of the visit, minutes. @param restMinutes at its start; under 0 where they sat down later */
export function satMinutes(restMinutes: number, seconds: number): number {
  // A minute made of seconds may come out a last bit short of itself.
  return Math.max(0, restMinutes + seconds / 60 + TINY);
}

const TINY = 1e-9;

/** How long they have sat after a touch, whole minutes. */
export function satAfter(minutes: number): number {
  return minutes < RESTED_MINUTES ? RESTED_MINUTES : minutes + 1;
}

/** Whether they have not sat long enough yet, and can. */
export function isTooSoon(minutes: number, touch: ClockTouch): boolean {
  return minutes < RESTED_MINUTES && touch !== 'at-end';
}
