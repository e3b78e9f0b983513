import type { Agent, Gauge } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { reasonText } from '../chart/reasonText.js';
import { whoText } from '../chart/who.js';
import { gaugeSaid } from './gaugeText.js';

type EarlierNamesProps = { readonly gauge: Gauge; readonly agents: readonly Agent[] };

/** What was said of a gauge before it was put right, newest first. */
export function EarlierNames({ gauge, agents }: EarlierNamesProps) {
  const { words } = useApp();
  const earlier = gauge.namings.filter(({ id }) => id !== gauge.newest);
  if (earlier.length === 0) return null;
  return (
    <section aria-labelledby="earlier">
      <h2 id="earlier">{words.sentence('equipment.earlier')}</h2>
      <ul className="fact-list">
        {earlier.toReversed().map((entry) => (
          <li key={entry.id} className="fact-row">
            <p className="fact-what">
              <del>{gaugeSaid(entry.content, words)}</del>
            </p>
            <p className="soft small">
              {words.sentence('facts.said', {
                who: whoText(entry, agents, words),
                at: stampText({ at: entry.writtenAt }, words),
              })}
            </p>
            {gauge.namings.map((after) =>
              after.amends?.entry === entry.id ? (
                <p key={after.id} className="soft small">
                  {words.sentence('equipment.earlierUntil', {
                    who: whoText(after, agents, words),
                    at: stampText({ at: after.writtenAt }, words),
                    why: reasonText(after.amends, words),
                  })}
                </p>
              ) : null,
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
