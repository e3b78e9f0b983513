import type { Component } from '../category/scheme.js';
import type { Sex } from '../child/sex.js';
import { USUAL_FIGURES as F } from './figures.js';
import type { Belief } from './normalNormal.js';
import { type PriorRow, US_ADULTS_2009_2012 } from './priorsTable.js';

/** Within-person variation of an assessment, in percent of the level. */
export const CV_PERCENT = {
  office: { systolic: F.officeCvSystolicPercent.value, diastolic: F.officeCvDiastolicPercent.value },
  home: { systolic: F.homeCvSystolicPercent.value, diastolic: F.homeCvDiastolicPercent.value },
  ambulatory: {
    systolic: F.ambulatoryCvSystolicPercent.value,
    diastolic: F.ambulatoryCvDiastolicPercent.value,
  },
} as const;

/** The SD of one assessment at a level, in mmHg. */
export function assessmentSd(kind: keyof typeof CV_PERCENT, component: Component, level: number): number {
  return (CV_PERCENT[kind][component] * level) / 100;
}

/**
 * What is thought of the usual office pressure of an adult by age and sex alone: the spread between people, with the
 * variation within a person at one visit taken off. Null under 18, or where age or sex is not known.
 * Source: out-of-office handbook 17.3 and 17.4.
 */
export function agePrior(component: Component, ageYears: number | null, sex: Sex | null): Belief | null {
  if (ageYears === null || sex === null) return null;
  const row = US_ADULTS_2009_2012.rows.findLast((one) => one.sex === sex && one.fromYears <= ageYears);
  if (row === undefined) return null;
  const { mean, sd } = observed(row, component);
  return { mean, sd: Math.sqrt(sd ** 2 - assessmentSd('office', component, mean) ** 2) };
}

function observed(row: PriorRow, component: Component): Belief {
  return component === 'systolic'
    ? { mean: row.systolicMean, sd: row.systolicSd }
    : { mean: row.diastolicMean, sd: row.diastolicSd };
}
