import { passes } from '../contract/threshold.js';
import { CUFF_COMPARISONS as SIDE } from './comparisons.js';
import type { CuffRules } from './rules.js';
import { type CuffSchemeId, cuffScheme } from './schemes.js';

/** The scheme that has cuffs for children beside those for adults. Source: bedside handbook 3.2. */
const WITH_CHILDS_CUFFS: CuffSchemeId = 'fourth-report-2004';

/** A cuff as it is kept: its scheme, or null for a letter that stands on it, and its name there. */
export type NamedCuff = { readonly scheme: CuffSchemeId | null; readonly id: string };

/**
 * The rules of the place for one person: a child, by the age of the rules, is measured with a scheme that has cuffs for
 * children. Anybody else, and somebody whose age is not known, with the scheme of the place.
 *
 * @param ageMonths whole months; null for not known
 */
export function cuffRulesFor(rules: CuffRules, ageMonths: number | null): CuffRules {
  if (ageMonths === null || !passes(ageMonths, SIDE.childUnderMonths, rules.childUnderMonths)) return rules;
  const hasChildsCuff = cuffScheme(rules.scheme).cuffs.some(({ trialSize }) => trialSize === null);
  return hasChildsCuff ? rules : { ...rules, scheme: WITH_CHILDS_CUFFS };
}

/** Whether a scheme has a cuff of that name. */
export function isCuffOf(scheme: CuffSchemeId, id: string): boolean {
  return cuffScheme(scheme).cuffs.some((one) => one.id === id);
}

/** A cuff that was used before, as one of the rules now; null where it was one of another scheme. */
export function carriedCuff(cuff: NamedCuff | null, { scheme }: CuffRules): NamedCuff | null {
  return cuff !== null && cuff.scheme === scheme && isCuffOf(scheme, cuff.id) ? cuff : null;
}
