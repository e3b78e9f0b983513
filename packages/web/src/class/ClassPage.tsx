import type { ClassSession } from '@evenfall/api';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { instantText } from '../app/times.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import { PersonLine } from '../people/PeoplePage.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { loadClassKept, loadClassSessions } from '../server/loadClass.js';
import { BeginSession } from './BeginSession.js';

/**
 * Of how many people everything was deleted when a session was just ended here, and of how many it was kept; `before`
 * where it had been ended already.
 */
export type Ended = { readonly gone: number; readonly kept: number } | 'before';

/** The class: sessions that are open, the way to begin one, and what was kept of others by agreement. */
export function ClassPage() {
  const app = useApp();
  const { words } = app;
  const sessions = useKept(({ known }) => known.classSessions);
  const kept = useKept(({ known }) => known.classKept.value);
  const [ended] = useState(() => (window.history.state as { readonly ended?: Ended } | null)?.ended);
  // Said once: nothing of a session stays behind, not in the history of the browser either.
  useEffect(() => window.history.replaceState(null, ''), []);
  useEffect(() => void loadClassSessions(app), [app]);
  useEffect(() => void loadClassKept(app), [app]);
  return (
    <Page title={words.sentence('class.title')} back={{ href: '/', text: words.sentence('people.title') }}>
      {ended === undefined ? null : (
        <p className="notice" role="status">
          {ended === 'before' ? words.sentence('class.endedBefore') : words.sentence('class.ended', ended)}
        </p>
      )}
      <p>{words.sentence('class.lead')}</p>
      <WhoMeasures />
      <Asking asked={sessions} again={() => loadClassSessions(app)}>
        {(open) => (
          <section className="people" aria-label={words.sentence('class.open')}>
            <h2>{words.sentence('class.open')}</h2>
            {open.length === 0 ? (
              <p className="soft">{words.sentence('class.none')}</p>
            ) : (
              <ul className="people-list">
                {open.map((session) => (
                  <li key={session.id}>
                    <SessionLine session={session} />
                  </li>
                ))}
              </ul>
            )}
          </section>
        )}
      </Asking>
      <BeginSession />
      {kept === null || kept.length === 0 ? null : (
        <section className="people" aria-label={words.sentence('class.kept')}>
          <h2>{words.sentence('class.kept')}</h2>
          <p className="soft small">{words.sentence('class.keptSays')}</p>
          <ul className="people-list">
            {kept.map((row) => (
              <li key={row.id}>
                <PersonLine row={row} base="/class/kept" />
              </li>
            ))}
          </ul>
        </section>
      )}
    </Page>
  );
}

function SessionLine({ session }: { readonly session: ClassSession }) {
  return (
    <Link href={`/class/${session.id}`} className="person-line">
      <span className="person-who">
        <span className="person-name">{session.title}</span>
        <SessionSince session={session} />
      </span>
    </Link>
  );
}

/** Since when a session is open and until when, and in words that its day is over. */
export function SessionSince({ session }: { readonly session: ClassSession }) {
  const { words } = useApp();
  const agents = useKept(({ known }) => known.agents.value);
  const who = agents?.find(({ id }) => id === session.agent)?.name;
  const { begunAt, endsBy, isOverdue, goneAt, persons, rounds } = session;
  const text = instantText(begunAt, words);
  return (
    <>
      <span className="small soft session-parts">
        <span>
          {who === undefined
            ? words.sentence('class.since', { text })
            : words.sentence('class.sinceBy', { text, who })}
        </span>
        <span>{words.sentence('class.until', { text: instantText(endsBy, words) })}</span>
        <span>{words.sentence('class.holds', { persons, rounds })}</span>
      </span>
      {isOverdue ? (
        <strong className="small person-alert">
          {words.sentence('class.overdue', { text: instantText(goneAt, words) })}
        </strong>
      ) : null}
    </>
  );
}
