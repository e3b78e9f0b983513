import type { Agent, ChartRound } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { whoText } from './who.js';

type ClosedProps = { readonly closed: ChartRound['closed']; readonly agents: readonly Agent[] };

/** Every act-now that was closed: whom was told, when, what was said back, and by whom it was written. */
export function ClosedLines({ closed, agents }: ClosedProps) {
  const { words } = useApp();
  return closed.map((entry) => (
    <p key={entry.id} className="small">
      <strong>{words.sentence('chart.closedLine')}</strong>{' '}
      {words.sentence('chart.closedSays', {
        conditions: entry.content.conditions.map((one) => words.title('condition', one)).join(', '),
        whom: entry.content.toldWhom,
        at: stampText(entry.content.toldAt, words),
        said: entry.content.saidBack,
        who: whoText(entry, agents, words),
      })}
    </p>
  ));
}
