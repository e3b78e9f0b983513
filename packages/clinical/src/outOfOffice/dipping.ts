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

/** What a fall comes to in other words: night over day, and the class of the diastolic by itself; null where not known. */
export type DipBeside = {
  readonly systolicRatio: number | null;
  readonly diastolicRatio: number | null;
  readonly diastolicClass: DipClass | null;
};

type Known = { readonly systolic: number | null; readonly diastolic: number | null };

/**
 * The ratios of a fall and the class of its diastolic, which has one where the systolic has. Worked out where it is shown.
 * Source: out-of-office handbook 9 ("systolic by default; report the diastolic too"), 19 (A1).
 */
export function dipBeside(day: Known, night: Known, hasClass: boolean): DipBeside {
  const ratio = (of: keyof Known) => {
    const [by, asleep] = [day[of], night[of]];
    return by === null || asleep === null || by === 0 ? null : asleep / by;
  };
  return {
    systolicRatio: ratio('systolic'),
    diastolicRatio: ratio('diastolic'),
    diastolicClass:
      hasClass && day.diastolic !== null && night.diastolic !== null
        ? dipClass(day.diastolic, night.diastolic)
        : null,
  };
}
