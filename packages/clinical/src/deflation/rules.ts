import { DEFLATION_FIGURES as F } from './figures.js';

/** How far to pump up, and how long the arm rests before: the values of a protocol's `inflation` section. */
export type InflationRules = {
  readonly marginMmHg: number;
  readonly smallMarginMmHg: number;
  readonly insideWithinMmHg: number;
  readonly gapAboveBackMmHg: number;
  readonly gapAboveLostMmHg: number;
  readonly waitAfterEstimateSeconds: number;
  readonly waitAfterReadingSeconds: number;
};

/** How the gauge is read: the nearest mark, or the next mark above where the needle stands between two. */
export type GaugeReading = 'nearest' | 'mark-above';

/** When the drop in one beat is judged: for every pulse, a slow or irregular one, or none. */
export type PerBeatWhen = 'always' | 'slow-or-irregular' | 'never';

/** How to let the cuff down and read it: the values of a protocol's `deflation` section. */
export type DeflationRules = {
  readonly slowestMmHgPerSecond: number;
  readonly fastestMmHgPerSecond: number;
  readonly perBeatWhen: PerBeatWhen;
  readonly fastestPerBeatMmHg: number;
  readonly slowPulsePerMinute: number;
  readonly gaugeStepMmHg: number;
  readonly gaugeReading: GaugeReading;
  readonly toZeroMmHg: number;
  readonly threeNumbersMmHg: number;
  readonly lowestSystolic: number;
  readonly highestSystolic: number;
  readonly lowestDiastolic: number;
  readonly highestDiastolic: number;
  readonly smallestPulsePressureMmHg: number;
  readonly largestPulsePressureMmHg: number;
};

/** Both sections together, as a run needs them. */
export type RunRules = { readonly inflation: InflationRules; readonly deflation: DeflationRules };

export const DEFAULT_INFLATION_RULES: InflationRules = {
  marginMmHg: F.marginMmHg.value,
  smallMarginMmHg: F.smallMarginMmHg.value,
  insideWithinMmHg: F.insideWithinMmHg.value,
  gapAboveBackMmHg: F.gapAboveBackMmHg.value,
  gapAboveLostMmHg: F.gapAboveLostMmHg.value,
  waitAfterEstimateSeconds: F.waitAfterEstimateSeconds.value,
  waitAfterReadingSeconds: F.waitAfterReadingSeconds.value,
};

export const DEFAULT_DEFLATION_RULES: DeflationRules = {
  slowestMmHgPerSecond: F.slowestMmHgPerSecond.value,
  fastestMmHgPerSecond: F.fastestMmHgPerSecond.value,
  perBeatWhen: 'slow-or-irregular',
  fastestPerBeatMmHg: F.fastestPerBeatMmHg.value,
  slowPulsePerMinute: F.slowPulsePerMinute.value,
  gaugeStepMmHg: F.gaugeStepMmHg.value,
  gaugeReading: 'nearest',
  toZeroMmHg: F.toZeroMmHg.value,
  threeNumbersMmHg: F.threeNumbersMmHg.value,
  lowestSystolic: F.lowestSystolic.value,
  highestSystolic: F.highestSystolic.value,
  lowestDiastolic: F.lowestDiastolic.value,
  highestDiastolic: F.highestDiastolic.value,
  smallestPulsePressureMmHg: F.smallestPulsePressureMmHg.value,
  largestPulsePressureMmHg: F.largestPulsePressureMmHg.value,
};

export const DEFAULT_RUN_RULES: RunRules = {
  inflation: DEFAULT_INFLATION_RULES,
  deflation: DEFAULT_DEFLATION_RULES,
};
