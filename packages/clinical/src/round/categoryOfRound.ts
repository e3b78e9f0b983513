import type { CategoryRules } from '../category/rules.js';
import { adultScheme, PREGNANCY_SCHEME } from '../category/schemes.js';
import { AAP_2017 } from '../child/aap2017.js';
import { FOURTH_REPORT_ID } from '../child/childResult.js';
import { isAveragedSite } from '../cuff/placeCheck.js';
import { type PlacedPressure, roundCategory } from './roundCategory.js';
import type { RoundInput } from './roundInput.js';
import type { KnownPressure } from './severe.js';

/** The category of a round with what it stands on. */
export type RoundCategory = PlacedPressure & {
  /** Null where it is that of the average; else how many single readings it is the highest of. */
  readonly highestOf: number | null;
};

/**
 * The category that a round comes to: that of its average. As long as there is none, that of the reading at the upper
 * arm that falls highest: a later lower reading never hides a raised one before the average does. Null with no
 * reading, or no scheme for this person.
 *
 * @param notAtRest the ids of readings that are no pressure at rest, as after somebody was laid down from their feet: they give none
 *
 * Errors: none. Source: bedside handbook 3.10 and 6.1; that the highest counts until then is our decision.
 */
export function categoryOfRound(
  average: KnownPressure | null,
  input: RoundInput,
  isPregnancy: boolean,
  rules: CategoryRules,
  notAtRest: readonly string[] = [],
): RoundCategory | null {
  if (average !== null && average.systolic !== null) {
    const placed = roundCategory(average, input, isPregnancy, rules);
    return placed === null ? null : { ...placed, highestOf: null };
  }
  const taken = input.readings
    .filter(({ id, site, posture }) => isAveragedSite(site) && posture !== 'stand' && !notAtRest.includes(id))
    .flatMap((reading) => {
      const { systolic, diastolic } = reading;
      const placed = roundCategory({ systolic, diastolic }, input, isPregnancy, rules);
      return placed === null ? [] : [{ reading, placed, height: heightOf(placed) }];
    });
  const [highest] = taken.toSorted(
    (a, b) =>
      b.height - a.height ||
      Number(b.placed.category !== null) - Number(a.placed.category !== null) ||
      b.reading.systolic - a.reading.systolic ||
      (b.reading.diastolic ?? 0) - (a.reading.diastolic ?? 0),
  );
  return highest === undefined ? null : { ...highest.placed, highestOf: taken.length };
}

/** How high a pressure stands in its scheme; of a child whom only the screening judges, by that; -1 for not at all. */
function heightOf({ guideline, atLeast, screening }: PlacedPressure): number {
  if (atLeast === null) return screening === 'at-or-above' ? 0 : -1;
  const { bands } =
    guideline === 'pregnancy'
      ? PREGNANCY_SCHEME
      : guideline === 'aap-2017' || guideline === FOURTH_REPORT_ID
        ? AAP_2017
        : adultScheme(guideline);
  return bands.findIndex(({ id }) => id === atLeast);
}
