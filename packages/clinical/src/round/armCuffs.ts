import type { Flag } from '../contract/flag.js';
import { cuffChoice } from '../cuff/cuffChoice.js';
import { SIDES, type Side } from '../cuff/places.js';
import type { CuffSchemeId } from '../cuff/schemes.js';
import { comparedReadings, pairedReadings } from './armDifference.js';
import type { RoundReading } from './roundReading.js';

/** A reading with the cuff it was taken with; null is not said. `armCm` is the circumference in cm. */
export type CuffedReading = Pick<RoundReading, 'site' | 'side' | 'method' | 'posture'> & {
  readonly armCm: number | null;
  readonly cuff: { readonly scheme: CuffSchemeId | null; readonly id: string } | null;
};

export type ArmCuffsCode = 'arms-unlike-methods' | 'arms-unlike-cuffs' | 'arms-cuff-unfitting';

/**
 * Why a comparison of the two arms may be one of how they were taken: in the last pair one was heard and the other read
 * off a display, the cuffs are unlike, or one of them does not fit its arm. It says nothing of a cuff or an arm that nobody noted, and takes nothing off a difference.
 *
 * Figures of `arms-cuff-unfitting`: for each arm that it is known of, what its cuff is expected to add to the systolic,
 * mmHg (`rightMmHg`, `leftMmHg`).
 *
 * Source: bedside handbook 3.3 (a wrong cuff shifts the systolic by as much as the limits of 3.12); that the comparison
 * is then doubtful is our conclusion, no source.
 *
 * @example armCuffFlags([rightWithAdultCuff, leftWithLargeCuff]) // [{ code: 'arms-unlike-cuffs', figures: {} }]
 */
export function armCuffFlags(readings: readonly CuffedReading[]): Flag<ArmCuffsCode>[] {
  const last = pairedReadings(comparedReadings(readings)).at(-1);
  if (last === undefined) return [];
  const flags: Flag<ArmCuffsCode>[] = [];
  if (last.right.method !== last.left.method) flags.push({ code: 'arms-unlike-methods', figures: {} });
  const [one, other] = [last.right.cuff, last.left.cuff];
  if (one !== null && other !== null && (one.id !== other.id || one.scheme !== other.scheme)) {
    flags.push({ code: 'arms-unlike-cuffs', figures: {} });
  }
  const choices = SIDES.map((side) => ({ side, choice: choiceOf(last[side]) }));
  if (choices.some(({ choice }) => (choice?.flags.length ?? 0) > 0)) {
    flags.push({ code: 'arms-cuff-unfitting', figures: biasOf(choices) });
  }
  return flags;
}

type Choice = ReturnType<typeof cuffChoice> | null;

function choiceOf({ armCm, cuff }: CuffedReading): Choice {
  if (armCm === null || cuff === null || cuff.scheme === null) return null;
  return cuffChoice({ armCm, scheme: cuff.scheme, atHand: cuff.id });
}

function biasOf(choices: readonly { readonly side: Side; readonly choice: Choice }[]): Flag['figures'] {
  return Object.fromEntries(
    choices.flatMap(({ side, choice }) =>
      choice === null || choice.flags.length === 0 || choice.biasMmHg === null
        ? []
        : [[`${side}MmHg`, choice.biasMmHg.systolic]],
    ),
  );
}
