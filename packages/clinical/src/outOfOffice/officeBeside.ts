import { isRaised } from '../category/scheme.js';
import { ADULT_SCHEME_IDS, adultScheme } from '../category/schemes.js';
import type { SidedLimit } from '../contract/shownPressure.js';
import {
  type Held,
  type PhenotypeResult,
  phenotypeOf,
  type WhiteCoatEffect,
  whiteCoatEffect,
} from './phenotype.js';

type Pair = { readonly systolic: number | null; readonly diastolic: number | null };

/** An office pressure beside a series. `phenotype` is null where the rule set has no office limits or the series is not valid. */
export type OfficeBeside = {
  readonly phenotype: PhenotypeResult | null;
  /** Office minus out-of-office, mmHg. */
  readonly whiteCoat: WhiteCoatEffect;
  /** From where the office is high by the rule set; null where it has no limit. */
  readonly limits: { readonly highSystolic: SidedLimit | null; readonly highDiastolic: SidedLimit | null };
};

/**
 * What an office pressure and a series are consistent with together, mmHg.
 *
 * @param rules the rule set, whose guideline gives the limits of the office
 * @param isJudged whether the series is valid and of an adult who is not pregnant
 * Source: out-of-office handbook 16.
 */
export function officeBeside(
  office: Pair,
  out: Pair,
  held: readonly Held[],
  {
    rules,
    isTreated,
    isJudged,
  }: { readonly rules: string; readonly isTreated: boolean | null; readonly isJudged: boolean },
): OfficeBeside {
  const id = ADULT_SCHEME_IDS.find((one) => one === rules);
  const high = id === undefined ? undefined : adultScheme(id).bands.find(({ level }) => isRaised(level));
  const limits = { highSystolic: high?.systolic ?? null, highDiastolic: high?.diastolic ?? null };
  const phenotype =
    high === undefined || !isJudged ? null : phenotypeOf({ ...office, ...limits }, held, isTreated);
  return { phenotype, whiteCoat: whiteCoatEffect(office, out), limits };
}
