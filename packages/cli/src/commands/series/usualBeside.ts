import {
  type Belief,
  type Component,
  type Flag,
  HOME_OFFSET,
  type Sex,
  USUAL_FIGURES as U,
  type UsualQuestion,
  type UsualResult,
  usualResult,
} from '@evenfall/clinical';
import type { SentenceKey, Words } from '@evenfall/words';

/** What is known of both numbers; each part null where it was not measured. */
export type UsualKnown = {
  readonly ageYears: number | null;
  readonly sex: Sex | null;
  readonly office: ByComponent<UsualQuestion['office']>;
  readonly home: ByComponent<UsualQuestion['home']>;
  readonly ambulatory: ByComponent<UsualQuestion['ambulatory']>;
};

type ByComponent<T> = { readonly systolic: T; readonly diastolic: T };

/** The usual pressure of one number about a threshold. */
export function usualOf(component: Component, known: UsualKnown, threshold: number): UsualResult | null {
  return usualResult({
    component,
    ageYears: known.ageYears,
    sex: known.sex,
    office: known.office[component],
    home: known.home[component],
    ambulatory: known.ambulatory[component],
    threshold,
    offset: HOME_OFFSET[component],
  });
}

type AssumptionCode =
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

/** An assumption as every answer carries it. */
export function assumption({ code, figures }: Flag<AssumptionCode>, words: Words) {
  const key: SentenceKey = `series.${code}`;
  return { code, detail: words.sentence(key as 'series.office-visits', figures as { cvPercent: number; visits: number }), figures }; // biome-ignore format: one thought
}
