import type { Judged } from '@evenfall/practice';
import type { ExerciseDrawn } from '@evenfall/report';
import { SERIES_SCALE } from '../away/FigureShown.js';

/** The figure of a letting down: its height, how narrow it may get before it scrolls (a phone holds all of it), and pixels to a unit of both. */
export const RUN_FIGURE = { height: 345, leastWidth: 230, leastScale: SERIES_SCALE } as const;

/** A letting down as it is drawn: held against what its numbers are held against, which may be where the sounds became muffled. */
export function runDrawn<Of extends Omit<ExerciseDrawn, 'reference'>>(
  result: Of & Pick<Judged, 'reference' | 'isByMuffled'>,
): Of & Pick<ExerciseDrawn, 'reference'> {
  const { systolic, diastolic, muffled } = result.reference;
  return {
    ...result,
    reference: { systolic, diastolic: result.isByMuffled ? (muffled ?? diastolic) : diastolic },
  };
}
