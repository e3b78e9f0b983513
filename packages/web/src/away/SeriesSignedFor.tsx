import { type Agent, type ChartedSeries, signersOf } from '@evenfall/record';
import { useEffect } from 'react';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { Countersign } from '../chart/Countersign.js';
import { whoText } from '../chart/who.js';
import { loadAgents } from '../server/load.js';

type SignedProps = {
  readonly series: ChartedSeries;
  readonly person: string;
  readonly agents: readonly Agent[];
};

/** What supervisors said of a learner's series, and the way to sign for it while nobody has. */
export function SeriesSignedFor({ series, person, agents }: SignedProps) {
  const app = useApp();
  const { isPreliminary } = series;
  // Who may countersign is asked for here: the page is opened from a list too.
  useEffect(() => {
    if (isPreliminary) void loadAgents(app);
  }, [app, isPreliminary]);
  const signing = series.amended.current.at(-1);
  return (
    <>
      <CountersignedBy series={series} agents={agents} />
      {isPreliminary && signing !== undefined ? (
        <Countersign
          id={series.round}
          round={null}
          signing={signing}
          signers={signersOf(series.amended.story)}
          person={person}
        />
      ) : null}
    </>
  );
}

/** Who said what of a learner's series, and when. */
export function CountersignedBy({ series, agents }: Omit<SignedProps, 'person'>) {
  const { words } = useApp();
  return series.countersigned.map((entry) => (
    <p key={entry.id} className="small">
      <strong>{words.sentence(entry.content.agrees ? 'chart.countersigned' : 'chart.notAgreed')}</strong>{' '}
      {whoText(entry, agents, words)}, {stampText(entry.measuredAt, words)}
      {entry.content.note === null ? '. ' : `: ${entry.content.note} `}
    </p>
  ));
}
