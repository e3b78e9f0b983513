import { beats } from '@evenfall/physiology';
import type { Exercise, Replay } from '@evenfall/practice';

/** The beats of a visit as the answer has them: when the pulse reached the arm, and what a perfect listener would get of it. */
export function beatsOfVisit(
  { person, firstInflationSeconds }: Replay,
  { circumstances, seconds }: Exercise,
): { atSeconds: number; systolic: number; diastolic: number }[] {
  const asItWas = { ...circumstances, firstInflationSeconds };
  return beats(person, asItWas, 0, seconds).map(({ footSeconds, systolic, diastolic }) => ({
    atSeconds: footSeconds,
    systolic,
    diastolic,
  }));
}
