import { projectChart } from '@evenfall/record';
import { useEffect, useMemo } from 'react';
import { useLocation } from 'wouter';
import { sessionHref, useBook, useIsOver } from '../app/book.js';
import { useApp } from '../app/context.js';
import { RoundBlock } from '../chart/RoundBlock.js';
import { WaitingRounds } from '../chart/WaitingRounds.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { beginRound } from '../round/rounds.js';
import { entriesIn, useDraft, useRecord } from '../round/useRound.js';
import { loadPlaceProtocols } from '../server/loadProtocols.js';
import { Withdraw } from './Withdraw.js';

/** Somebody of a class: the next round, the rounds so far, and the way out. No facts, no identity, no chart. */
export function ClassPersonPage({ person }: { readonly person: string }) {
  const app = useApp();
  const { words } = app;
  const inBook = useBook();
  const isOver = useIsOver();
  const { asked, again } = useRecord(person);
  const hasDraft = useDraft(person) !== undefined;
  const [, go] = useLocation();
  const record = asked.value;
  useEffect(() => void loadPlaceProtocols(app), [app]);
  const rounds = useMemo(() => (record === null ? [] : projectChart(entriesIn(record)).rounds), [record]);
  return (
    <Page
      title={nameIn(record) ?? words.sentence('class.title')}
      under={<IdentityOf record={record} />}
      back={{
        href: sessionHref(inBook.session),
        text: words.sentence(isOver ? 'class.title' : 'class.toSession'),
      }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('class.nothing')}>
        {({ agents, entries }) => (
          <>
            {isOver ? null : (
              <button
                type="button"
                className="button button-first button-large"
                onClick={() => {
                  beginRound(app, person, inBook);
                  go(`/people/${person}/round`);
                }}
              >
                {words.sentence(hasDraft ? 'chart.goOnRound' : 'chart.newRound')}
              </button>
            )}
            <section className="chart" aria-label={words.sentence('class.rounds')}>
              <h2>{words.sentence('class.rounds')}</h2>
              <WaitingRounds person={person} charted={entriesIn({ entries })} />
              {rounds.length === 0 ? <p className="soft">{words.sentence('class.noRounds')}</p> : null}
              {rounds.map((round) => (
                <RoundBlock
                  key={round.id}
                  round={round}
                  person={person}
                  birthDate={null}
                  agents={agents}
                  others={rounds}
                />
              ))}
            </section>
            <Withdraw
              person={person}
              session={inBook.session ?? entries.find(({ session }) => session !== null)?.session ?? null}
              pseudonym={nameIn(record) ?? ''}
            />
          </>
        )}
      </Asking>
    </Page>
  );
}
