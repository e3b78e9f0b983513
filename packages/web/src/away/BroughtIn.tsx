import type { PersonRecord } from '@evenfall/api';
import type { ChartedSeries } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { whoText } from '../chart/who.js';

type BroughtProps = { readonly series: ChartedSeries; readonly agents: PersonRecord['agents'] };

/** Who brought a series in and when, and who added to it since. */
export function BroughtIn({ series: { amended }, agents }: BroughtProps) {
  const { words } = useApp();
  const [first, ...later] = amended.story.filter((one) => one.kind === 'series');
  if (first === undefined) return null;
  const said = (entry: typeof first) => ({
    who: whoText(entry, agents, words),
    at: stampText({ at: entry.writtenAt }, words),
  });
  let readings = first.content.readings.length;
  return (
    <>
      <p className="small soft">{words.sentence('away.broughtIn', said(first))}</p>
      {later.map((entry) => {
        const added = entry.content.readings.length - readings;
        readings = entry.content.readings.length;
        return (
          <p key={entry.id} className="small soft">
            {words.sentence('away.addedTo', { ...said(entry), readings: added })}
          </p>
        );
      })}
    </>
  );
}
