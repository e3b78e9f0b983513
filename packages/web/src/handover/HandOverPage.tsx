import { projectChart } from '@evenfall/record';
import { useEffect, useMemo } from 'react';
import { useApp } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { entriesIn, useRecord } from '../round/useRound.js';
import { loadRules } from '../server/load.js';
import { useMay } from '../signIn/useAccess.js';
import { AsFile } from './AsFile.js';
import { AsText } from './AsText.js';
import { BringFile } from './BringFile.js';

/** A person's values for another place, as plain text by a template or as a file; and a file from another place. */
export function HandOverPage({ person }: { readonly person: string }) {
  const app = useApp();
  const { words } = app;
  const { asked, again } = useRecord(person);
  useEffect(() => void loadRules(app), [app]);
  const mayBring = useMay('owner', 'clinician', 'supervisor');
  const record = asked.value;
  const entries = useMemo(() => (record === null ? [] : entriesIn(record)), [record]);
  const chart = useMemo(() => projectChart(entries), [entries]);
  const hasSeries = entries.some(({ kind }) => kind === 'series');
  const name = nameIn(record) ?? words.sentence('people.erased');
  const title = words.sentence('handover.title');
  const signed = chart.rounds.filter((round) => round.signed !== null && !round.isInError);
  return (
    <Page
      title={record === null ? title : `${title}: ${name}`}
      under={<IdentityOf record={record} />}
      back={{ href: `/people/${person}`, text: name }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {({ identity, agents }) => (
          <>
            <section className="handover" aria-labelledby="as-text">
              <h2 id="as-text">{words.sentence('handover.asText')}</h2>
              {signed.length === 0 ? (
                <p className="soft">{words.sentence('handover.noRound')}</p>
              ) : (
                <AsText signed={signed} rounds={chart.rounds} identity={identity} agents={agents} />
              )}
            </section>
            <section className="handover" aria-labelledby="as-file">
              <h2 id="as-file">{words.sentence('handover.asFile')}</h2>
              <AsFile
                person={person}
                isKnown={identity !== null}
                isEmpty={chart.rounds.length + chart.reported.length === 0 && !hasSeries}
              />
            </section>
            {mayBring ? (
              <section className="handover" aria-labelledby="bring-in">
                <h2 id="bring-in">{words.sentence('bring.title')}</h2>
                <BringFile person={person} onKept={again} />
              </section>
            ) : null}
          </>
        )}
      </Asking>
    </Page>
  );
}
