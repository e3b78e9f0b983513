import { type Agent, type ChartRound, signersOf, signingOf, signingsOf } from '@evenfall/record';
import { askedText, beginningText, restText } from '@evenfall/words';
import { Fragment } from 'react';
import { useIsOver } from '../app/book.js';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { VersionMention } from '../protocol/VersionMention.js';
import { Countersign } from './Countersign.js';
import { preparedText } from './preparedText.js';
import { SideBySide } from './SideBySide.js';
import { whoText } from './who.js';

type OutcomeProps = {
  readonly round: ChartRound;
  readonly person: string;
  readonly agents: readonly Agent[];
  /** The rounds of the chart, among which are those that supervisors took themselves. */
  readonly others: readonly ChartRound[];
};

/** How a signed round was made ready, under which rules, and who countersigned it. */
export function RoundOutcome({ round, person, agents, others }: OutcomeProps) {
  const { words } = useApp();
  const isOver = useIsOver();
  if (round.isInError) return null;
  const signing = signingOf(round);
  const {
    evidence = null,
    protocolVersion = null,
    begun = null,
    rest = null,
    signs = [],
    isCuffAsked = null,
  } = signing?.content ?? {};
  return (
    <div className="round-outcome">
      {begun === null ? null : <p className="small soft">{beginningText(begun, words)}</p>}
      {evidence === null ? null : (
        <p className="small soft">{preparedText({ ...evidence, rest, isCuffAsked, signs }, words)}</p>
      )}
      {rest === null ? null : <p className="small soft">{restText(rest, words)}</p>}
      {evidence === null || evidence.features === null ? null : (
        <p className="small soft">{askedText(evidence.features, words)}</p>
      )}
      {protocolVersion === null ? null : (
        <p className="small soft">
          {words.sentence('protocol.takenUnder')} <VersionMention version={protocolVersion} />
        </p>
      )}
      {round.countersigned.map((entry) => (
        <Fragment key={entry.id}>
          <p className="small">
            <strong>
              {words.sentence(entry.content.agrees ? 'chart.countersigned' : 'chart.notAgreed')}
            </strong>{' '}
            {whoText(entry, agents, words)}, {stampText(entry.measuredAt, words)}
            {entry.content.note === null ? null : `: ${entry.content.note}`}
          </p>
          <Beside round={round} own={others.find(({ id }) => id === entry.content.ownRound)} />
        </Fragment>
      ))}
      {round.isPreliminary && signing !== null && !isOver ? (
        <Countersign
          id={round.id}
          round={round}
          signing={signing}
          signers={signersOf(signingsOf(round).flatMap(({ story }) => story))}
          person={person}
        />
      ) : null}
    </div>
  );
}

/** The learner's values and those that the supervisor took, as long as the round is in the chart. */
function Beside({ round, own }: { readonly round: ChartRound; readonly own: ChartRound | undefined }) {
  return own === undefined ? null : <SideBySide learner={round} own={own} />;
}
