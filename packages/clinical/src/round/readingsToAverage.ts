import { isAveragedSite } from '../cuff/placeCheck.js';
import type { Side } from '../cuff/places.js';
import type { RoundReading } from './roundReading.js';

/** Why a reading of the round is not among those that are averaged. */
export type LeftOutReason = 'other-site' | 'standing' | 'laid-down' | 'other-arm' | 'other-posture';

/** The readings of a round that may be averaged with each other, in order, and why the others may not. */
export type ReadingsToAverage<R> = {
  readonly readings: readonly R[];
  readonly leftOut: readonly { readonly id: string; readonly reason: LeftOutReason }[];
};

type Placed = Pick<RoundReading, 'id' | 'site' | 'side' | 'posture' | 'diastolic'>;

/**
 * Whether a reading is a pressure at rest that an average may take: at the upper arm, off the feet, with both numbers. One by feel
 * has no diastolic, and one at a thigh is only charted.
 */
export function isReadAtRest(reading: Pick<RoundReading, 'site' | 'posture' | 'diastolic'>): boolean {
  return isOffFeet(reading) && reading.diastolic !== null;
}

function isOffFeet({ site, posture }: Pick<RoundReading, 'site' | 'posture'>): boolean {
  return isAveragedSite(site) && posture !== 'stand';
}

/**
 * The readings of one arm in one posture. The arm is the higher one where that is known, else the one with the most
 * readings that have both numbers, else the first; the posture is that of the arm's first reading. Standing readings
 * belong to the standing test and sites other than the upper arm are only charted.
 *
 * @param laidDownBy the id of the first reading by which the person was laid down from their feet: what is taken after it is no
 * pressure at rest, and left out where something was {@link isReadAtRest} before; where nothing was, it is what there is, and the
 * posture is theirs. Null for none
 * @param isByWhole false for the rule before `round-6`: then one by feel was read at rest too, and the posture that of the first one
 *
 * Source: docs/conventions.md section 6; bedside handbook 3.12 and 3.14. What is left out after that reading: common practice, no source.
 */
export function readingsToAverage<R extends Placed>(
  readings: readonly R[],
  higherArm: Side | null,
  laidDownBy: string | null = null,
  isByWhole = true,
): ReadingsToAverage<R> {
  const laidAt = laidDownBy === null ? -1 : readings.findIndex(({ id }) => id === laidDownBy);
  const wasAtRest = readings.slice(0, Math.max(0, laidAt)).some(isByWhole ? isReadAtRest : isOffFeet);
  const after = new Set(wasAtRest ? readings.slice(laidAt + 1) : []);
  const usable = readings.filter((one) => isOffFeet(one) && !after.has(one));
  const side = armOf(usable, higherArm);
  const ofArm = usable.filter((one) => one.side === side);
  const lain =
    isByWhole && !wasAtRest && laidAt !== -1 ? ofArm.filter((one) => readings.indexOf(one) > laidAt) : [];
  const posture = (lain[0] ?? ofArm[0])?.posture;
  const reasonOf = (one: R): LeftOutReason | null => {
    if (!isAveragedSite(one.site)) return 'other-site';
    if (one.posture === 'stand') return 'standing';
    if (after.has(one)) return 'laid-down';
    if (one.side !== side) return 'other-arm';
    return one.posture === posture ? null : 'other-posture';
  };
  return {
    readings: readings.filter((one) => reasonOf(one) === null),
    leftOut: readings.flatMap((one) => {
      const reason = reasonOf(one);
      return reason === null ? [] : [{ id: one.id, reason }];
    }),
  };
}

function armOf(usable: readonly Placed[], higherArm: Side | null): Side | null {
  const full = (side: Side) => usable.filter((one) => one.side === side && one.diastolic !== null).length;
  if (higherArm !== null && usable.some(({ side }) => side === higherArm)) return higherArm;
  const first = usable[0]?.side ?? null;
  if (first === null) return null;
  const other: Side = first === 'right' ? 'left' : 'right';
  return full(other) > full(first) ? other : first;
}
