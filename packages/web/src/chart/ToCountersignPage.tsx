import type { PersonRow } from '@evenfall/api';
import {
  type Agent,
  type ChartedSeries,
  type ChartRound,
  chartSeries,
  projectChart,
  projectDuties,
  signingOf,
} from '@evenfall/record';
import { useEffect, useMemo } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { dayText, stampText } from '../app/times.js';
import { Asking } from '../parts/Asking.js';
import { IdentityLine } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { entriesIn, useRecord } from '../round/useRound.js';
import { loadPeople } from '../server/load.js';
import { standingValues } from './standingValues.js';
import { useRulesOf } from './useRulesOf.js';
import { whoText } from './who.js';

/** Every learner's round that nobody qualified has signed for, with its values, person by person. */
export function ToCountersignPage() {
  const app = useApp();
  const { words } = app;
  const people = useKept(({ known }) => known.people);
  useEffect(() => void loadPeople(app), [app]);
  return (
    <Page
      title={words.sentence('people.toCountersignTitle')}
      back={{ href: '/', text: words.sentence('people.title') }}
    >
      <Asking asked={people} again={() => loadPeople(app)}>
        {(rows) => {
          const waiting = rows.filter(({ latest }) => latest.toCountersign > 0);
          if (waiting.length === 0) return <p>{words.sentence('people.toCountersignNone')}</p>;
          return (
            <>
              <p className="soft">{words.sentence('people.toCountersignLead')}</p>
              {waiting.map((row) => (
                <OfPerson key={row.id} row={row} />
              ))}
            </>
          );
        }}
      </Asking>
    </Page>
  );
}

function OfPerson({ row: { id: person, identity } }: { readonly row: PersonRow }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const rulesOf = useRulesOf();
  const record = asked.value;
  const entries = useMemo(() => (record === null ? [] : entriesIn(record)), [record]);
  const { toCountersign } = projectDuties(entries, rulesOf);
  const rounds = projectChart(entries).rounds.filter(({ id }) => toCountersign.includes(id));
  const series = chartSeries(entries, rulesOf).filter(({ isToCountersign }) => isToCountersign);
  return (
    <section className="to-countersign" aria-labelledby={`of-${person}`}>
      <h2 id={`of-${person}`}>{identity?.name ?? words.sentence('people.erased')}</h2>
      <IdentityLine identity={identity} />
      <Asking asked={asked} again={again}>
        {({ agents }) => (
          <ul>
            {series.map((one) => (
              <li key={one.id}>
                <OfSeries series={one} person={person} agents={agents} />
              </li>
            ))}
            {rounds.map((round) => (
              <li key={round.id}>
                <OfRound round={round} person={person} agents={agents} />
              </li>
            ))}
          </ul>
        )}
      </Asking>
    </section>
  );
}

function OfSeries({
  series: { id, content, from, until, amended },
  person,
  agents,
}: {
  readonly series: ChartedSeries;
  readonly person: string;
  readonly agents: readonly Agent[];
}) {
  const { words } = useApp();
  const days = { from: dayText(from, words), until: dayText(until, words) };
  const { systolic, diastolic } = content.value.shown;
  return (
    <Link href={`/people/${person}/away/${id}`} className="person-line">
      <span className="person-who">
        <span className="person-when">
          {words.sentence(content.of === 'home' ? 'away.homeTitle' : 'away.recordingTitle', days)}
        </span>
        <span className="small soft">{whoText(amended.original, agents, words)}</span>
      </span>
      <span className="person-values">
        <span className="person-value">
          <span className="person-rate">
            {systolic ?? '–'}/{diastolic ?? '–'}
          </span>
        </span>
      </span>
    </Link>
  );
}

type RoundProps = { readonly round: ChartRound; readonly person: string; readonly agents: readonly Agent[] };

function OfRound({ round, person, agents }: RoundProps) {
  const { words } = useApp();
  const signing = signingOf(round);
  if (signing === null) return null;
  return (
    <Link href={`/people/${person}#round-${round.id}`} className="person-line">
      <span className="person-who">
        <span className="person-when">{stampText(signing.measuredAt, words)}</span>
        <span className="small soft">{whoText(signing, agents, words)}</span>
      </span>
      <span className="person-values">
        {standingValues(round, words).map(({ entry, sign, text }) => (
          <span key={entry} className="person-value">
            <span className="small soft">{signText(sign, words)}</span>
            <span className="person-rate">{text}</span>
          </span>
        ))}
      </span>
    </Link>
  );
}
