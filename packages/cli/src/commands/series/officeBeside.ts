import {
  ADULT_SCHEME_IDS,
  adultScheme,
  type Held,
  isRaised,
  type PhenotypeResult,
  phenotypeOf,
  type WhiteCoatEffect,
  whiteCoatEffect,
} from '@evenfall/clinical';
import type { TypedSeries } from './typedSeries.js';

/** An office pressure beside a series. `phenotype` is null where the rule set has no office limits or the series is not valid. */
export type OfficeBeside = {
  readonly phenotype: PhenotypeResult | null;
  /** Office minus out-of-office. */
  readonly whiteCoat: WhiteCoatEffect;
};

/** What an office pressure and a series are consistent with together; null without an office pressure. */
export function officeBeside(
  { office, rules, isTreated }: TypedSeries,
  out: { readonly systolic: number | null; readonly diastolic: number | null },
  held: readonly Held[],
  isJudged: boolean,
): OfficeBeside | null {
  if (office === null) return null;
  const id = ADULT_SCHEME_IDS.find((one) => one === rules);
  const high = id === undefined ? undefined : adultScheme(id).bands.find(({ level }) => isRaised(level));
  const limits = { highSystolic: high?.systolic ?? null, highDiastolic: high?.diastolic ?? null };
  const phenotype =
    high === undefined || !isJudged
      ? null
      : phenotypeOf({ systolic: office.systolic, diastolic: office.diastolic, ...limits }, held, isTreated);
  return { phenotype, whiteCoat: whiteCoatEffect(office, out) };
}
