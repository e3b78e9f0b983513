import { completedYears } from '../child/years.js';
import { isAveragedSite } from '../cuff/placeCheck.js';
import type { StandingNumbers } from '../score/standing.js';
import { type StandingResult, standingResult } from '../score/standingResult.js';
import type { RoundFacts } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';

/** What a standing test is made of; `isFeltIrregular` null is not known. */
export type StandingInput = {
  readonly readings: readonly RoundReading[];
  readonly isFeltIrregular: boolean | null;
  readonly facts: RoundFacts;
};

/**
 * The standing test of a round: the readings on the feet, by their minutes, against the last lying one before them,
 * or else the last sitting one. All are of the arm of the first one on the feet: the difference of two arms is no
 * fall. Null without either, or without the minutes. A fact that nobody gave is not known.
 *
 * @param lowBy whose low limit holds on the feet: that of the person's age, or under older rules an adult's for everybody
 * Source: bedside handbook 3.14, 3.17.
 */
export function standingOf(
  { readings, isFeltIrregular, facts }: StandingInput,
  lowBy: 'age' | 'adult' = 'age',
): StandingResult | null {
  const ofArms = readings.filter(({ site }) => isAveragedSite(site));
  const arm = ofArms.find(({ posture }) => posture === 'stand')?.side;
  const ofArm = ofArms.filter(({ side }) => side === arm);
  const firstUp = ofArm.findIndex(({ posture }) => posture === 'stand');
  const before = firstUp < 0 ? [] : ofArm.slice(0, firstUp);
  const lying = before.findLast(({ posture }) => posture === 'lie' || posture === 'lie-left');
  const rest = lying ?? before.findLast(({ posture }) => posture === 'sit');
  if (rest === undefined) return null;
  const upright = ofArm
    .flatMap((one) =>
      one.posture === 'stand' && one.uprightMinutes !== null
        ? [
            {
              ...numbersOf(one),
              pulse: pulseUpright(one, rest),
              minutes: one.uprightMinutes,
              symptoms: one.isUnwellUpright ?? null,
            },
          ]
        : [],
    )
    .sort((a, b) => a.minutes - b.minutes);
  if (upright.length === 0) return null;
  const { ageMonths, hasIrregularRhythm, hasPacemaker, takesRateSlowingDrug } = facts;
  const isIrregular = isFeltIrregular === true || hasIrregularRhythm;
  const test = {
    from: lying === undefined ? 'sitting' : 'lying',
    baseline: numbersOf(rest),
    readings: upright,
    age: ageMonths === null ? null : completedYears(ageMonths),
    supineHypertension: null,
    sinusRhythm: isIrregular ? false : null,
    pacemaker: hasPacemaker ? true : null,
    rateSlowingDrug: takesRateSlowingDrug ? true : null,
  } as const;
  return standingResult(test, lowBy === 'age' ? ageMonths : null);
}

/**
 * The pulse on the feet, per minute; null where it is the very number of the rest. A round has one pulse for all its
 * readings until it is counted anew, and the count of the rest says nothing of a rise.
 */
function pulseUpright({ pulsePerMinute }: RoundReading, rest: RoundReading): number | null {
  return pulsePerMinute === rest.pulsePerMinute ? null : pulsePerMinute;
}

function numbersOf({ systolic, diastolic, pulsePerMinute }: RoundReading): StandingNumbers {
  return { systolic, diastolic, pulse: pulsePerMinute };
}
