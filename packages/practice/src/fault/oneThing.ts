import type { Conduct } from './conduct.js';
import type { Cost, Costs } from './cost.js';
import { FAULT_FIGURES as F } from './figures.js';
import type { LessonCode } from './lesson.js';
import { sizeOfCost } from './sizeOfCost.js';
import { WORTH_TELLING_MMHG } from './worthTelling.js';

/** The one change that would do most; null: nothing was done wrong, as far as can be told, that moved anything to speak of. */
export type OneThing =
  | { readonly kind: 'cost'; readonly cost: Cost }
  | { readonly kind: 'conduct'; readonly conduct: Conduct }
  /** What this person is there to teach, and was not done. */
  | { readonly kind: 'lesson'; readonly codes: readonly LessonCode[] }
  | null;

/**
 * The one thing to do differently, by harm and by size: a sign that was not told and could be known; that nothing was measured; what hid the sounds, or the pulse, of
 * numbers that were written all the same; a sound after a silent gap taken for the first; a fault that alone moves a number out of what is
 * usually accepted; a muffling that was not written; what this person is there to teach; a smaller fault that the gauge can show; what was
 * left out or overdone. What is smaller than that is no advice, and nobody who is unwell is made to wait or sit otherwise.
 *
 * @param lesson what of this person's lesson was not done, as of `lessonOf`
 * Source: assessment handbook 13 (critical items) and 14 (one thing to change).
 */
export function oneThingOf(
  { costs, hidBy }: Costs,
  conduct: readonly Conduct[],
  lesson: readonly LessonCode[] = [],
): OneThing {
  const of = (...codes: readonly Conduct['code'][]) => conduct.find(({ code }) => codes.includes(code));
  const untold = of('not-told');
  if (untold !== undefined) return { kind: 'conduct', conduct: untold };
  const silent = of('nothing-measured', 'nothing-in-ears', 'nothing-felt');
  if (silent !== undefined) return { kind: 'conduct', conduct: silent };
  const first = costs.find(({ code }) => code === hidBy) ?? costs.find(({ code }) => code === 'silent-gap');
  if (first !== undefined) return { kind: 'cost', cost: first };
  const nothing = of('nothing-to-hear');
  const isShared = costs.some(({ systolic, diastolic }) => systolic !== null || diastolic !== null);
  if (nothing !== undefined && !isShared && costs.length > 0) return { kind: 'conduct', conduct: nothing };
  const unwritten = of('muffled-not-written');
  // Where a muffling was not written the last sound was taken: to write three numbers is what mends it.
  const [dearest] = costs.filter(
    (one) => one.doInstead !== 'no-time-for-that' && (unwritten === undefined || !isOfLastSound(one)),
  );
  const costsMmHg = dearest === undefined ? 0 : sizeOfCost(dearest);
  if (dearest !== undefined && costsMmHg >= F.outOfAcceptedMmHg.value) return { kind: 'cost', cost: dearest };
  if (unwritten !== undefined && costsMmHg < WORTH_TELLING_MMHG)
    return { kind: 'conduct', conduct: unwritten };
  if (lesson.length > 0) return { kind: 'lesson', codes: lesson };
  if (dearest !== undefined && costsMmHg >= F.oneThingMmHg.value) return { kind: 'cost', cost: dearest };
  const [gravest] = conduct;
  return gravest === undefined ? null : { kind: 'conduct', conduct: gravest };
}

/** A sound or number that was not the right one, of the diastolic alone. */
function isOfLastSound({ code, systolic }: Cost): boolean {
  const isOfEar = code === 'misheard' || code === 'off-the-sound' || code === 'on-no-sound';
  return isOfEar && systolic !== null && Math.abs(systolic) < WORTH_TELLING_MMHG;
}
