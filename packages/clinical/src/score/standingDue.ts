import { roundTo } from '../contract/rounding.js';
import { isAtFirst, isAtThird, wholeMinutes } from './falls.js';
import { SCORE_FIGURES as F } from './figures.js';

/** A reading on the feet that is to come: at so many minutes, in so many seconds; 0 seconds is now. */
export type StandingDue = { readonly minutes: number; readonly inSeconds: number };

/** `missed`: its minute, null for none. `isLate`: that it is to be taken now, as the late reading that it is. */
export type StandingAsk = {
  readonly due: StandingDue | null;
  readonly missed: number | null;
  readonly isLate: boolean;
};

/**
 * Which reading on the feet comes next, and in how long. A minute is over when the minutes that a reading would keep
 * round to a later one: its reading is then not asked for, so that one that is asked for counts as it. Null where none
 * is to come.
 *
 * @param seconds on the feet so far
 * @param taken minutes on the feet of the readings that are in
 * Source: bedside handbook 3.14 (pressure and pulse at 1 and 3 min).
 * @example standingDue(43, []) // { minutes: 1, inSeconds: 17 }
 */
export function standingDue(seconds: number, taken: readonly number[]): StandingDue | null {
  const kept = minutesUpright(seconds);
  if (kept === null) return null;
  const now = wholeMinutes(kept);
  for (const { minutes, isIt } of MINUTES) {
    const isTaken = taken.some((one) => isIt({ minutes: one }));
    if (!isTaken && now <= minutes) return { minutes, inSeconds: Math.max(0, minutes * SECONDS - seconds) };
  }
  return null;
}

/**
 * The minutes whose reading was not taken and can no longer be, by the time on the feet: each is over and has none.
 *
 * @param seconds on the feet so far
 * @param taken minutes on the feet of the readings that are in
 * Source: bedside handbook 3.14 (pressure and pulse at 1 and 3 min).
 * @example missedUpright(240, [1]) // [3]
 */
export function missedUpright(seconds: number, taken: readonly number[]): readonly number[] {
  const now = wholeMinutes(roundTo(seconds / SECONDS, 1));
  return MINUTES.filter(
    ({ minutes, isIt }) => now > minutes && !taken.some((one) => isIt({ minutes: one })),
  ).map(({ minutes }) => minutes);
}

/**
 * What is to be said of the readings on the feet now: the one that is due, the last that was missed, and whether that one is
 * made up for by a late reading. Only the third is: a fall may come after it, and a later reading says nothing of the first.
 *
 * @param seconds on the feet so far
 * @param taken minutes on the feet of the readings that are in
 * Source: bedside handbook 3.14 (a fall within 3 min, or delayed after it).
 * @example standingAsk(240, [1]) // { due: null, missed: 3, isLate: true }
 */
export function standingAsk(seconds: number, taken: readonly number[]): StandingAsk {
  const missed = missedUpright(seconds, taken).at(-1) ?? null;
  const due = standingDue(seconds, taken);
  const third = F.standingWithinMinutes.value;
  const isTakenAfter = taken.some((minutes) => wholeMinutes(minutes) > third);
  return { due, missed, isLate: due === null && missed === third && !isTakenAfter };
}

/** Whether no reading on the feet is to come any more: none is due, and none is to be made up for. */
export function isNoneToCome({ due, isLate }: StandingAsk): boolean {
  return due === null && !isLate;
}

/** Minutes on the feet to a tenth, as a reading keeps them; null past the longest time that is kept. */
export function minutesUpright(seconds: number): number | null {
  const minutes = roundTo(seconds / SECONDS, 1);
  return minutes >= 0 && minutes <= F.longestStandingMinutes.value ? minutes : null;
}

const SECONDS = 60;
const MINUTES = [
  { minutes: F.standingFirstMinutes.value, isIt: isAtFirst },
  { minutes: F.standingWithinMinutes.value, isIt: isAtThird },
];
