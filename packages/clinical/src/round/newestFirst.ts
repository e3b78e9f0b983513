import { isAveragedSite } from '../cuff/placeCheck.js';
import type { ActNowRules } from './actNowRules.js';
import { NOTHING_KNOWN } from './knownSigns.js';
import { laidDownBy } from './lieDown.js';
import { isVeryLow } from './recheckClass.js';
import type { RoundReading } from './roundReading.js';

/** The newest reading off the feet at the upper arm: what scores go by where there is no average; null for none. */
export function newestAtRest<R extends RoundReading>(readings: readonly R[]): R | null {
  return readings.findLast(({ site, posture }) => isAveragedSite(site) && posture !== 'stand') ?? null;
}

/**
 * The newest reading where it goes before any average: it is very low, or was taken after the person was laid down from their feet.
 * What is worked out of a pressure is then of how the person is now. Null where an average goes before.
 *
 * @param readings of one round, in the order in which they were taken; mmHg
 * @param ageMonths completed months; null is not known
 * Source: bedside handbook 3.14 and 3.15; that it goes before the average: decision of this project.
 */
export function newestFirst<R extends RoundReading>(
  readings: readonly R[],
  ageMonths: number | null,
  rules: ActNowRules,
): R | null {
  const newest = newestAtRest(readings);
  if (newest === null) return null;
  const by = laidDownBy(readings, ageMonths, rules);
  const isAfter = by !== null && readings.indexOf(newest) > readings.indexOf(by);
  const { systolic, diastolic } = newest;
  return isAfter || isVeryLow({ ...NOTHING_KNOWN, systolic, diastolic, ageMonths }, rules) ? newest : null;
}
