import { passes, settled } from '../contract/threshold.js';
import { OUT_OF_OFFICE_COMPARISONS as SIDE } from './comparisons.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** How far the night falls, from the least to the most. */
export const DIP_CLASSES = ['reverse', 'non-dipper', 'dipper', 'extreme'] as const;
export type DipClass = (typeof DIP_CLASSES)[number];

/**
 * The night's fall in percent of the day, 100 (day - night) / day: day minus night, so that a fall is positive.
 * Null where a mean is not known. Source: out-of-office handbook 9.
 */
export function dipPercent(day: number | null, night: number | null): number | null {
  return day === null || night === null || day === 0 ? null : (100 * (day - night)) / day;
}

/** The class of a fall, by the ratio of night to day. Source: Fagard 2009 (out-of-office handbook 9). */
export function dipClass(day: number, night: number): DipClass {
  const ratio = settled(night / day);
  if (passes(ratio, SIDE.extremeDipRatio, F.extremeDipRatio.value)) return 'extreme';
  if (passes(ratio, SIDE.dipperRatio, F.dipperRatio.value)) return 'dipper';
  if (passes(ratio, SIDE.nonDipperRatio, F.nonDipperRatio.value)) return 'non-dipper';
  return 'reverse';
}
