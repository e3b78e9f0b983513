import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** Rules for what is an artefact and no pressure; `minimal` asks only that systolic is over diastolic. */
export const EDITING_RULES = ['range-a', 'range-b', 'ratio', 'minimal'] as const;
export type EditingRule = (typeof EDITING_RULES)[number];

/** Which part of a rule a reading broke. */
export type ArtefactCode =
  | 'systolic-not-over-diastolic'
  | 'systolic-range'
  | 'diastolic-range'
  | 'pulse-range'
  | 'pulse-pressure-range'
  | 'ratio-range'
  | 'far-from-mean';

type Numbers = {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly pulse: number | null;
};

/**
 * What of a rule a reading breaks, the first in the order of the rule; null if nothing. A number that is not there
 * breaks nothing. The limits themselves are kept. Source: out-of-office handbook 6.
 */
export function artefactOf({ systolic, diastolic, pulse }: Numbers, rule: EditingRule): ArtefactCode | null {
  const isOver = systolic === null || diastolic === null || systolic > diastolic;
  if (rule === 'minimal') return isOver ? null : 'systolic-not-over-diastolic';
  const limits = LIMITS[rule];
  if (isOutside(systolic, limits.systolic)) return 'systolic-range';
  if (isOutside(diastolic, limits.diastolic)) return 'diastolic-range';
  if (!isOver) return 'systolic-not-over-diastolic';
  if (limits.pulse !== null && isOutside(pulse, limits.pulse)) return 'pulse-range';
  if (systolic === null || diastolic === null) return null;
  if (rule === 'range-a' && isOutside(systolic - diastolic, PULSE_PRESSURE)) return 'pulse-pressure-range';
  if (rule === 'range-b' && systolic - diastolic < F.rangeBPulsePressureShare.value * systolic) {
    return 'pulse-pressure-range';
  }
  if (rule === 'ratio' && !isRatioIn(systolic, diastolic)) return 'ratio-range';
  return null;
}

/**
 * Places of values further than `sds` SD from the mean of their period, which is looked at once and not again on what
 * is left. Source: out-of-office handbook 6 (off by default).
 */
export function farFromMean(values: readonly number[], sds: number): number[] {
  const [centre, sd] = [mean(values), sampleSd(values)];
  if (centre === null || sd === null) return [];
  return values.flatMap((value, at) => (Math.abs(value - centre) > sds * sd ? [at] : []));
}

type Range = { readonly low: number; readonly high: number };

const PULSE_PRESSURE: Range = {
  low: F.rangeALeastPulsePressure.value,
  high: F.rangeAMostPulsePressure.value,
};

const LIMITS: Readonly<
  Record<Exclude<EditingRule, 'minimal'>, { systolic: Range; diastolic: Range; pulse: Range | null }>
> = {
  'range-a': {
    systolic: { low: F.rangeALeastSystolic.value, high: F.rangeAMostSystolic.value },
    diastolic: { low: F.rangeALeastDiastolic.value, high: F.rangeAMostDiastolic.value },
    pulse: { low: F.rangeALeastPulse.value, high: F.rangeAMostPulse.value },
  },
  'range-b': {
    systolic: { low: F.rangeBLeastSystolic.value, high: F.rangeBMostSystolic.value },
    diastolic: { low: F.rangeBLeastDiastolic.value, high: F.rangeBMostDiastolic.value },
    pulse: { low: F.rangeBLeastPulse.value, high: F.rangeBMostPulse.value },
  },
  ratio: {
    systolic: { low: F.ratioLeastSystolic.value, high: F.ratioMostSystolic.value },
    diastolic: { low: F.ratioLeastDiastolic.value, high: F.ratioMostDiastolic.value },
    pulse: null,
  },
};

function isOutside(value: number | null, { low, high }: Range): boolean {
  return value !== null && (value < low || value > high);
}

function isRatioIn(systolic: number, diastolic: number): boolean {
  const ratio = systolic / diastolic;
  const least = F.ratioLeastBase.value + F.ratioLeastPerMmHg.value * diastolic;
  return ratio > least && ratio < F.ratioMost.value;
}
