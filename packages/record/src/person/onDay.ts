import { weeksBetween } from './roundFactsOf.js';
import { holdsThen, type StandingFact } from './standingFacts.js';

/** What the record says of a person on a day that would change what to do about a pressure. Null is not known. */
export type OnDay = { readonly isPregnant: boolean | null; readonly weeksAfterBirth: number | null };

/** What holds on a day (`YYYY-MM-DD`, local), of facts that stand. */
export function onDay(facts: readonly StandingFact[], day: string): OnDay {
  const held = facts.filter((fact) => holdsThen(fact, day));
  const birth = held.findLast(({ about }) => about.fact === 'gave-birth');
  return {
    isPregnant: held.some(({ about }) => about.fact === 'pregnancy') ? true : null,
    weeksAfterBirth: birth === undefined ? null : weeksBetween(birth.from, day),
  };
}
