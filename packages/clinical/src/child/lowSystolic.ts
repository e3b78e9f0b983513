import type { Sureness } from '../contract/figure.js';
import { passes } from '../contract/threshold.js';
import { CHILD_COMPARISONS as SIDE } from './comparisons.js';
import { CHILD_FIGURES as F } from './figures.js';
import { completedYears } from './years.js';

/** The systolic under which a child's pressure is low, in mmHg, with where that comes from. */
export type LowLimit = { readonly limitMmHg: number; readonly source: string; readonly sure: Sureness };

/** The low limits in mmHg by age: a place may set its own. */
export type LowSystolics = {
  readonly newbornLowSystolic: number;
  readonly infantLowSystolic: number;
  /** At age 0 of the rule; each completed year adds to it. */
  readonly childLowBaseSystolic: number;
  readonly olderChildLowSystolic: number;
};

const PUBLISHED: LowSystolics = {
  newbornLowSystolic: F.lowNeonateSystolic.value,
  infantLowSystolic: F.lowInfantSystolic.value,
  childLowBaseSystolic: F.lowChildSystolic.value,
  olderChildLowSystolic: F.lowOlderSystolic.value,
};

/**
 * The low limit of a child: first month 60, to 12 months 70, 1 to 10 years 70 + 2 for each completed year, then 90.
 * Under 18 years; older people have other rules.
 *
 * Source: Pediatric Advanced Life Support 2006, 2015 (bedside handbook 3.17; 5.1).
 */
export function lowSystolicLimit(ageMonths: number, limits: LowSystolics = PUBLISHED): LowLimit {
  const { source, sure } = F.lowChildSystolic;
  const years = completedYears(ageMonths);
  const limitMmHg = passes(ageMonths, SIDE.neonateUnderMonths, F.neonateUnderMonths.value)
    ? limits.newbornLowSystolic
    : passes(ageMonths, SIDE.infantUnderMonths, F.infantUnderMonths.value)
      ? limits.infantLowSystolic
      : passes(years, SIDE.lowChildToYears, F.lowChildToYears.value)
        ? limits.childLowBaseSystolic + F.lowChildPerYear.value * years
        : limits.olderChildLowSystolic;
  return { limitMmHg, source, sure };
}

/** Whether a child's systolic in mmHg is low. A limit that is reached is not. */
export function isLowSystolic(systolic: number, ageMonths: number): boolean {
  return passes(systolic, SIDE.lowChildSystolic, lowSystolicLimit(ageMonths).limitMmHg);
}
