import type { Flag } from '../contract/flag.js';
import { lowUprightLimit } from '../score/lowUpright.js';
import { type StandingAsk, standingAsk } from '../score/standingDue.js';
import type { RoundReading } from './roundReading.js';

export type LieDownCode = 'symptoms-on-standing' | 'standing-systolic-low';

/**
 * Why readings on the feet say that the person is to lie down: they felt unwell, or the systolic was low. A fall that is
 * borne is no reason: it is one if it lasts, and that takes the third minute. Minutes that nobody noted are left out.
 *
 * @param readings of one round, in the order in which they were taken; mmHg
 * @param ageMonths completed months, which a child's limit goes by; null is not known
 * Source: bedside handbook 3.14 (stop; a systolic falling below 90), 3.17 (a child's limit).
 */
export function lieDownFlags(
  readings: readonly RoundReading[],
  ageMonths: number | null,
): Flag<LieDownCode>[] {
  return readings
    .filter(({ posture }) => posture === 'stand')
    .flatMap(({ systolic, uprightMinutes, isUnwellUpright }): Flag<LieDownCode>[] => {
      const at = uprightMinutes === null ? {} : { minutes: uprightMinutes };
      const limitMmHg = lowUprightLimit(systolic, ageMonths);
      return [
        ...(isUnwellUpright === true ? [{ code: 'symptoms-on-standing' as const, figures: at }] : []),
        ...(limitMmHg === null
          ? []
          : [{ code: 'standing-systolic-low' as const, figures: { systolic, ...at, limitMmHg } }]),
      ];
    });
}

/** Whether {@link lieDownFlags} has a reason: then nothing asks the person onto their feet again in this round. */
export function isToLieDown(readings: readonly RoundReading[], ageMonths: number | null): boolean {
  return lieDownFlags(readings, ageMonths).length > 0;
}

/** As {@link StandingAsk}; of whoever is to lie down no reading is due, late or missed. */
export type UprightAsk = StandingAsk & { readonly isToLieDown: boolean };

/**
 * What is to be said of the readings on the feet of a round now.
 *
 * @param seconds on the feet so far
 * @param readings of the round, in the order in which they were taken
 * @param ageMonths as of {@link lieDownFlags}
 */
export function uprightAsk(
  seconds: number,
  readings: readonly RoundReading[],
  ageMonths: number | null,
): UprightAsk {
  if (isToLieDown(readings, ageMonths)) return { due: null, missed: null, isLate: false, isToLieDown: true };
  const taken = readings.flatMap(({ uprightMinutes }) => uprightMinutes ?? []);
  return { ...standingAsk(seconds, taken), isToLieDown: false };
}
