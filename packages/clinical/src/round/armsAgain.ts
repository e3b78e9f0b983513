import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { type Posture, SIDES, type Side } from '../cuff/places.js';
import { type ArmsCode, armDifference, armPairs, comparedReadings, pairing } from './armDifference.js';
import type { ArmsRules } from './armsRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { seriesOf } from './readingsOf.js';
import type { RoundReading } from './roundReading.js';

/** The arm that a repeat of both goes on with, in the posture of the pair that differed, and why. */
export type ArmsAgain = {
  readonly side: Side;
  readonly posture: Posture;
  readonly why: readonly Flag<ArmsCode>[];
};

/**
 * Which arm is measured next where {@link armDifference} asks for both again; null where it does not. The arm that was last
 * comes first, as the cuff is on it, and then the other one. Whatever became of them, no more are asked for than are taken of one
 * place at most.
 *
 * @param readings of one round, in the order in which they were taken; mmHg
 * @param stopAtReadings as many of one place are taken at most
 *
 * Source: bedside handbook 3.12 (both arms again); that the arm with the cuff comes first is our decision.
 *
 * @example armsAgain([right156, left144], rules, 5) // { side: 'left', ... }
 */
export function armsAgain(
  readings: readonly RoundReading[],
  rules: ArmsRules,
  stopAtReadings: number,
): ArmsAgain | null {
  const compared = comparedReadings(readings);
  const difference = armDifference(armPairs(compared), rules);
  if (difference?.isRepeatNeeded !== true) return null;
  const { pairs, open } = pairing(compared);
  const { right, left } = pairs.at(-1) as (typeof pairs)[number];
  const { posture } = right;
  const waiting = open.get(posture)?.side;
  const side =
    waiting === undefined
      ? (compared.at(-1) as RoundReading).side
      : (SIDES.find((one) => one !== waiting) as Side);
  const taken = seriesOf(readings, side === 'right' ? right : left);
  if (passes(taken.length, SIDE.stopAtReadings, stopAtReadings)) return null;
  return { side, posture, why: difference.why.filter(({ code }) => code === 'arms-repeat') };
}
