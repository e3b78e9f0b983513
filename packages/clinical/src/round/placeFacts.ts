import type { PlaceFacts } from '../cuff/facts.js';
import type { Side } from '../cuff/places.js';
import type { RoundFacts } from './roundFacts.js';

/** Any day will do: the facts of a round are those of its own day already. */
export const DAY_OF_ROUND = '2000-01-01';
const always = { from: DAY_OF_ROUND, until: null } as const;

/** The facts of a round as the choice of a place for the cuff takes them, holding on {@link DAY_OF_ROUND}. */
export function placeFactsOf(facts: RoundFacts): PlaceFacts {
  const { arms, ageMonths, pregnancyWeeks, higherArm } = facts;
  const lower: Side | null = higherArm === null ? null : higherArm === 'right' ? 'left' : 'right';
  return {
    arms: [
      ...arms.map((arm) => ({ ...arm, ...always })),
      ...(lower === null ? [] : [{ kind: 'lower-arm' as const, side: lower, ...always }]),
    ],
    person: [
      ...(facts.isPregnant === true ? [{ kind: 'pregnancy' as const, ...always }] : []),
      ...(facts.cannotStand ? [{ kind: 'cannot-stand' as const, ...always }] : []),
    ],
    ageMonths,
    pregnancyWeeks,
  };
}
