import { projectChart, projectDuties } from '@evenfall/record';
import { useEffect, useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { AwaySection } from '../diary/AwaySection.js';
import { FactsOfDay } from '../facts/FactsOfDay.js';
import { FromElsewhere } from '../handover/FromElsewhere.js';
import { Asking } from '../parts/Asking.js';
import { IdentityLine } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { beginRound } from '../round/rounds.js';
import { entriesIn, useRecord } from '../round/useRound.js';
import { loadRules } from '../server/load.js';
import { loadEquipment } from '../server/loadEquipment.js';
import { loadPlaceProtocols } from '../server/loadProtocols.js';
import { useMay } from '../signIn/useAccess.js';
import { ErasePanel } from './ErasePanel.js';
import { OpenActsNow } from './OpenActsNow.js';
import { PrintedChart } from './PrintedChart.js';
import { PrintedHead } from './PrintedEnds.js';
import { RoundBlock } from './RoundBlock.js';
import { useIsPrinting } from './useIsPrinting.js';
import { useRulesOf } from './useRulesOf.js';
import { WaitingRounds } from './WaitingRounds.js';

/** A person's page: who it is, the next round, and the chart, newest first. */
export function PersonPage({ person }: { readonly person: string }) {
  const app = useApp();
  const { words } = app;
  const { asked, again } = useRecord(person);
  const hasDraft = useKept(({ kept }) => kept.drafts[person] !== undefined);
  const mayErase = useMay('owner');
  const [, go] = useLocation();
  const record = asked.value;
  const entries = useMemo(() => (record === null ? [] : entriesIn(record)), [record]);
  const chart = useMemo(() => projectChart(entries), [entries]);
  const rulesOf = useRulesOf();
  const isPrinting = useIsPrinting();
  useEffect(() => void Promise.all([loadRules(app), loadPlaceProtocols(app), loadEquipment(app)]), [app]);
  const hasRounds = chart.rounds.length > 0;
  useEffect(() => {
    if (!hasRounds) return;
    // A link that names a round leads to it, once it is there.
    document.getElementById(window.location.hash.slice(1))?.scrollIntoView();
  }, [hasRounds]);
  const { rechecks } = projectDuties(entries, rulesOf);
  const name = record?.identity?.name ?? words.sentence(record === null ? 'chart.title' : 'people.erased');

  return (
    <Page
      title={name}
      under={record === null || record.identity === null ? null : <IdentityLine identity={record.identity} />}
      back={{ href: '/', text: words.sentence('people.title') }}
      printed={isPrinting ? <PrintedHead name={name} identity={record?.identity ?? null} /> : undefined}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {({ identity, agents }) => (
          <>
            <OpenActsNow person={person} rounds={chart.rounds} entries={entries} />
            {identity === null ? (
              <p className="notice">
                {words.sentence('person.erased')} {words.sentence('person.erasedNoRound')}
              </p>
            ) : (
              <button
                type="button"
                className="button button-first button-large"
                onClick={() => {
                  beginRound(app, person);
                  go(`/people/${person}/round`);
                }}
              >
                {words.sentence(hasDraft ? 'chart.goOnRound' : 'chart.newRound')}
              </button>
            )}
            <FactsOfDay person={person} entries={entries} />
            <section className="chart" aria-label={words.sentence('chart.title')}>
              <div className="chart-head">
                <h2>{words.sentence('chart.title')}</h2>
                {chart.rounds.length === 0 ? null : (
                  <Link href={`/people/${person}/trend`}>{words.sentence('trend.open')}</Link>
                )}
              </div>
              <WaitingRounds person={person} charted={entries} />
              {chart.rounds.length === 0 ? (
                <p className="soft">
                  {words.sentence('chart.none')} {identity === null ? null : words.sentence('chart.noneHint')}
                </p>
              ) : null}
              {chart.rounds.map((round) => (
                <RoundBlock
                  key={round.id}
                  round={round}
                  person={person}
                  birthDate={identity?.birthDate ?? null}
                  agents={agents}
                  others={chart.rounds}
                  isOpenAbove
                  rechecks={rechecks.filter((one) => one.round === round.id)}
                />
              ))}
            </section>
            <AwaySection person={person} entries={entries} isClosed={identity === null} />
            {isPrinting ? (
              <PrintedChart
                person={person}
                birthDate={identity?.birthDate ?? null}
                entries={entries}
                chart={chart}
                agents={agents}
                rechecks={rechecks}
              />
            ) : null}
            <FromElsewhere reported={chart.reported} person={person} agents={agents} />
            <div className="chart-ends">
              {chart.rounds.length === 0 ? null : (
                <button type="button" className="button button-quiet" onClick={() => window.print()}>
                  {words.sentence('chart.print')}
                </button>
              )}
              <Link href={`/people/${person}/hand-over`} className="button button-quiet">
                {words.sentence('handover.open')}
              </Link>
              {identity === null ? null : (
                <Link href={`/people/${person}/identity`} className="button button-quiet">
                  {words.sentence('person.putRight')}
                </Link>
              )}
              {identity === null || !mayErase ? null : <ErasePanel person={person} name={identity.name} />}
            </div>
          </>
        )}
      </Asking>
    </Page>
  );
}
