import type { Figure, Sureness } from '../contract/figure.js';
import type { AveragingRuleId } from './averagingRules.js';
import { ROUND_FIGURES as F } from './figures.js';

/** Where a rule of averaging comes from, as a whole and in what it says of gaps and differences. */
export type AveragingOrigin = {
  readonly source: string;
  readonly status: Sureness;
  /** Least time between two readings, in s. */
  readonly gap: Figure;
  /** How far two readings may be apart, in mmHg; null where the guideline has no such rule. */
  readonly difference: Figure | null;
};

/** Of each rule, for those who show where it comes from: a round that follows it does without. Source: bedside handbook 3.10. */
export const AVERAGING_ORIGINS: Readonly<Record<AveragingRuleId, AveragingOrigin>> = {
  'esc-2024': origin(F.escReadings, F.escGapSeconds, F.escDifferenceMmHg),
  'esc-esh-2018': origin(F.escEshReadings, F.escEshGapSeconds, F.escEshDifferenceMmHg),
  'esh-2023': origin(F.eshReadings, F.eshGapSeconds, F.eshDifferenceMmHg),
  'ish-2020': origin(F.ishReadings, F.ishGapSeconds),
  'acc-aha-2017': origin(F.acc2017Readings, F.acc2017GapSeconds),
  'acc-aha-2025': origin(F.acc2025Readings, F.acc2025GapSeconds),
  'aha-2005': origin(F.ahaReadings, F.ahaGapSeconds, F.ahaDifferenceMmHg),
  'two-within-10': origin(F.jaccReadings, F.gapSeconds, F.jaccDifferenceMmHg),
  'jsh-2019': origin(F.jshReadings, F.jshGapSeconds, F.jshDifferenceMmHg),
  'nice-ng136': origin(F.niceReadings, F.gapSeconds, F.niceDifferenceMmHg),
  'hypertension-canada': origin(F.canadaReadings, F.canadaGapSeconds),
  'korea-2013': origin(F.koreaReadings, F.koreaGapSeconds),
  'aap-2017': origin(F.aapReadings, F.gapSeconds),
  'who-2021': origin(F.whoReadings, F.whoGapSeconds),
};

function origin({ source, sure }: Figure, gap: Figure, difference: Figure | null = null): AveragingOrigin {
  return { source, status: sure, gap, difference };
}
