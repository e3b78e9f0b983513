import { cuffRulesFor, DAY_OF_ROUND, placeCheck, placeFactsOf, postureChoice } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import type { readTypedSet } from './typedSet.js';
import type { QuickRound } from './useQuickRound.js';

type Form = { readonly text: (field: string) => string };
type Set = ReturnType<typeof readTypedSet>['set'];
type Arm = 'left' | 'right';

/** Where the cuff of a typed set was, and what the facts of its day say of that. */
export type Placed = {
  readonly place: RunPlace;
  readonly allowed: ReturnType<typeof placeCheck>['allowed'];
  readonly because: ReturnType<typeof placeCheck>['because'];
};

const NOBODY_DECIDES = null;

/** The arm as it is typed or else chosen; null as long as nobody said. */
export function armOf(form: Form, set: Set): Arm | null {
  const side = set?.side ?? form.text('side');
  return side === 'left' || side === 'right' ? side : null;
}

/** Where the cuff was on an arm as the page says it, held against the facts. */
export function placeOn(side: Arm, form: Form, set: Set, { facts, inForce }: QuickRound): Placed {
  const rules = cuffRulesFor(inForce.roundRules.cuff, facts.ageMonths);
  const known = placeFactsOf(facts.round);
  const asked = set?.posture ?? (form.text('posture') as RunPlace['posture']);
  const { posture } = postureChoice(asked ?? 'sit', known, DAY_OF_ROUND, rules);
  const { allowed, because } = placeCheck(
    { site: 'upper-arm', side },
    known,
    DAY_OF_ROUND,
    NOBODY_DECIDES,
    rules,
  );
  const cuff = form.text('cuff');
  const place: RunPlace = {
    site: 'upper-arm',
    side,
    posture,
    cuff: cuff === '' ? null : { scheme: rules.scheme, id: cuff },
    armCm: null,
    override: null,
  };
  return { place, allowed, because };
}
