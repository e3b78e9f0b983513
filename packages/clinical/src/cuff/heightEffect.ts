import { CUFF_FIGURES as F } from './figures.js';

/** What a cuff away from heart level adds to a reading, in mmHg. */
export type HeightEffect = {
  /** The weight of the blood between heart and cuff; the same for both numbers. */
  readonly theoryMmHg: number;
  /** The slope measured in people, which is smaller. */
  readonly measuredMmHg: { readonly systolic: number; readonly diastolic: number };
};

/**
 * The effect of the middle of the cuff standing so many cm below the heart (negative: above). Below reads high.
 * For teaching and for a simulated arm; no reading is ever corrected by it.
 * Source: bedside handbook 3.1 (Adiyaman 2006, Blood Press Monit 11:309).
 *
 * @example heightEffect(10) // theory +7.8, measured +4.9 systolic
 */
export function heightEffect(cmBelowHeart: number): HeightEffect {
  return {
    theoryMmHg: cmBelowHeart * F.hydrostaticMmHgPerCm.value,
    measuredMmHg: {
      systolic: cmBelowHeart * F.measuredSystolicMmHgPerCm.value,
      diastolic: cmBelowHeart * F.measuredDiastolicMmHgPerCm.value,
    },
  };
}
