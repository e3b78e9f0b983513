import { holdsThen, type StandingFact, type StoredEntry, standingFacts } from '@evenfall/record';

/** The facts of a person that hold on a day (`YYYY-MM-DD`, local), in the order in which they were given. */
export function factsOn(entries: readonly StoredEntry[], day: string): readonly StandingFact[] {
  return standingFacts(entries).filter((fact) => holdsThen(fact, day));
}

/** Who decided that the saturation is judged by scale 2 on that day; null where nobody did. */
export function prescriberOfScaleTwo(entries: readonly StoredEntry[], day: string): string | null {
  const found = factsOn(entries, day).findLast(({ about }) => about.fact === 'oxygen-scale-2');
  return found?.about.fact === 'oxygen-scale-2' ? found.about.prescriber : null;
}
