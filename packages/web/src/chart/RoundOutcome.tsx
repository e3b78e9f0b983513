import {
  type Agent,
  type ChartRound,
  isAmendedSince,
  NOTHING_CHOSEN,
  openIn,
  type RulesOf,
  signingOf,
  valueStanding,
} from '@evenfall/record';
import { useIsOver } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { stampText } from '../app/times.js';
import { askedText, ResultBlock } from '../round/ResultPanels.js';
import { CloseActNow } from './CloseActNow.js';
import { Countersign } from './Countersign.js';
import { whoText } from './who.js';

type OutcomeProps = {
  readonly round: ChartRound;
  readonly person: string;
  readonly agents: readonly Agent[];
};

/** What a signed round came to, what must be done about it, and who countersigned it. */
export function RoundOutcome({ round, person, agents }: OutcomeProps) {
  const { words } = useApp();
  const rulesOf = useRulesOf();
  const isOver = useIsOver();
  if (round.isInError) return null;
  const signing = signingOf(round);
  const value = valueStanding(round, rulesOf);
  const evidence = signing?.content.evidence ?? null;
  const open = openIn(round, rulesOf);
  return (
    <div className="round-outcome">
      {isOver || open.length === 0 ? null : <CloseActNow round={round} person={person} open={open} />}
      {round.closed.map((entry) => (
        <p key={entry.id} className="small closed-line">
          <strong>{words.sentence('chart.closedLine')}</strong>{' '}
          {words.sentence('chart.closedSays', {
            conditions: entry.content.conditions.map((one) => words.title('condition', one)).join(', '),
            whom: entry.content.toldWhom,
            at: stampText(entry.content.toldAt, words),
            said: entry.content.saidBack,
            who: whoText(entry, agents, words),
          })}
        </p>
      ))}
      {evidence === null ? null : (
        <p className="small soft">
          {evidence.exceptions === null
            ? words.sentence('prepare.notLooked')
            : evidence.exceptions.length === 0
              ? words.sentence('prepare.none')
              : words.sentence('prepare.some', {
                  text: evidence.exceptions.map((one) => words.sentence(`prepare.${one}`)).join(', '),
                })}{' '}
          {evidence.features === null ? null : askedText(evidence.features, words)}
        </p>
      )}
      {value === null ? null : <ResultBlock value={value} />}
      {value !== null && isAmendedSince(round) ? (
        <p className="small standing">{words.sentence('chart.resultAmended')}</p>
      ) : null}
      {round.countersigned.map((entry) => (
        <p key={entry.id} className="small">
          <strong>{words.sentence(entry.content.agrees ? 'chart.countersigned' : 'chart.notAgreed')}</strong>{' '}
          {whoText(entry, agents, words)}, {stampText(entry.measuredAt, words)}
          {entry.content.note === null ? null : `: ${entry.content.note}`}
        </p>
      ))}
      {round.isPreliminary && signing !== null && !isOver ? (
        <Countersign round={round} signing={signing} person={person} agents={agents} />
      ) : null}
    </div>
  );
}

/** The rules of the version in force; what was made under another is made again by the general rules, alerts on. */
export function useRulesOf(): RulesOf {
  const inForce = useKept(({ known }) => known.inForce.value);
  return (version) => (inForce !== null && version === inForce.presetVersion ? inForce : NOTHING_CHOSEN);
}
