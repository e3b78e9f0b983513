import { FAULT_FIGURES } from '../fault/figures.js';
import type { Judged } from './debrief.js';

/** One number of a reading beside what was to be had and what was true. `had` null: nothing was to be heard; `written` null: none was written. */
export type ResultRow = {
  readonly of: 'systolic' | 'diastolic';
  /** The diastolic is judged where the sounds became muffled. */
  readonly isMuffled: boolean;
  readonly written: number | null;
  readonly had: number | null;
  /** Written minus what was to be had; null, too, where nothing was heard or felt that it could be of. */
  readonly error: number | null;
  /** What was to be heard with the person, the cuff and the place as they were; null: nothing, or they were as they should be. */
  readonly asTheyWere: number | null;
  /** The two parts of `error`: written minus that is of hand, ear and eye; that minus what was to be had, of preparing. Null: not to be parted. */
  readonly parts: { readonly ofReading: number; readonly ofPreparing: number } | null;
  readonly truth: number;
  readonly isAccepted: boolean | null;
  /** Read as it was to be had then, and still far from what is true on average. */
  readonly isFar: boolean;
  /** It is written, and nothing was to be heard, or was felt, that it could be of. */
  readonly isFromNothing: boolean;
};

/** Both numbers of a reading, judged alike on every page. */
export function resultRows(judged: Judged): ResultRow[] {
  const { entered, reference, had, isByMuffled, fromNothing, accepted } = judged;
  return (['systolic', 'diastolic'] as const).map((of) => {
    const isMuffled = of === 'diastolic' && isByMuffled;
    const written = isMuffled ? (entered.muffled ?? entered.diastolic) : entered[of];
    const one = (isMuffled ? had.muffled : had[of])?.mmHg ?? null;
    const asTheyWere = judged.asTheyWere?.[isMuffled ? 'muffled' : of] ?? null;
    const truth = (isMuffled ? reference.muffled : null) ?? reference[of];
    return {
      of,
      isMuffled,
      written,
      had: one,
      error: written === null || one === null || fromNothing !== null ? null : written - one,
      asTheyWere,
      parts:
        written === null || one === null || asTheyWere === null || fromNothing !== null
          ? null
          : { ofReading: written - asTheyWere, ofPreparing: asTheyWere - one },
      truth,
      isAccepted: accepted[of],
      isFar: accepted[of] === true && Math.abs((written ?? truth) - truth) > FAULT_FIGURES.farMmHg.value,
      isFromNothing: fromNothing !== null && written !== null,
    };
  });
}
