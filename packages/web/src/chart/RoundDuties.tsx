import { type Agent, type ChartRound, type DueRecheck, signingsOf } from '@evenfall/record';
import { useIsOver } from '../app/book.js';
import { useApp } from '../app/context.js';
import { duesText } from '../people/dueText.js';
import { CloseActNow } from './CloseActNow.js';
import { ClosedLines } from './ClosedLines.js';
import { OPEN_ACTS_NOW } from './OpenActsNow.js';
import { openBeside } from './useOpenActs.js';
import { useRulesOf } from './useRulesOf.js';

type DutiesProps = {
  readonly round: ChartRound;
  readonly person: string;
  readonly agents: readonly Agent[];
  /** When the pressure of this round is to be taken again; none where it was since. */
  readonly rechecks: readonly DueRecheck[];
  /** Whether its open acts-now stand first on the page, with what closes them. */
  readonly isOpenAbove: boolean;
};

/** What a round asks somebody to do: before its values, so that nobody reads past it. */
export function RoundDuties({ round, person, agents, rechecks, isOpenAbove }: DutiesProps) {
  const { words, clock } = useApp();
  const rulesOf = useRulesOf();
  const isOver = useIsOver();
  if (round.isInError) return null;
  const open = isOver ? [] : openBeside(round, rulesOf);
  const due = isOver ? [] : rechecks;
  if (open.length === 0 && round.closed.length === 0 && due.length === 0) return null;
  return (
    <div className="round-duties">
      {open.length === 0 ? null : isOpenAbove ? (
        <p>
          <a href={`#${OPEN_ACTS_NOW}`} className="person-alert">
            {words.sentence('people.actNow', { alerts: open.length })}
          </a>
        </p>
      ) : (
        <CloseActNow
          round={round}
          person={person}
          open={open}
          saw={[...signingsOf(round), ...round.values].flatMap(({ story }) => story)}
        />
      )}
      <ClosedLines closed={round.closed} agents={agents} />
      {duesText(due, clock.stamp(), words).map((text) => (
        <p key={text} className="small">
          <strong className="person-mark">{text}.</strong>
        </p>
      ))}
      {due.length === 0 ? null : <p className="small soft">{words.sentence('people.cannotRing')}</p>}
    </div>
  );
}
