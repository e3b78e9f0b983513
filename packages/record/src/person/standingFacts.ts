import { gatherAmendments } from '../chart/amendmentTree.js';
import type { FactContent } from '../content/fact.js';
import type { StoredEntry } from '../entry/entry.js';

/**
 * A fact of a person as it stands: `entry` first said it and names it, an end too; `newest` says it now, and is what
 * an amendment of it amends.
 */
export type StandingFact = FactContent & { readonly entry: string; readonly newest: string };

/**
 * The facts of a person that stand: not entered in error, in their newest wording, with the last day that anybody
 * gave them. Two amendments of one fact that disagree are both there: a fact is never hidden by a quarrel about it.
 */
export function standingFacts(entries: readonly StoredEntry[]): StandingFact[] {
  const about = entries.filter(
    ({ kind }) => kind === 'fact' || kind === 'fact-ended' || kind === 'entered-in-error',
  );
  const gathered = gatherAmendments(about);
  const ends = gathered.flatMap(({ current }) => current).filter((entry) => entry.kind === 'fact-ended');
  return gathered.flatMap(({ original, current, story }) =>
    current.flatMap((entry) => {
      if (entry.kind !== 'fact') return [];
      const names = new Set(story.map(({ id }) => id));
      const last = ends.filter(({ content }) => names.has(content.fact)).at(-1);
      const until = last?.content.until ?? entry.content.until;
      return [{ ...entry.content, until, entry: original.id, newest: entry.id }];
    }),
  );
}

/** Whether a fact holds on a day, both as `YYYY-MM-DD`. */
export function holdsThen({ from, until }: Pick<FactContent, 'from' | 'until'>, day: string): boolean {
  return from <= day && (until === null || day <= until);
}
