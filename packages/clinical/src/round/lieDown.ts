import type { Flag } from '../contract/flag.js';
import { type StandingAsk, standingAsk } from '../score/standingDue.js';
import type { ActNowRules } from './actNowRules.js';
import { isUpright } from './readingsOf.js';
import type { RoundReading } from './roundReading.js';
import { tooLowToStand } from './tooLowToStand.js';

export type LieDownCode = 'symptoms-on-standing' | 'standing-systolic-low';

/**
 * Why readings on the feet say that the person is to lie down: they felt unwell, or the systolic was low. A fall that is
 * borne is no reason: it is one if it lasts, and that takes the third minute. Minutes that nobody noted are left out, and so is
 * the limit of a systolic that is low by the limits of the alert alone.
 *
 * @param readings of one round, in the order in which they were taken; mmHg
 * @param ageMonths completed months, which a child's limit goes by; null is not known
 * @param rules the limits in force of what is acted on at once
 * Source: bedside handbook 3.14 (stop; a systolic falling below 90), 3.17 (a child's limit); as of {@link tooLowToStand}.
 */
export function lieDownFlags(
  readings: readonly RoundReading[],
  ageMonths: number | null,
  rules: ActNowRules,
): Flag<LieDownCode>[] {
  return readings
    .filter(isUpright)
    .flatMap(({ systolic, uprightMinutes, isUnwellUpright }): Flag<LieDownCode>[] => {
      const at = uprightMinutes === null ? {} : { minutes: uprightMinutes };
      const low = tooLowToStand(systolic, ageMonths, rules);
      return [
        ...(isUnwellUpright === true ? [{ code: 'symptoms-on-standing' as const, figures: at }] : []),
        ...(low === null ? [] : [{ code: 'standing-systolic-low' as const, figures: { ...low, ...at } }]),
      ];
    });
}

/** Whether {@link lieDownFlags} has a reason: then nothing asks the person onto their feet again in this round. */
export function isToLieDown(
  readings: readonly RoundReading[],
  ageMonths: number | null,
  rules: ActNowRules,
): boolean {
  return lieDownFlags(readings, ageMonths, rules).length > 0;
}

/** The first reading by which a person was laid down from their feet, as {@link lieDownFlags} says; null for none. */
export function laidDownBy<R extends RoundReading>(
  readings: readonly R[],
  ageMonths: number | null,
  rules: ActNowRules,
): R | null {
  return readings.find((one) => isToLieDown([one], ageMonths, rules)) ?? null;
}

/** As {@link StandingAsk}; of whoever is to lie down no reading is due, late or missed. */
export type UprightAsk = StandingAsk & { readonly isToLieDown: boolean };

/**
 * What is to be said of the readings on the feet of a round now.
 *
 * @param seconds on the feet so far
 * @param readings of the round, in the order in which they were taken
 * @param ageMonths and `rules` as of {@link lieDownFlags}
 */
export function uprightAsk(
  seconds: number,
  readings: readonly RoundReading[],
  ageMonths: number | null,
  rules: ActNowRules,
): UprightAsk {
  if (isToLieDown(readings, ageMonths, rules))
    return { due: null, missed: null, isLate: false, isToLieDown: true };
  const taken = readings.flatMap(({ uprightMinutes }) => uprightMinutes ?? []);
  return { ...standingAsk(seconds, taken), isToLieDown: false };
}
