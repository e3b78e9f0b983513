import { CATEGORY_COMPARISONS } from '../category/comparisons.js';
import { CATEGORY_FIGURES } from '../category/figures.js';
import { CHILD_COMPARISONS } from '../child/comparisons.js';
import { CHILD_FIGURES } from '../child/figures.js';
import type { Figure } from '../contract/figure.js';
import type { Comparison } from '../contract/threshold.js';
import { COUNT_COMPARISONS } from '../count/comparisons.js';
import { COUNT_FIGURES } from '../count/figures.js';
import { SCORE_COMPARISONS } from '../score/comparisons.js';
import { SCORE_FIGURES } from '../score/figures.js';
import { SIGN_COMPARISONS } from '../sign/comparisons.js';
import { SIGN_FIGURES } from '../sign/figures.js';
import { ROUND_COMPARISONS } from './comparisons.js';
import { ROUND_FIGURES } from './figures.js';

/** A limit of acting at once: its number, where that comes from, and on which side of it somebody acts. */
export type ActNowLimitFigure = { readonly figure: Figure; readonly comparison: Comparison };

/**
 * The limits of acting at once as long as nobody set others. Each number lives in the folder of its own rule (a
 * category, a score, a child's limits, a count); what is only of a round is in this folder's figures.
 */
export const ACT_NOW_LIMITS = {
  severeSystolic: {
    figure: { ...CATEGORY_FIGURES.niceSevereSystolic, meaning: 'systolic that is severe' },
    comparison: CATEGORY_COMPARISONS.niceSevereSystolic,
  },
  severeDiastolic: {
    figure: { ...CATEGORY_FIGURES.niceSevereDiastolic, meaning: 'diastolic that is severe' },
    comparison: CATEGORY_COMPARISONS.niceSevereDiastolic,
  },
  pregnancySystolic: {
    figure: { ...CATEGORY_FIGURES.pregnancySevereSystolic, meaning: 'systolic that is severe in pregnancy' },
    comparison: CATEGORY_COMPARISONS.pregnancySevereSystolic,
  },
  pregnancyDiastolic: {
    figure: {
      ...CATEGORY_FIGURES.pregnancySevereDiastolic,
      meaning: 'diastolic that is severe in pregnancy',
    },
    comparison: CATEGORY_COMPARISONS.pregnancySevereDiastolic,
  },
  weeksAfterBirth: {
    figure: ROUND_FIGURES.weeksAfterBirth,
    comparison: ROUND_COMPARISONS.weeksAfterBirth,
  },
  childAboveP95MmHg: {
    figure: CHILD_FIGURES.severeAbove95,
    comparison: CHILD_COMPARISONS.severeAbove95,
  },
  adolescentSystolic: {
    figure: CHILD_FIGURES.severeAdolescentSystolic,
    comparison: CHILD_COMPARISONS.severeAdolescentSystolic,
  },
  adolescentDiastolic: {
    figure: CHILD_FIGURES.severeAdolescentDiastolic,
    comparison: CHILD_COMPARISONS.severeAdolescentDiastolic,
  },
  newbornLowSystolic: {
    figure: CHILD_FIGURES.lowNeonateSystolic,
    comparison: CHILD_COMPARISONS.lowChildSystolic,
  },
  infantLowSystolic: {
    figure: CHILD_FIGURES.lowInfantSystolic,
    comparison: CHILD_COMPARISONS.lowChildSystolic,
  },
  childLowBaseSystolic: {
    figure: CHILD_FIGURES.lowChildSystolic,
    comparison: CHILD_COMPARISONS.lowChildSystolic,
  },
  olderChildLowSystolic: {
    figure: CHILD_FIGURES.lowOlderSystolic,
    comparison: CHILD_COMPARISONS.lowChildSystolic,
  },
  veryLowSystolic: {
    figure: { ...SCORE_FIGURES.ewSystolicLow3, meaning: 'very low systolic of an adult' },
    comparison: SCORE_COMPARISONS.ewSystolicLow3,
  },
  highTotal: { figure: SCORE_FIGURES.ewHighTotal, comparison: SCORE_COMPARISONS.ewHighTotal },
  mediumTotal: { figure: SCORE_FIGURES.ewMediumTotal, comparison: SCORE_COMPARISONS.ewMediumTotal },
  singlePoints: {
    figure: { ...SCORE_FIGURES.ewMostPoints, meaning: 'points of one part that alarm by themselves' },
    comparison: ROUND_COMPARISONS.singlePoints,
  },
  verySlowPulsePerMinute: {
    figure: COUNT_FIGURES.verySlowPulsePerMinute,
    comparison: COUNT_COMPARISONS.verySlowPulsePerMinute,
  },
  childSlowPulsePerMinute: {
    figure: ROUND_FIGURES.childSlowPulsePerMinute,
    comparison: ROUND_COMPARISONS.childSlowPulsePerMinute,
  },
  veryFastPulsePerMinute: {
    figure: COUNT_FIGURES.veryFastPulsePerMinute,
    comparison: COUNT_COMPARISONS.veryFastPulsePerMinute,
  },
  verySlowBreathsPerMinute: {
    figure: COUNT_FIGURES.verySlowBreathsPerMinute,
    comparison: COUNT_COMPARISONS.verySlowBreathsPerMinute,
  },
  veryFastBreathsPerMinute: {
    figure: COUNT_FIGURES.veryFastBreathsPerMinute,
    comparison: COUNT_COMPARISONS.veryFastBreathsPerMinute,
  },
  lowOxygenPercent: {
    figure: { ...SCORE_FIGURES.ewScaleOneLow3, meaning: 'low oxygen saturation, scale 1' },
    comparison: SCORE_COMPARISONS.ewScaleOneLow3,
  },
  lowOxygenScale2Percent: {
    figure: { ...SCORE_FIGURES.ewScaleTwoLow3, meaning: 'low oxygen saturation, scale 2' },
    comparison: SCORE_COMPARISONS.ewScaleTwoLow3,
  },
  childLowOxygenPercent: {
    figure: SIGN_FIGURES.childLowPercent,
    comparison: SIGN_COMPARISONS.childLowPercent,
  },
} as const satisfies Record<string, ActNowLimitFigure>;

export type ActNowLimit = keyof typeof ACT_NOW_LIMITS;
/** The limits whose side no guideline disputes; a place sets their number alone. */
export type ActNowNumber = Exclude<ActNowLimit, 'severeSystolic' | 'severeDiastolic'>;
