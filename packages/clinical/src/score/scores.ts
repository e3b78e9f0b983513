import type { Sureness } from '../contract/figure.js';
import { EARLY_WARNING_PARTS } from './earlyWarning.js';
import { SCORE_FIGURES as F } from './figures.js';
import type { ScoreInput } from './scoreInputs.js';

/** Every score, in the order of the handbook (5.1, with the early-warning score of 5.2 first). */
export const SCORE_IDS = [
  'early-warning',
  'sepsis-screen',
  'mean-pressure',
  'pulse-pressure',
  'shock-index',
  'modified-shock-index',
  'age-shock-index',
  'paediatric-shock-index',
  'rate-pressure-product',
  'body-mass-index',
  'glasgow',
] as const;
export type ScoreId = (typeof SCORE_IDS)[number];

/** What a score is made from, where it is from and how sure that is. */
export type Score = {
  readonly takes: readonly ScoreInput[];
  readonly source: string;
  readonly status: Sureness;
};

export const SCORES: { readonly [Id in ScoreId]: Score } = {
  'early-warning': {
    takes: [...EARLY_WARNING_PARTS, 'scale', 'age', 'pregnant', 'spinalInjury'],
    source: F.ewMostPoints.source,
    status: F.ewMostPoints.sure,
  },
  'sepsis-screen': {
    takes: ['respirations', 'systolic', 'consciousness', 'glasgow', 'age'],
    source: F.sepsisPositive.source,
    status: F.sepsisPositive.sure,
  },
  'mean-pressure': {
    takes: ['systolic', 'diastolic', 'pulse'],
    source: F.meanThird.source,
    status: F.meanThird.sure,
  },
  'pulse-pressure': {
    takes: ['systolic', 'diastolic'],
    source: F.pulsePressureWide.source,
    status: F.pulsePressureWide.sure,
  },
  'shock-index': {
    takes: ['pulse', 'systolic', 'age'],
    source: F.shockIndexRaised.source,
    status: F.shockIndexRaised.sure,
  },
  'modified-shock-index': {
    takes: ['pulse', 'systolic', 'diastolic'],
    source: F.modifiedShockIndexHigh.source,
    status: F.modifiedShockIndexHigh.sure,
  },
  'age-shock-index': {
    takes: ['pulse', 'systolic', 'age'],
    source: F.ageShockIndexHigh.source,
    status: F.ageShockIndexHigh.sure,
  },
  'paediatric-shock-index': {
    takes: ['pulse', 'systolic', 'age'],
    source: F.childShockIndexYoung.source,
    status: F.childShockIndexYoung.sure,
  },
  'rate-pressure-product': {
    takes: ['pulse', 'systolic'],
    source: F.rateProductHigh.source,
    status: F.rateProductHigh.sure,
  },
  'body-mass-index': {
    takes: ['weightKg', 'heightCm', 'age'],
    source: F.bodyMassOver.source,
    status: F.bodyMassOver.sure,
  },
  glasgow: {
    takes: ['eyes', 'verbal', 'motor'],
    source: F.glasgowSevere.source,
    status: F.glasgowSevere.sure,
  },
};

/** The version of the rules of this folder, as kept beside each value they make. */
export const SCORE_RULE = 'score-2';
