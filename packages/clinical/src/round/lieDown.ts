import type { Flag } from '../contract/flag.js';
import { isPast } from '../score/bands.js';
import { SCORE_FIGURES as STANDING } from '../score/figures.js';
import { type StandingAsk, standingAsk } from '../score/standingDue.js';
import type { RoundReading } from './roundReading.js';

export type LieDownCode = 'symptoms-on-standing' | 'standing-systolic-low';

/**
 * Why readings on the feet say that the person is to lie down: they felt unwell, or the systolic was low. A fall that is
 * borne is no reason: it is one if it lasts, and that takes the third minute. Minutes that nobody noted are left out.
 *
 * @param readings of one round, in the order in which they were taken; mmHg
 * Source: bedside handbook 3.14 (stop; a systolic falling below 90).
 */
export function lieDownFlags(readings: readonly RoundReading[]): Flag<LieDownCode>[] {
  return readings
    .filter(({ posture }) => posture === 'stand')
    .flatMap(({ systolic, uprightMinutes, isUnwellUpright }): Flag<LieDownCode>[] => {
      const at = uprightMinutes === null ? {} : { minutes: uprightMinutes };
      const limitMmHg = STANDING.standingSystolicLow.value;
      return [
        ...(isUnwellUpright === true ? [{ code: 'symptoms-on-standing' as const, figures: at }] : []),
        ...(isPast(systolic, 'standingSystolicLow')
          ? [{ code: 'standing-systolic-low' as const, figures: { systolic, ...at, limitMmHg } }]
          : []),
      ];
    });
}

/** Whether {@link lieDownFlags} has a reason: then nothing asks the person onto their feet again in this round. */
export function isToLieDown(readings: readonly RoundReading[]): boolean {
  return lieDownFlags(readings).length > 0;
}

/** As {@link StandingAsk}; of whoever is to lie down no reading is due, late or missed. */
export type UprightAsk = StandingAsk & { readonly isToLieDown: boolean };

/**
 * What is to be said of the readings on the feet of a round now.
 *
 * @param seconds on the feet so far
 * @param readings of the round, in the order in which they were taken
 */
export function uprightAsk(seconds: number, readings: readonly RoundReading[]): UprightAsk {
  if (isToLieDown(readings)) return { due: null, missed: null, isLate: false, isToLieDown: true };
  const taken = readings.flatMap(({ uprightMinutes }) => uprightMinutes ?? []);
  return { ...standingAsk(seconds, taken), isToLieDown: false };
}
