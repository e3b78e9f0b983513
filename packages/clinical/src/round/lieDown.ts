import { isPast } from '../score/bands.js';
import { NO_ROUND_FACTS } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';
import { standingOf } from './standingOf.js';

/**
 * Whether a reading on the feet says that the person is to lie down, so that nobody asks them to stand again: they felt
 * unwell, the systolic was low, or the pressure fell to the limits of the test.
 *
 * @param readings of one round, in the order in which they were taken; mmHg
 * Source: bedside handbook 3.14 (a systolic under 90, a fall to the limits; stop).
 */
export function isToLieDown(readings: readonly RoundReading[]): boolean {
  const upright = readings.filter(({ posture }) => posture === 'stand');
  const isLow = upright.some(
    ({ systolic, isUnwellUpright }) => isUnwellUpright === true || isPast(systolic, 'standingSystolicLow'),
  );
  if (isLow) return true;
  const test = standingOf({ readings, isFeltIrregular: null, facts: NO_ROUND_FACTS });
  return test?.positive === true || test?.delayed === true;
}
