import type { SidedLimit } from '../contract/shownPressure.js';
import { passes } from '../contract/threshold.js';
import { OUT_OF_OFFICE_COMPARISONS as SIDE } from './comparisons.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** What office and out-of-office pressures together are consistent with, of a person without and with treatment. */
export const UNTREATED_PHENOTYPES = [
  'sustained-normotension',
  'white-coat-hypertension',
  'masked-hypertension',
  'sustained-hypertension',
] as const;
export const TREATED_PHENOTYPES = [
  'controlled',
  'white-coat-effect',
  'masked-uncontrolled',
  'uncontrolled',
] as const;
export type Phenotype = (typeof UNTREATED_PHENOTYPES)[number] | (typeof TREATED_PHENOTYPES)[number];

/** A pressure and the limits at which it is high; any number of them. */
export type Held = {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly highSystolic: SidedLimit | null;
  readonly highDiastolic: SidedLimit | null;
};

/** One name where it is known whether the person is treated, both where it is not; none where a pressure is not known. */
export type PhenotypeResult = {
  readonly names: readonly Phenotype[];
  readonly officeHigh: boolean | null;
  readonly outHigh: boolean | null;
};

/**
 * Which of the four an office and an out-of-office pressure are consistent with. High is either number at its limit; not
 * high is both under theirs.
 * Source: out-of-office handbook 16 (ACC/AHA 2025, table 9).
 */
export function phenotypeOf(office: Held, out: readonly Held[], treated: boolean | null): PhenotypeResult {
  const officeHigh = highOf(office);
  const outs = out.map(highOf);
  const outHigh = outs.includes(true) ? true : outs.length === 0 || outs.includes(null) ? null : false;
  if (officeHigh === null || outHigh === null) return { names: [], officeHigh, outHigh };
  const at = (officeHigh ? 1 : 0) + (outHigh ? 2 : 0);
  const untreated = UNTREATED_PHENOTYPES[at] as Phenotype;
  const withTreatment = TREATED_PHENOTYPES[at] as Phenotype;
  const names = treated === null ? [untreated, withTreatment] : [treated ? withTreatment : untreated];
  return { names, officeHigh, outHigh };
}

function highOf({ systolic, diastolic, highSystolic, highDiastolic }: Held): boolean | null {
  const parts = [reached(systolic, highSystolic), reached(diastolic, highDiastolic)];
  if (parts.includes(true)) return true;
  return parts.includes(null) ? null : false;
}

function reached(mmHg: number | null, limit: SidedLimit | null): boolean | null {
  return mmHg === null || limit === null ? null : passes(mmHg, limit.comparison, limit.limit);
}

/** Office minus out-of-office, in mmHg, and whether that is more than is usual. Null where one is not known. */
export type WhiteCoatEffect = {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly isLarge: boolean | null;
};

/** The size of the white-coat effect, signed, for everyone. Source: out-of-office handbook 16. */
export function whiteCoatEffect(
  office: { readonly systolic: number | null; readonly diastolic: number | null },
  out: { readonly systolic: number | null; readonly diastolic: number | null },
): WhiteCoatEffect {
  const minus = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);
  const systolic = minus(office.systolic, out.systolic);
  const diastolic = minus(office.diastolic, out.diastolic);
  const large = [
    systolic !== null && passes(systolic, SIDE.whiteCoatSystolic, F.whiteCoatSystolic.value),
    diastolic !== null && passes(diastolic, SIDE.whiteCoatDiastolic, F.whiteCoatDiastolic.value),
  ];
  return {
    systolic,
    diastolic,
    isLarge: systolic === null && diastolic === null ? null : large.includes(true),
  };
}
