import type { Conduct } from './conduct.js';
import type { Cost, Costs } from './cost.js';
import { WORTH_TELLING_MMHG } from './worthTelling.js';

/** The one change that would do most; null: nothing was done wrong, as far as can be told. */
export type OneThing =
  | { readonly kind: 'cost'; readonly cost: Cost }
  | { readonly kind: 'conduct'; readonly conduct: Conduct }
  | null;

/**
 * The one thing to do differently: a sign that was not told, else what hid the sounds, or the pulse, of numbers that were written all
 * the same, else the dearest fault that is worth telling, else what was left out or overdone. That a muffling was not written comes before a last
 * sound taken instead of it.
 * Source: assessment handbook 14 (one thing to change).
 */
export function oneThingOf({ costs, hidBy }: Costs, conduct: readonly Conduct[]): OneThing {
  const [gravest] = conduct;
  if (gravest?.code !== 'not-told') {
    const silent = conduct.find(({ code }) => code === 'nothing-in-ears' || code === 'nothing-felt');
    if (silent !== undefined) return { kind: 'conduct', conduct: silent };
    const hid = costs.find(({ code }) => code === hidBy);
    if (hid !== undefined) return { kind: 'cost', cost: hid };
    const nothing = conduct.find(({ code }) => code === 'nothing-to-hear');
    const isShared = costs.some(({ systolic, diastolic }) => systolic !== null || diastolic !== null);
    if (nothing !== undefined && !isShared && costs.length > 0) return { kind: 'conduct', conduct: nothing };
  }
  // Where a muffling was not written the last sound was taken: to write three numbers is what mends it.
  const isUnwritten = conduct.some(({ code }) => code === 'muffled-not-written');
  const [dearest] = isUnwritten ? costs.filter((one) => !isOfLastSound(one)) : costs;
  const isUntold = gravest?.code === 'not-told';
  if (dearest !== undefined && !isUntold && (gravest === undefined || isWorth(dearest)))
    return { kind: 'cost', cost: dearest };
  return gravest === undefined ? null : { kind: 'conduct', conduct: gravest };
}

/** A sound or number that was not the right one, of the diastolic alone. */
function isOfLastSound({ code, systolic }: Cost): boolean {
  const isOfEar = code === 'misheard' || code === 'off-the-sound' || code === 'on-no-sound';
  return isOfEar && systolic !== null && Math.abs(systolic) < WORTH_TELLING_MMHG;
}

function isWorth({ systolic, diastolic }: Cost): boolean {
  if (systolic === null || diastolic === null) return true;
  return Math.max(Math.abs(systolic), Math.abs(diastolic)) >= WORTH_TELLING_MMHG;
}
