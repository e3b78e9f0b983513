import { type ArmFactKind, type CuffRules, DAY_OF_ROUND, placeCheck, placeFactsOf } from '@evenfall/clinical';
import type { StoredEntry } from '../entry/entry.js';
import { roundFactsOf } from '../person/roundFactsOf.js';

/** What speaks against the arm of a charted pressure: it must `never` be used, or only with a name and a `reason`. */
export type ChartedArm = {
  readonly against: 'never' | 'reason';
  readonly because: readonly ArmFactKind[];
};

/** `YYYY-MM-DD` at the start of an instant with its offset: the local day. */
const DAY_CHARACTERS = 10;

/**
 * A charted pressure held against the facts of its day, whenever they were written down: those of a device that did not
 * know of one, an import, an amendment to the other arm. Null where nothing speaks against the arm, or where whoever took
 * it gave a name and a reason. That the other arm reads higher bars none.
 *
 * @param entries of the person, in any order
 */
export function chartedArm(
  run: StoredEntry & { readonly kind: 'run' },
  entries: readonly StoredEntry[],
  rules: CuffRules,
): ChartedArm | null {
  const { place } = run.content.evidence;
  const facts = roundFactsOf(null, entries, run.measuredAt.at.slice(0, DAY_CHARACTERS));
  const placeFacts = placeFactsOf({ ...facts, higherArm: null });
  const { allowed, because } = placeCheck(place, placeFacts, DAY_OF_ROUND, place.override, rules);
  if (allowed === 'yes') return null;
  return { against: allowed === 'never' ? 'never' : 'reason', because };
}
