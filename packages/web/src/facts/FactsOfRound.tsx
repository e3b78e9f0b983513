import { localDate } from '../ports/stampAt.js';
import { entriesIn, type Round } from '../round/useRound.js';
import { FactsLines } from './FactsLines.js';

type FactsOfRoundProps = { readonly record: { readonly entries: readonly unknown[] }; readonly round: Round };

/** What is known of a person on the day of a round: in sight before a reading, never hidden. */
export function FactsOfRound({ record, round }: FactsOfRoundProps) {
  return <FactsLines entries={entriesIn(record)} day={localDate(round.draft.begunAt)} />;
}
