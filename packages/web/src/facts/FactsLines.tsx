import type { StoredEntry } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { factsOn } from './factsOn.js';
import { askedBy, factText } from './factText.js';
import { useCuffRules } from './useCuffRules.js';

type FactsLinesProps = {
  readonly entries: readonly StoredEntry[];
  /** The local date for which they are shown, `YYYY-MM-DD`: that of the round. */
  readonly day: string;
};

/** What is known of a person on a day, in plain words, before anything is measured. Nothing where nothing is. */
export function FactsLines({ entries, day }: FactsLinesProps) {
  const { words } = useApp();
  const rules = useCuffRules();
  const facts = factsOn(entries, day);
  if (facts.length === 0) return null;
  return (
    <section className="fact-lines" aria-label={words.sentence('facts.about')}>
      <ul>
        {facts.map((fact) => (
          <li key={fact.newest} className={askedBy(fact.about, rules) === null ? undefined : 'fact-asks'}>
            {factText(fact, day, rules, words)}
            {fact.text === null ? null : <span className="fact-text">{fact.text}</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}
