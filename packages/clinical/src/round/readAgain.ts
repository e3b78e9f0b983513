import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { plausibleFlags } from '../deflation/pressureFlags.js';
import type { DeflationRules } from '../deflation/rules.js';
import type { ActNowRules } from './actNowRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { ROUND_FIGURES as F } from './figures.js';
import { NOTHING_KNOWN } from './knownSigns.js';
import { isVeryLow } from './recheckClass.js';

export type ReadAgainCode =
  | 'read-implausible'
  | 'read-very-low'
  | 'read-far-from-before'
  | 'read-diastolic-far-from-before';

/** Numbers as they were typed; `diastolic` as it is used, null by feel. mmHg. */
type Typed = { readonly systolic: number; readonly diastolic: number | null };

/**
 * Why numbers that were typed are looked at once more before they are signed: they may be a slip. They are asked about and never
 * changed. A very low one that comes soon after another very low one is no slip, and is not asked about again.
 *
 * @param before the newest reading besides this one, and how many minutes ago it was taken, negative where it seems later; null
 * where there is none
 * @param ageMonths completed months, which a child's limit goes by; null is not known
 * Source: bedside handbook 3.9 (numbers that cannot be), 3.17 (very low; a child's limit); the rest common practice (a number is
 * looked at beside the one before it), its limits a decision.
 */
export function readAgain(
  { systolic, diastolic }: Typed,
  before: (Typed & { readonly minutesAgo: number }) | null,
  ageMonths: number | null,
  { actNow, deflation }: { readonly actNow: ActNowRules; readonly deflation: DeflationRules },
): readonly Flag<ReadAgainCode>[] {
  const figures = { systolic, ...(diastolic === null ? {} : { diastolic }) };
  const isImplausible = plausibleFlags({ systolic, diastolicUsed: diastolic }, deflation).length > 0;
  const isLow = (mmHg: number) => isVeryLow({ ...NOTHING_KNOWN, systolic: mmHg, ageMonths }, actNow);
  const soon =
    before !== null &&
    passes(before.minutesAgo, SIDE.readBeforeMinutes, F.readBeforeMinutes.value) &&
    passes(-before.minutesAgo, SIDE.clocksApartMinutes, F.clocksApartMinutes.value)
      ? before
      : null;
  const awayMmHg = soon === null ? 0 : Math.abs(systolic - soon.systolic);
  const diastolicAwayMmHg =
    diastolic === null || soon === null || soon.diastolic === null ? 0 : Math.abs(diastolic - soon.diastolic);
  const isRepeated = soon !== null && isLow(soon.systolic);
  return [
    ...(isImplausible ? [{ code: 'read-implausible' as const, figures }] : []),
    ...(isLow(systolic) && !isRepeated && !isImplausible
      ? [{ code: 'read-very-low' as const, figures }]
      : []),
    ...(soon !== null && passes(awayMmHg, SIDE.readFarMmHg, F.readFarMmHg.value)
      ? [
          {
            code: 'read-far-from-before' as const,
            figures: { systolic, beforeSystolic: soon.systolic, minutesAgo: Math.max(0, soon.minutesAgo) },
          },
        ]
      : []),
    ...(diastolic !== null &&
    soon !== null &&
    soon.diastolic !== null &&
    passes(diastolicAwayMmHg, SIDE.readDiastolicFarMmHg, F.readDiastolicFarMmHg.value)
      ? [
          {
            code: 'read-diastolic-far-from-before' as const,
            figures: {
              diastolic,
              beforeDiastolic: soon.diastolic,
              minutesAgo: Math.max(0, soon.minutesAgo),
            },
          },
        ]
      : []),
  ];
}
