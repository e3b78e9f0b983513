import type { PersonRecord } from '@evenfall/api';
import {
  answeredHome,
  answeredRecording,
  byHandOf,
  type ChartedSeries,
  chartDiaries,
  chartSeries,
  type DiaryAsked,
  type InForce,
  type OfficeLeftOut,
  type OfficeNear,
  officeNear,
  officeNotTaken,
  projectChart,
  type SeriesValueKept,
  valueStandingOf,
} from '@evenfall/record';
import { askedText } from '@evenfall/words';
import { useEffect, useMemo, useState } from 'react';
import { useApp } from '../app/context.js';
import { dayText, stampText } from '../app/times.js';
import { CloseActNow } from '../chart/CloseActNow.js';
import { ClosedLines } from '../chart/ClosedLines.js';
import { useRulesOf } from '../chart/useRulesOf.js';
import { Asking } from '../parts/Asking.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { useIsWide } from '../parts/useIsWide.js';
import { entriesIn, useInForce, useRecord } from '../round/useRound.js';
import { loadRules } from '../server/load.js';
import { useMay } from '../signIn/useAccess.js';
import { ActFirstIn } from './ActFirst.js';
import { BesideSeries } from './BesideSeries.js';
import { BroughtIn } from './BroughtIn.js';
import { HomeSeries } from './HomeSeries.js';
import { isNothingLeftOut, LeftOut } from './LeftOut.js';
import { OfficeNotTaken } from './OfficeAndAway.js';
import { PutSleepRight } from './PutSleepRight.js';
import { Readings } from './Readings.js';
import { RecordingSeries } from './RecordingSeries.js';
import { RefusedRows } from './RefusedRows.js';
import { SavePdf } from './SavePdf.js';
import { CountersignedBy, SeriesSignedFor } from './SeriesSignedFor.js';
import { type LastTried, Trial, type TrialOf } from './Trial.js';

/** What a person's readings away from the clinic come to: the numbers, what was left out and why, and how sure it is. */
export function SeriesPage({ person, series }: { readonly person: string; readonly series: string }) {
  const app = useApp();
  const { words } = app;
  const { asked, again } = useRecord(person);
  const inForce = useInForce();
  const rulesOf = useRulesOf();
  useEffect(() => void loadRules(app), [app]);
  const record = asked.value;
  const entries = useMemo(() => (record === null ? [] : entriesIn(record)), [record]);
  const chart = useMemo(() => projectChart(entries), [entries]);
  const rules = inForce.asked.value;
  const all = rules === null ? [] : chartSeries(entries, rulesOf, rules);
  const found = all.find(({ id }) => id === series);
  const name = nameIn(record) ?? words.sentence(record === null ? 'chart.title' : 'people.erased');
  const title = found === undefined ? words.sentence('away.seriesTitle') : seriesTitle(found, words);
  return (
    <Page
      title={record === null ? title : `${title}: ${name}`}
      heading={title}
      running={
        <p className="print-whose">
          <strong>{nameIn(record)}</strong>
          <IdentityOf record={record} />
        </p>
      }
      under={
        <>
          <p className="identity-name">{nameIn(record)}</p>
          <IdentityOf record={record} />
        </>
      }
      back={{ href: `/people/${person}`, text: name }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {({ agents }) => (
          <Asking asked={inForce.asked} again={inForce.again}>
            {(now) =>
              found === undefined ? (
                <p className="notice">{words.sentence('away.noSuchSeries')}</p>
              ) : (
                <>
                  <Series
                    key={found.id}
                    person={person}
                    series={found}
                    others={all.filter((one) => one !== found && !one.isInError)}
                    rules={rulesOf(found.content.computedBy.presetVersion) ?? now}
                    rulesFor={(one) => rulesOf(one.content.computedBy.presetVersion) ?? now}
                    diary={chartDiaries(entries).find((one) => one.series.includes(found.id)) ?? null}
                    office={officeNear(chart, rulesOf, found)}
                    officeLeft={officeNotTaken(chart, rulesOf, found)}
                    agents={agents}
                  />
                  <div className="away-signed">
                    <BroughtIn series={found} agents={agents} />
                    <SeriesSignedFor series={found} person={person} agents={agents} />
                  </div>
                </>
              )
            }
          </Asking>
        )}
      </Asking>
    </Page>
  );
}

function seriesTitle(
  { content, from, until }: ChartedSeries,
  words: ReturnType<typeof useApp>['words'],
): string {
  // A date is not cut where the line ends.
  const whole = (date: string) => dayText(date, words).replaceAll(' ', '\u00a0');
  const days = { from: whole(from), until: whole(until) };
  return words.sentence(content.of === 'home' ? 'away.homeTitle' : 'away.recordingTitle', days);
}

type SeriesProps = {
  readonly person: string;
  readonly series: ChartedSeries;
  readonly others: readonly ChartedSeries[];
  /** The rules of the version that the series names. */
  readonly rules: InForce;
  readonly rulesFor: (series: ChartedSeries) => InForce;
  /** The diary that came back with it; null for none. */
  readonly diary: DiaryAsked | null;
  readonly office: OfficeNear | null;
  /** Why no office round is taken, where some are near. */
  readonly officeLeft: readonly OfficeLeftOut[];
  readonly agents: PersonRecord['agents'];
};

const NO_TRIAL: TrialOf = new Map();

function Series({ person, series, others, rules, rulesFor, diary, office, officeLeft, agents }: SeriesProps) {
  const { words } = useApp();
  const { content } = series;
  const mayDecide = useMay('clinician', 'supervisor');
  const maySign = useMay('clinician', 'supervisor', 'learner');
  // What a hand tries out: the means move with it, and nothing is kept before a reason is given.
  const [trial, setTrial] = useState<TrialOf>(NO_TRIAL);
  const [touched, setTouched] = useState<LastTried | null>(null);
  const [asksStiffness, setAsksStiffness] = useState(false);
  const byHand = withTrial(byHandOf(series.decided), trial);
  const value: SeriesValueKept = trial.size === 0 ? series.value : valueStandingOf(content, rules, byHand);
  const answering = { content, byHand, rules, office };
  const shown = { ...content, value };
  const irregular = content.readings.filter((one) => one.irregular === true).length;
  const isWide = useIsWide();
  // Everything that was to be acted on was told to somebody.
  const isClosed = series.open.length === 0 && series.closed.length > 0;
  const first = (
    <>
      {series.isInError ? <p className="notice">{words.sentence('away.inError')}</p> : null}
      {series.isPreliminary ? (
        <p className="notice">
          <strong>{words.sentence('away.preliminary')}</strong>
        </p>
      ) : null}
      <ActFirstIn
        content={{ ...content, value: { ...content.value, actNow: series.alerts } }}
        rows={content.refused}
        closed={isClosed ? <ClosedLines closed={series.closed} agents={agents} /> : null}
        isShort={!isWide}
      />
      {series.open.length === 0 ? null : (
        <details className="folded away-close not-printed" open>
          <summary>{words.sentence('away.tellAndClose')}</summary>
          <CloseActNow
            round={{ id: series.round }}
            person={person}
            open={series.open}
            saw={series.amended.story}
            above={series.alerts}
          />
        </details>
      )}
      {isClosed ? null : <ClosedLines closed={series.closed} agents={agents} />}
      {content.features === null ? null : <p className="small soft">{askedText(content.features, words)}</p>}
    </>
  );
  const last = (
    <>
      <OfficeNotTaken leftOut={officeLeft} />
      {irregular === 0 && isNothingLeftOut(shown) ? null : (
        <section aria-label={words.sentence('away.whatLeftOut')}>
          {irregular === 0 ? null : (
            <p className="notice">{words.sentence('series.irregularReadings', { readings: irregular })}</p>
          )}
          <LeftOut content={shown} isRefusedSaid={content.of === 'ambulatory'} />
        </section>
      )}
    </>
  );
  const parts = { content: shown, rules, first, last };
  return (
    <div className="brought">
      {content.of === 'home' ? (
        <HomeSeries {...parts} answered={answeredHome({ ...answering, diary })} />
      ) : (
        <RecordingSeries
          {...parts}
          answered={answeredRecording(answering, asksStiffness)}
          asksStiffness={asksStiffness}
          onAskStiffness={setAsksStiffness}
          beside={maySign ? <PutSleepRight person={person} series={series} rules={rules} /> : null}
        />
      )}
      <BesideSeries person={person} series={series} value={value} others={others} rulesFor={rulesFor} />
      <SaidOnPaper series={series} agents={agents} />
      <section className="brought-list" aria-label={words.sentence('away.allReadings')}>
        <h2>{words.sentence('away.allReadings')}</h2>
        {mayDecide ? <p className="soft not-printed">{words.sentence('away.byHandHint')}</p> : null}
        <Readings
          content={shown}
          decided={series.decided}
          trial={trial}
          mayDecide={mayDecide}
          onTrial={(tried, decision) => {
            setTouched(tried);
            setTrial((was) => {
              const next = new Map(was);
              if (was.has(tried.index)) next.delete(tried.index);
              else next.set(tried.index, decision);
              return next;
            });
          }}
          under={
            touched === null || trial.size === 0
              ? null
              : {
                  index: touched.index,
                  box: (
                    <Trial
                      person={person}
                      series={series}
                      value={value}
                      trial={trial}
                      last={touched}
                      onUndo={() => setTrial(NO_TRIAL)}
                    />
                  ),
                }
          }
        />
        <RefusedRows refused={content.refused} />
      </section>
      <div className="buttons not-printed">
        <button type="button" className="button button-quiet" onClick={() => window.print()}>
          {words.sentence('away.print')}
        </button>
        <SavePdf person={person} series={series.id} asksStiffness={asksStiffness} />
      </div>
    </div>
  );
}

/** Who brought it in and who countersigned it, and what paper must say of itself: before the list, which ends the last sheet. */
function SaidOnPaper({ series, agents }: Pick<SeriesProps, 'series' | 'agents'>) {
  const { words, clock } = useApp();
  return (
    <section className="printed-only away-said">
      <BroughtIn series={series} agents={agents} /> <CountersignedBy series={series} agents={agents} />{' '}
      <p className="small soft">
        {words.sentence('trend.printed', { text: stampText(clock.stamp(), words) })}{' '}
        {words.sentence('cautions.aid')}
      </p>
    </section>
  );
}

function withTrial({ rejected, restored }: ReturnType<typeof byHandOf>, trial: TrialOf) {
  const out = new Set(rejected);
  const back = new Set(restored);
  for (const [index, decision] of trial) {
    out.delete(index);
    back.delete(index);
    if (decision === 'out') out.add(index);
    if (decision === 'in') back.add(index);
  }
  return { rejected: out, restored: back };
}
