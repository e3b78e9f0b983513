import { alertsBeside } from '@evenfall/clinical';
import {
  type ChartRound,
  chartSeries,
  NOTHING_CHOSEN,
  notesStanding,
  type OpenActNow,
  openIn,
  type RulesOf,
  type StoredEntry,
  signingsOf,
} from '@evenfall/record';
import { useApp, useKept } from '../app/context.js';
import { dayText, stampText } from '../app/times.js';
import { useRulesOf } from './useRulesOf.js';

/** The open alerts of one round or series: which, what whoever closes them saw, and of what they are in words. */
export type OpenActs = {
  readonly id: string;
  readonly open: readonly OpenActNow[];
  readonly saw: readonly StoredEntry[];
  readonly says: string;
};

/** The open alerts of a round as they are said beside it. */
export function openBeside(round: ChartRound, rulesOf: RulesOf): readonly OpenActNow[] {
  return alertsBeside(openIn(round, rulesOf), notesStanding(round, rulesOf, null).repeat);
}

/** Every act-now of a person that nobody closed, of rounds and of series. */
export function useOpenActs(
  rounds: readonly ChartRound[],
  entries: readonly StoredEntry[],
): readonly OpenActs[] {
  const { words } = useApp();
  const rulesOf = useRulesOf();
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const ofRounds = rounds.flatMap((round) => {
    const open = round.isInError ? [] : openBeside(round, rulesOf);
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
  return [...ofRounds, ...ofSeries];
}
