import type { ActNowRules } from './actNowRules.js';
import type { ReadingsCircumstances } from './furtherReading.js';
import { NOTHING_KNOWN } from './knownSigns.js';
import { isOnePlace, isUpright } from './readingsOf.js';
import { recheckClass } from './recheckClass.js';
import type { RecheckRules } from './recheckRules.js';
import type { RoundFacts } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';

/**
 * How long after the last reading the person still rests before one more at the place of the first, s; 0 where none of them asks for
 * it. A severe one does that is the last of its arm, whatever was read at the other since; what was read on the feet does not for
 * whoever is read off them. Where nobody knows how much of it is over, it is the whole rest.
 *
 * Errors: none. Source: bedside handbook 3.16 (rest 5 min, repeat by hand).
 */
export function severeRest(
  readings: readonly RoundReading[],
  facts: RoundFacts,
  known: Pick<ReadingsCircumstances, 'p95'>,
  { actNow, recheck }: { readonly actNow: ActNowRules; readonly recheck: RecheckRules },
): number {
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined) return 0;
  const here = readings.filter((one) => !isUpright(one) || isOnePlace(one, first));
  const lasts = here.filter((one, at) => !here.slice(at + 1).some(({ side }) => side === one.side));
  const severe = lasts.findLast((one) => isSevereAtRest(one, facts, known, actNow));
  if (severe === undefined) return 0;
  return Math.max(0, recheck.severeRestSeconds - secondsBetween(severe, last));
}

function secondsBetween({ atSeconds: from }: RoundReading, { atSeconds: until }: RoundReading): number {
  return from === null || until === null ? 0 : until - from;
}

/** Whether a reading is severe and the person rests before it is taken again; in pregnancy and the weeks after nobody waits so long. */
function isSevereAtRest(
  { systolic, diastolic }: RoundReading,
  { ageMonths, isPregnant, weeksAfterBirth }: RoundFacts,
  { p95 = null }: Pick<ReadingsCircumstances, 'p95'>,
  actNow: ActNowRules,
): boolean {
  const person = { ageMonths, pregnant: isPregnant, weeksAfterBirth, p95 };
  const known = { ...NOTHING_KNOWN, ...person, systolic, diastolic };
  return recheckClass(known, { unwell: null, abnormal: null }, actNow) === 'severe';
}
