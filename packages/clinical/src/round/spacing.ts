import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { isSameLimb } from './limb.js';
import type { RoundReading } from './roundReading.js';

export type SpacingCode = 'too-soon-by-times';

/**
 * A reading and when it was taken, `measuredSeconds` of any one clock. `isRestKnown`: how long the arm rested before it is
 * known, so that the rule of the run has said what there is to say.
 */
export type SpacedReading = Pick<RoundReading, 'id' | 'site' | 'side' | 'posture'> & {
  readonly measuredSeconds: number;
  readonly isRestKnown: boolean;
  /** Very low or unwell: the next is asked for without a wait. Absent is no. */
  readonly isNextAtOnce?: boolean;
  /** Minutes lying before it: null where nobody said, absent where that is not asked. */
  readonly lyingMinutes?: number | null;
};

/** A time that was typed says the minute alone. */
const MINUTE = 60;

/**
 * The readings that came sooner after the one before them on the same limb than the protocol leaves between two, by the
 * times that are kept with them; by id. Of a time without seconds nothing is told, nor where the person changed their posture
 * between the two: the test of lying and standing has minutes of its own. Where nobody said for how long they had lain, it has none,
 * and the times are all that is known.
 *
 * Source: bedside handbook 3.10 (the gap of each guideline; under 60 s is warned of), 3.14 (on the feet at 1 and 3 min).
 */
export function spacingFlags(
  readings: readonly SpacedReading[],
  gapSeconds: number,
): ReadonlyMap<string, Flag<SpacingCode>> {
  const flags = new Map<string, Flag<SpacingCode>>();
  const inTime = [...readings].sort((a, b) => a.measuredSeconds - b.measuredSeconds);
  for (const [at, reading] of inTime.entries()) {
    const before = inTime.slice(0, at).findLast((one) => isSameLimb(one, reading));
    if (before === undefined) continue;
    if (before.posture !== reading.posture && !isLyingUnsaid(reading)) continue;
    if (before.isNextAtOnce === true) continue;
    if (reading.isRestKnown || isTyped(before) || isTyped(reading)) continue;
    const apartSeconds = settled(reading.measuredSeconds - before.measuredSeconds);
    if (passes(apartSeconds, SIDE.gapSeconds, gapSeconds)) {
      flags.set(reading.id, { code: 'too-soon-by-times', figures: { apartSeconds, gapSeconds } });
    }
  }
  return flags;
}

function isTyped({ measuredSeconds }: SpacedReading): boolean {
  return measuredSeconds % MINUTE === 0;
}

function isLyingUnsaid({ posture, lyingMinutes }: SpacedReading): boolean {
  return (posture === 'lie' || posture === 'lie-left') && lyingMinutes === null;
}
