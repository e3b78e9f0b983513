import type { Component } from '../category/scheme.js';
import type { Sex } from '../child/sex.js';
import { passes } from '../contract/threshold.js';
import { USUAL_COMPARISONS as SIDE } from './comparisons.js';
import { type Components, componentsOf, homeSe, type OwnSds } from './components.js';
import { USUAL_FIGURES as F } from './figures.js';
import { type Belief, onScale, probabilityOver, updated } from './normalNormal.js';
import { agePrior, assessmentSd } from './prior.js';

/** Name of this rule; one that gives another answer for the same numbers has another name. */
export const USUAL_RULE = 'usual-1';

/** Home minus office where nothing else is known, in mmHg; near 140/90. */
export const HOME_OFFSET: Readonly<Record<Component, number>> = {
  systolic: F.homeOffsetSystolic.value,
  diastolic: F.homeOffsetDiastolic.value,
};

/** Which scale an answer is on: an office pressure is not a pressure at home. */
export type UsualScale = 'office' | 'home';

/** The mean of one number over visits, days or a recording, in mmHg. */
export type OfficeMean = { readonly mean: number; readonly visits: number };
export type HomeMean = {
  readonly mean: number;
  readonly readings: number;
  readonly days: number;
  readonly own: OwnSds | null;
};
export type AmbulatoryMean = { readonly mean: number };

/** What is known of one number of one person. Null is not measured, or not known. */
export type UsualQuestion = {
  readonly component: Component;
  readonly ageYears: number | null;
  readonly sex: Sex | null;
  readonly office: OfficeMean | null;
  readonly home: HomeMean | null;
  /** By day, over 24 hours; on the scale of home, as guidelines hold the two alike. */
  readonly ambulatory: AmbulatoryMean | null;
  /** On the scale of the answer, mmHg. */
  readonly threshold: number;
  /** Home minus office, mmHg. */
  readonly offset: number;
};

/** What more days would bring if they came out like those so far; null without a series at home. */
export type MoreDays = {
  readonly days: number;
  readonly sd: number;
  readonly interval: readonly [number, number];
  readonly probability: number;
  /** How much narrower the interval gets, mmHg. */
  readonly narrowerMmHg: number;
};

export type UsualResult = Belief & {
  readonly scale: UsualScale;
  readonly interval: readonly [number, number];
  readonly probability: number;
  readonly probabilityFlatPrior: number | null;
  /** The prior on the scale of the answer; null where age or sex is not known: then it is flat. */
  readonly prior: Belief | null;
  readonly components: Components | null;
  readonly oneMoreDay: MoreDays | null;
  /** Whether the chance already stands clear on one side. */
  readonly isSettled: boolean;
  /** Fewest further days that would settle it if they come out alike; null if none within four weeks would. */
  readonly settledAfterDays: number | null;
};

/**
 * The usual pressure and the probability that it is at or over a threshold, by the normal-normal model, from office visits,
 * a series at home and a recording over 24 hours, with what is known of an age and sex before. Null where nothing is known.
 *
 * The answer is on the scale of home as soon as anything was measured there. It is a chance under the stated assumptions, never
 * a chance of having a disease.
 * Source: out-of-office handbook 17.4.
 */
export function usualResult(question: UsualQuestion): UsualResult | null {
  const { office, home, ambulatory, threshold, component } = question;
  if (office === null && home === null && ambulatory === null) return null;
  const scale: UsualScale = home === null && ambulatory === null ? 'office' : 'home';
  const prior = priorOn(scale, question);
  const belief = beliefFrom(agePrior(component, question.ageYears, question.sex), question, 0);
  const flat = beliefFrom(null, question, 0);
  if (belief === null || flat === null) return null;
  const isSettled = settles(probabilityOver(belief, threshold));
  const oneMoreDay = moreDays(question, 1, belief);
  return {
    ...belief,
    scale,
    interval: intervalOf(belief),
    probability: probabilityOver(belief, threshold),
    probabilityFlatPrior: probabilityOver(flat, threshold),
    prior,
    components: home === null ? null : componentsOf(component, home.mean, home.own),
    oneMoreDay,
    isSettled,
    settledAfterDays: isSettled ? 0 : settledAfter(question, belief),
  };
}

function priorOn(scale: UsualScale, { component, ageYears, sex, offset }: UsualQuestion): Belief | null {
  const prior = agePrior(component, ageYears, sex);
  return prior === null || scale === 'office' ? prior : onScale(prior, offset, F.homeOffsetSd.value);
}

/** Office first; then on the scale of home with the uncertain offset; then what was measured there. */
function beliefFrom(prior: Belief | null, question: UsualQuestion, further: number): Belief | null {
  const { component, office, home, ambulatory, offset } = question;
  let belief = prior;
  if (office !== null) {
    const se = assessmentSd('office', component, office.mean) / Math.sqrt(office.visits);
    belief = updated(belief, { mean: office.mean, se });
  }
  if (home === null && ambulatory === null) return belief;
  if (belief !== null) belief = onScale(belief, offset, F.homeOffsetSd.value);
  if (home !== null) {
    const days = home.days + further;
    const readings = home.readings + (further * home.readings) / home.days;
    const se = homeSe(componentsOf(component, home.mean, home.own), days, readings);
    belief = updated(belief, { mean: home.mean, se });
  }
  if (ambulatory !== null) {
    const se = assessmentSd('ambulatory', component, ambulatory.mean);
    belief = updated(belief, { mean: ambulatory.mean, se });
  }
  return belief;
}

function intervalOf({ mean, sd }: Belief): [number, number] {
  return [mean - F.intervalZ.value * sd, mean + F.intervalZ.value * sd];
}

/**
 * What `days` more at home would bring if they came out like those so far; null without a series at home.
 * Source: out-of-office handbook 17.5 (the long-term part does not shrink).
 */
export function moreDays(question: UsualQuestion, days: number, now: Belief): MoreDays | null {
  if (question.home === null) return null;
  const prior = agePrior(question.component, question.ageYears, question.sex);
  const then = beliefFrom(prior, question, days);
  if (then === null) return null;
  return {
    days,
    sd: then.sd,
    interval: intervalOf(then),
    probability: probabilityOver(then, question.threshold),
    narrowerMmHg: 2 * F.intervalZ.value * (now.sd - then.sd),
  };
}

function settledAfter(question: UsualQuestion, now: Belief): number | null {
  for (let days = 1; days <= F.mostMoreDays.value; days++) {
    const then = moreDays(question, days, now);
    if (then !== null && settles(then.probability)) return days;
  }
  return null;
}

function settles(probability: number): boolean {
  const { value } = F.settledProbability;
  return passes(Math.max(probability, 1 - probability), SIDE.settledProbability, value);
}
