import {
  type ChartRound,
  chartSeries,
  NOTHING_CHOSEN,
  openIn,
  type StoredEntry,
  signingsOf,
} from '@evenfall/record';
import { useApp, useKept } from '../app/context.js';
import { dayText, stampText } from '../app/times.js';
import { CloseActNow } from './CloseActNow.js';
import { useRulesOf } from './useRulesOf.js';

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
  const { words } = useApp();
  const rulesOf = useRulesOf();
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const ofRounds = rounds.flatMap((round) => {
    const open = round.isInError ? [] : openIn(round, rulesOf);
    const signing = round.signed?.current.at(-1) ?? round.signed?.original ?? round.values[0]?.original;
    if (open.length === 0 || signing === undefined) return [];
    return [
      {
        id: round.id,
        open,
        saw: [...signingsOf(round), ...round.values].flatMap(({ story }) => story),
        says: words.sentence('chart.actNowOfRound', { at: stampText(signing.measuredAt, words) }),
      },
    ];
  });
  const ofSeries = chartSeries(entries, rulesOf, inForce).flatMap(
    ({ round, open, content, from, until, amended }) => {
      if (open.length === 0) return [];
      const days =
        from === until
          ? dayText(from, words)
          : words.sentence('diary.days', { from: dayText(from, words), until: dayText(until, words) });
      const of = words.sentence(content.of === 'home' ? 'diary.home' : 'diary.ambulatory');
      return [
        { id: round, open, saw: amended.story, says: words.sentence('chart.actNowOfSeries', { of, days }) },
      ];
    },
  );
  const all = [...ofRounds, ...ofSeries];
  if (all.length === 0) return null;
  return (
    <div className="round-duties" id={OPEN_ACTS_NOW}>
      {all.map(({ id, open, saw, says }) => (
        <CloseActNow key={id} round={{ id }} person={person} open={open} saw={saw} says={says} />
      ))}
    </div>
  );
}
