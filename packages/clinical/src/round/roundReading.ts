import type { CuffSite, Posture, Side } from '../cuff/places.js';
import type { Method } from '../deflation/run.js';

/** Where the cuff is, and how the person is placed. */
export type ReadingPlace = {
  readonly site: CuffSite;
  readonly side: Side;
  readonly posture: Posture;
};

/**
 * A reading of the pressure in a round, mmHg and per minute. `diastolic` is the one that averages use, null by
 * palpation. `atSeconds` is its end on the one clock of the round; `uprightMinutes` how long the person had stood.
 */
export type RoundReading = ReadingPlace & {
  readonly id: string;
  readonly method: Method;
  readonly systolic: number;
  readonly diastolic: number | null;
  readonly pulsePerMinute: number | null;
  readonly uprightMinutes: number | null;
  /** Whether the person felt unwell on their feet; absent or null where nobody asked. */
  readonly isUnwellUpright?: boolean | null;
  readonly atSeconds: number | null;
};
