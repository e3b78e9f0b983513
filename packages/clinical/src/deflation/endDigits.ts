import { chiSquareCdf } from '../statistics/chiSquare.js';
import { DEFLATION_FIGURES as F } from './figures.js';

/** The end digits that a gauge can show, by its graduation in mmHg: 0, 2, 4, 6 and 8 of one marked every 2. */
function endingsOf(stepMmHg: number): readonly number[] {
  return Array.from({ length: Math.floor(F.endDigitsPer.value / stepMmHg) }, (_, at) => at * stepMmHg);
}

/**
 * How often readings end in each digit, against an even spread: chi-square, its degrees of freedom, and the probability of
 * as much by chance. `preference` is `clear` and `likely` at two levels of it, `none` else; null with too few readings.
 */
export type EndDigits = {
  readonly n: number;
  /** Each digit that the gauge can show, in order, and how many readings end in it. */
  readonly counts: readonly { readonly digit: number; readonly readings: number }[];
  /** Readings that no such gauge shows: rounded, averaged, or read off a display. They are not in `n`. */
  readonly offScale: number;
  readonly chiSquare: number | null;
  readonly degreesOfFreedom: number;
  readonly p: number | null;
  readonly preference: 'clear' | 'likely' | 'none' | null;
};

/**
 * Whether whoever read a gauge prefers some end digits.
 *
 * @param mmHg readings of one kind (systolic or diastolic), mmHg
 * @param stepMmHg what the gauge is marked in, mmHg
 * Source: bedside handbook 3.9 (derived): each digit is expected as often, at least 25 readings.
 */
export function endDigits(mmHg: readonly number[], stepMmHg: number = F.gaugeStepMmHg.value): EndDigits {
  const counts = endingsOf(stepMmHg).map((digit) => ({
    digit,
    readings: mmHg.filter((reading) => reading % F.endDigitsPer.value === digit).length,
  }));
  const n = counts.reduce((sum, { readings }) => sum + readings, 0);
  const degreesOfFreedom = counts.length - 1;
  const seen = { n, counts, offScale: mmHg.length - n, degreesOfFreedom };
  if (n < F.endDigitsLeast.value) return { ...seen, chiSquare: null, p: null, preference: null };
  const expected = n / counts.length;
  const chiSquare = counts.reduce((sum, { readings }) => sum + (readings - expected) ** 2 / expected, 0);
  const p = 1 - chiSquareCdf(chiSquare, degreesOfFreedom);
  const preference = p < F.endDigitsClearP.value ? 'clear' : p < F.endDigitsLikelyP.value ? 'likely' : 'none';
  return { ...seen, chiSquare, p, preference };
}
