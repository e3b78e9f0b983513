import type { Flag } from '../contract/flag.js';
import { USUAL_FIGURES as U } from './figures.js';
import type { Belief } from './normalNormal.js';
import type { UsualKnown } from './usualOf.js';
import type { UsualResult } from './usualResult.js';

export type AssumptionCode =
  | 'prior-flat'
  | 'prior-age-sex'
  | 'office-visits'
  | 'home-variation'
  | 'own-variation'
  | 'ambulatory-variation'
  | 'home-offset'
  | 'not-a-diagnosis';

/** Everything that an answer about the usual pressure rests on, in the order in which it comes in; figures are of systolic. */
export function assumptionsOf(known: UsualKnown, result: UsualResult | null): Flag<AssumptionCode>[] {
  const found: Flag<AssumptionCode>[] = [];
  const add = (code: AssumptionCode, figures: Flag['figures'] = {}) => found.push({ code, figures });
  const { office, home, ambulatory } = known;
  const prior = result?.prior ?? null;
  const onHome = home.systolic !== null || ambulatory.systolic !== null;
  if (prior === null) add('prior-flat');
  else add('prior-age-sex', asOffice(prior, onHome));
  if (office.systolic !== null) {
    add('office-visits', { cvPercent: U.officeCvSystolicPercent.value, visits: office.systolic.visits });
  }
  if (onHome && (prior !== null || office.systolic !== null)) {
    add('home-offset', { offset: U.homeOffsetSystolic.value, sd: U.homeOffsetSd.value });
  }
  if (home.systolic !== null) {
    add('home-variation', { weekCvPercent: U.homeCvSystolicPercent.value });
    if (home.systolic.own !== null) add('own-variation');
  }
  if (ambulatory.systolic !== null) {
    add('ambulatory-variation', { cvPercent: U.ambulatoryCvSystolicPercent.value });
  }
  add('not-a-diagnosis');
  return found;
}

/** The prior as it stands on the scale of the office. */
function asOffice({ mean, sd }: Belief, isMoved: boolean): { mean: number; sd: number } {
  if (!isMoved) return { mean, sd };
  return {
    mean: mean - U.homeOffsetSystolic.value,
    sd: Math.sqrt(Math.max(0, sd ** 2 - U.homeOffsetSd.value ** 2)),
  };
}
