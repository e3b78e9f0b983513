import type { ChartRound, StoredEntry } from '@evenfall/record';
import { CloseActNow } from './CloseActNow.js';
import { useOpenActs } from './useOpenActs.js';

type OpenProps = {
  readonly person: string;
  readonly rounds: readonly ChartRound[];
  readonly entries: readonly StoredEntry[];
};

/** Where every open act-now of a person stands, for a link. */
export const OPEN_ACTS_NOW = 'open-acts-now';

/**
 * Every act-now of a person that nobody closed, of rounds and of series, each with its form: before anything else on the
 * person's page, so that nobody reads an older one that was closed first.
 */
export function OpenActsNow({ person, rounds, entries }: OpenProps) {
  const all = useOpenActs(rounds, entries);
  if (all.length === 0) return null;
  return (
    <div className="round-duties" id={OPEN_ACTS_NOW}>
      {all.map(({ id, open, saw, says }) => (
        <CloseActNow key={id} round={{ id }} person={person} open={open} saw={saw} says={says} />
      ))}
    </div>
  );
}
