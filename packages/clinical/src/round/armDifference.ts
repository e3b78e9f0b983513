import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { isAveragedSite } from '../cuff/placeCheck.js';
import { type Posture, SIDES, type Side } from '../cuff/places.js';
import { mean } from '../statistics/mean.js';
import type { ArmsRules } from './armsRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import type { RoundReading } from './roundReading.js';

/** One pair of readings, together or in turn, mmHg; `diastolic` null is not known. */
export type ArmPair = {
  readonly [Arm in Side]: { readonly systolic: number; readonly diastolic: number | null };
};

/** What the two arms say, in the order in which it is told. */
export type ArmsCode = 'arms-repeat' | 'arms-higher' | 'arms-either' | 'arms-look-further';

/**
 * The difference of the two arms, RIGHT MINUS LEFT, mmHg, its sign kept. `systolicMmHg` is that of the last pair, by
 * which the rule goes; the means are of all pairs. `higherArm` is the one to use from now on; null while a repeat is
 * needed or where either will do.
 */
export type ArmDifference = {
  readonly systolicMmHg: number;
  readonly diastolicMmHg: number | null;
  readonly meanSystolicMmHg: number;
  readonly meanDiastolicMmHg: number | null;
  readonly pairs: number;
  readonly higherArm: Side | null;
  readonly isRepeatNeeded: boolean;
  readonly why: readonly Flag<ArmsCode>[];
};

/**
 * Whether the arms differ, and which to use. A difference over the limit is repeated in both arms, and what the
 * repeat says holds. In turn over-states the difference, together is better. Null without a pair.
 *
 * Source: bedside handbook 3.12; its C061 to C063.
 *
 * @example armDifference([first, again], rules) // { systolicMmHg: 14, higherArm: null, isRepeatNeeded: false }
 */
export function armDifference(pairs: readonly ArmPair[], rules: ArmsRules): ArmDifference | null {
  const last = pairs.at(-1);
  if (last === undefined) return null;
  const systolicMmHg = last.right.systolic - last.left.systolic;
  const diastolics = pairs.map(diastolicDifference);
  const known = diastolics.filter((one) => one !== null);
  const isOver = passes(Math.abs(systolicMmHg), rules.limitMmHg.comparison, rules.limitMmHg.limit);
  const isRepeatNeeded = isOver && pairs.length < rules.pairsNeeded;
  const higherArm = isOver && !isRepeatNeeded ? higherOf(systolicMmHg) : null;
  const figures = { systolicMmHg, limitMmHg: rules.limitMmHg.limit };
  const why: Flag<ArmsCode>[] = [];
  if (isRepeatNeeded) why.push({ code: 'arms-repeat', figures });
  else why.push({ code: higherArm === null ? 'arms-either' : 'arms-higher', figures });
  if (passes(Math.abs(systolicMmHg), SIDE.lookFurtherMmHg, rules.lookFurtherMmHg)) {
    const { lookFurtherMmHg } = rules;
    why.push({ code: 'arms-look-further', figures: { systolicMmHg, lookFurtherMmHg } });
  }
  return {
    systolicMmHg,
    diastolicMmHg: diastolics.at(-1) ?? null,
    meanSystolicMmHg: mean(pairs.map(({ right, left }) => right.systolic - left.systolic)) ?? systolicMmHg,
    meanDiastolicMmHg: mean(known),
    pairs: pairs.length,
    higherArm,
    isRepeatNeeded,
    why,
  };
}

function diastolicDifference({ right, left }: ArmPair): number | null {
  return right.diastolic === null || left.diastolic === null ? null : right.diastolic - left.diastolic;
}

function higherOf(systolicMmHg: number): Side {
  return systolicMmHg > 0 ? SIDES[0] : SIDES[1];
}

/** What decides which readings are held against each other. */
export type PairableReading = Pick<RoundReading, 'side' | 'method' | 'posture'>;

type ArmReading = ArmPair[Side] & PairableReading;

/**
 * Pairs of readings in the order in which they came: each reading of one arm with the next one of the other in the
 * same posture. A reading by feel lies below one by ear and is never held against it: it makes no pair.
 *
 * Source: bedside handbook 3.4 and 3.12.
 */
export function pairedReadings<Reading extends PairableReading>(
  readings: readonly Reading[],
): { readonly [Arm in Side]: Reading }[] {
  return pairing(readings).pairs;
}

/** The pairs, and the last reading of each posture that waits for its other arm. */
export function pairing<Reading extends PairableReading>(readings: readonly Reading[]) {
  const pairs: { readonly [Arm in Side]: Reading }[] = [];
  const open = new Map<Posture, Reading>();
  for (const reading of readings.filter(({ method }) => method !== 'palpation')) {
    const before = open.get(reading.posture);
    if (before === undefined || before.side === reading.side) open.set(reading.posture, reading);
    else {
      const [right, left] = before.side === 'right' ? [before, reading] : [reading, before];
      pairs.push({ right, left });
      open.delete(reading.posture);
    }
  }
  return { pairs, open };
}

/** The numbers of each pair of readings of the two arms. */
export function armPairs(readings: readonly ArmReading[]): ArmPair[] {
  return pairedReadings(readings).map(({ right, left }) => ({
    right: numbersOf(right),
    left: numbersOf(left),
  }));
}

/** The readings of which the two arms are compared: of the upper arm, and not on the feet. */
export function comparedReadings<Reading extends Pick<RoundReading, 'site' | 'posture'>>(
  readings: readonly Reading[],
): Reading[] {
  return readings.filter(({ site, posture }) => isAveragedSite(site) && posture !== 'stand');
}

function numbersOf({ systolic, diastolic }: ArmPair[Side]): ArmPair[Side] {
  return { systolic, diastolic };
}
