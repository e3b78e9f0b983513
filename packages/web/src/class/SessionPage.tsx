import { useEffect } from 'react';
import { useApp, useKept } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import { PersonLine } from '../people/PeoplePage.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { loadClass } from '../server/loadClass.js';
import { ASKED } from '../store/known.js';
import { AddSubject } from './AddSubject.js';
import { SessionSince } from './ClassPage.js';
import { EndSession } from './EndSession.js';

/** A session that is open: who lets themselves be measured in it, with their newest values, and its end. */
export function SessionPage({ session }: { readonly session: string }) {
  const app = useApp();
  const { words } = app;
  const asked = useKept(({ known }) => known.classes[session]) ?? ASKED;
  const again = () => loadClass(app, session);
  useEffect(() => void loadClass(app, session), [app, session]);
  return (
    <Page
      title={asked.value?.session.title ?? words.sentence('class.title')}
      back={{ href: '~/class', text: words.sentence('class.title') }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('class.noSuchSession')}>
        {({ session: open, rows }) => (
          <>
            <div>
              <SessionSince session={open} />
            </div>
            <WhoMeasures />
            <section className="people" aria-label={words.sentence('class.people')}>
              <h2>{words.sentence('class.people')}</h2>
              {rows.length === 0 ? (
                <p className="soft">{words.sentence('class.nobody')}</p>
              ) : (
                <ul className="people-list">
                  {rows.map((row) => (
                    <li key={row.id}>
                      <PersonLine row={row} />
                    </li>
                  ))}
                </ul>
              )}
            </section>
            <AddSubject session={session} rows={rows} />
            <EndSession session={session} rows={rows} />
          </>
        )}
      </Asking>
    </Page>
  );
}
