import {
  FACT_NAMES,
  type FactContent,
  gatherAmendments,
  holdsThen,
  type StandingFact,
  type StoredEntry,
  standingFacts,
} from '@evenfall/record';

/** The facts of a person that hold on a day (`YYYY-MM-DD`, local): those of an arm first, as a form offers them. */
export function factsOn(entries: readonly StoredEntry[], day: string): readonly StandingFact[] {
  return inOrderOfKind(standingFacts(entries).filter((fact) => holdsThen(fact, day)));
}

/** Who decided that the saturation is judged by scale 2 on that day; null where nobody did. */
export function prescriberOfScaleTwo(entries: readonly StoredEntry[], day: string): string | null {
  const found = factsOn(entries, day).findLast(({ about }) => about.fact === 'oxygen-scale-2');
  return found?.about.fact === 'oxygen-scale-2' ? found.about.prescriber : null;
}

/** Every fact of a person by how it stands on a day. */
export type FactsOfPerson = {
  readonly holding: readonly StandingFact[];
  readonly ahead: readonly StandingFact[];
  readonly ended: readonly StandingFact[];
  readonly inError: readonly FactInError[];
};

/** A fact that should never have stood there, as it was last said, with the mark that says so. */
export type FactInError = { readonly fact: StoredFact; readonly mark: StoredEntry };

type StoredFact = Extract<StoredEntry, { readonly kind: 'fact' }>;

export function factsOfPerson(entries: readonly StoredEntry[], day: string): FactsOfPerson {
  const standing = inOrderOfKind(standingFacts(entries));
  const about = entries.filter(({ kind }) => kind === 'fact' || kind === 'entered-in-error');
  return {
    holding: standing.filter((fact) => holdsThen(fact, day)),
    ahead: standing.filter(({ from }) => from > day),
    ended: standing.filter(({ from, until }) => from <= day && until !== null && until < day),
    inError: gatherAmendments(about).flatMap(({ standing: how, story }) => {
      const fact = story.findLast((entry): entry is StoredFact => entry.kind === 'fact');
      const mark = story.findLast(({ kind }) => kind === 'entered-in-error');
      const isInError = how === 'entered-in-error' && fact !== undefined && mark !== undefined;
      return isInError ? [{ fact, mark }] : [];
    }),
  };
}

function inOrderOfKind<Fact extends FactContent>(facts: readonly Fact[]): Fact[] {
  return facts.toSorted((a, b) => FACT_NAMES.indexOf(a.about.fact) - FACT_NAMES.indexOf(b.about.fact));
}
