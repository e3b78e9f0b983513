import { isChild } from '../category/isChild.js';
import { isLowSystolic, lowSystolicLimit } from '../child/lowSystolic.js';
import { completedYears } from '../child/years.js';
import { isPast } from './bands.js';
import { SCORE_FIGURES as F } from './figures.js';

/**
 * The limit in mmHg that a systolic is under, on the feet or before them; null where it is under none. A child has the
 * limit of its age, of which an adult's would make an alarm of an ordinary pressure; an age that is not known is an adult's.
 *
 * Source: bedside handbook 3.14 (a systolic below 90 on standing) and 3.17 (a child's). That a child's holds on the feet:
 * common practice, no source.
 */
export function lowUprightLimit(systolic: number, ageMonths: number | null): number | null {
  if (ageMonths !== null && isChild(completedYears(ageMonths)))
    return isLowSystolic(systolic, ageMonths) ? lowSystolicLimit(ageMonths).limitMmHg : null;
  return isPast(systolic, 'standingSystolicLow') ? F.standingSystolicLow.value : null;
}
