import type { StoredEntry } from '@evenfall/record';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { localDate } from '../ports/stampAt.js';
import { FactsLines } from './FactsLines.js';

type FactsOfDayProps = { readonly person: string; readonly entries: readonly StoredEntry[] };

/** The facts that hold today, and the way to all of them. */
export function FactsOfDay({ person, entries }: FactsOfDayProps) {
  const { words, clock } = useApp();
  return (
    <div className="facts-of-day">
      <FactsLines entries={entries} day={localDate(clock.stamp())} />
      <Link href={`/people/${person}/facts`} className="button button-quiet">
        {words.sentence('facts.page')}
      </Link>
    </div>
  );
}
