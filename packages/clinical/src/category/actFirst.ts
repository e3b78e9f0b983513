import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { SCORE_COMPARISONS } from '../score/comparisons.js';
import { SCORE_FIGURES } from '../score/figures.js';
import type { Measured } from './categoryIn.js';
import { CATEGORY_COMPARISONS as SIDE } from './comparisons.js';
import { CATEGORY_FIGURES as F } from './figures.js';

/** From where the emergency features are asked, whatever a scheme calls it. Source: bedside handbook 3.16. */
const ADULT = ['niceSevereSystolic', 'niceSevereDiastolic'] as const;
const PREGNANT = ['pregnancySevereSystolic', 'pregnancySevereDiastolic'] as const;

export type ActFirstCode = 'severe-reading' | 'very-low';

/**
 * What comes before any category or average of an adult: a pressure so high that it may be an emergency, also where a
 * scheme has no range for it; and one so low that a scheme of high pressures says nothing. mmHg; null is not known.
 *
 * Errors: none. Source: bedside handbook 3.16, 3.17, 5.2.
 */
export function actFirst({ systolic, diastolic }: Measured, isPregnant: boolean): Flag<ActFirstCode>[] {
  const [high, highDiastolic] = isPregnant ? PREGNANT : ADULT;
  const flags: Flag<ActFirstCode>[] = [];
  const isPast = (mmHg: number | null, id: typeof high | typeof highDiastolic) =>
    mmHg !== null && passes(mmHg, SIDE[id], F[id].value);
  if (isPast(systolic, high) || isPast(diastolic, highDiastolic))
    flags.push({ code: 'severe-reading', figures: {} });
  const limitMmHg = SCORE_FIGURES.ewSystolicLow3.value;
  if (systolic !== null && passes(systolic, SCORE_COMPARISONS.ewSystolicLow3, limitMmHg))
    flags.push({ code: 'very-low', figures: { systolic, limitMmHg } });
  return flags;
}
