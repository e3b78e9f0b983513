import type { StoredEntry } from '@evenfall/record';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { ChartedFigure } from '../parts/ChartedFigure.js';
import { signOfCharted } from '../parts/charted.js';
import { contentOfEntry } from './contentOfEntry.js';
import { notYetCharted } from './notYetCharted.js';

type WaitingRoundsProps = { readonly person: string; readonly charted: readonly StoredEntry[] };

/**
 * Rounds of this person that were signed on this device and that the server has not taken yet.
 *
 * @param charted what the record holds: a round that is in it stands in the chart, and not here as well
 */
export function WaitingRounds({ person, charted }: WaitingRoundsProps) {
  const { words } = useApp();
  const waiting = useKept(({ kept }) => kept.waiting);
  const rounds = waiting.filter(({ draft }) => draft !== null);
  return notYetCharted(rounds, person, charted).map(({ round, entries, refused }) => {
    const values = (entries as readonly StoredEntry[]).flatMap((entry) => {
      const given = contentOfEntry(entry);
      return given === null ? [] : [{ id: entry.id, given }];
    });
    const signing = entries.at(-1);
    return (
      <article key={round} className="round-block round-waiting">
        <header className="round-head">
          <h3>{signing === undefined ? null : stampText(signing.measuredAt, words)}</h3>
          <p className="small standing">
            {words.sentence(refused === null ? 'chart.waitingRound' : 'chart.refusedRound')}
          </p>
        </header>
        {values.map(({ id, given }) => (
          <div key={id} className="value">
            <h4 className="value-sign">{signText(signOfCharted(given), words)}</h4>
            <ChartedFigure given={given} />
          </div>
        ))}
      </article>
    );
  });
}
