import type { PersonRecord } from '@evenfall/api';
import { type ChartedSeries, readingsAdded, sleepPutRight } from '@evenfall/record';
import { sleepText } from '@evenfall/report';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { whoText } from '../chart/who.js';

type BroughtProps = { readonly series: ChartedSeries; readonly agents: PersonRecord['agents'] };

/** Who brought a series in and when, who added to it since, and who put its hours of sleep right: what they were, and why. */
export function BroughtIn({ series: { amended }, agents }: BroughtProps) {
  const { words } = useApp();
  const [first, ...later] = amended.story.filter((one) => one.kind === 'series');
  if (first === undefined) return null;
  const said = (entry: typeof first) => ({
    who: whoText(entry, agents, words),
    at: stampText({ at: entry.writtenAt }, words),
  });
  const putRight = new Map(sleepPutRight(amended.story).map((one) => [one.entry.id, one]));
  return (
    <>
      <p className="small soft">{words.sentence('away.broughtIn', said(first))}</p>
      {later.map((entry) => {
        const added = readingsAdded(entry, amended.story) ?? 0;
        const sleep = putRight.get(entry.id);
        if (sleep !== undefined)
          return (
            <p key={entry.id} className="small soft">
              {words.sentence('away.sleepWasPutRight', {
                ...said(entry),
                before: sleepText(sleep.before, words),
                after: sleepText(sleep.after, words),
                why: entry.amends?.text ?? '',
              })}
            </p>
          );
        return (
          <p key={entry.id} className="small soft">
            {words.sentence('away.addedTo', { ...said(entry), readings: added })}
          </p>
        );
      })}
    </>
  );
}
