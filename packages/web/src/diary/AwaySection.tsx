import {
  type ChartedSeries,
  chartSeries,
  diariesOut,
  NOTHING_CHOSEN,
  type StoredEntry,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { dayText } from '../app/times.js';
import { begunIn, intakeForm } from '../away/begun.js';
import { besideHref } from '../away/besideHref.js';
import { waitingSeries } from '../away/waitingSeries.js';
import { OPEN_ACTS_NOW } from '../chart/OpenActsNow.js';
import { useRulesOf } from '../chart/useRulesOf.js';
import { useMay } from '../signIn/useAccess.js';
import { DiaryOut } from './DiaryOut.js';
import { HandOutDiary } from './HandOutDiary.js';
import '../styles/diary.css';

type AwayProps = {
  readonly person: string;
  readonly entries: readonly StoredEntry[];
  /** Whether nothing new may be taken: of somebody whose identity was erased. */
  readonly isClosed: boolean;
};

/** What was measured away from the clinic: series, what they come to and what is open, and the diaries that are out. */
export function AwaySection({ person, entries, isClosed }: AwayProps) {
  const { words } = useApp();
  const rulesOf = useRulesOf();
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const mayHand = useMay('clinician', 'supervisor', 'learner');
  const [isHanding, setHanding] = useState(false);
  const waiting = useKept(({ kept }) => kept.waiting);
  const waits = waitingSeries(waiting, person, entries);
  const series = chartSeries(entries, rulesOf, inForce);
  const begun = useKept(({ kept }) => begunIn(kept.forms[intakeForm(person)]));
  const beside = besideHref(person, series);
  const out = useMemo(() => diariesOut(entries), [entries]);
  return (
    <section className="away" aria-labelledby="away">
      <h2 id="away">{words.sentence('diary.section')}</h2>
      {series.length + waits.length === 0 ? <p className="soft">{words.sentence('diary.none')}</p> : null}
      <ul className="away-list">
        {series.map((one) => (
          <SeriesLine key={one.id} series={one} person={person} />
        ))}
        {waits.map((one) => (
          <WaitingLine key={one.id} entry={one} />
        ))}
        {begun === null ? null : (
          <li className="away-line">
            <Link href={`/people/${person}/away/new`}>
              {words.sentence('diary.begun', { readings: begun })}
            </Link>
          </li>
        )}
      </ul>
      {beside === null ? null : (
        <p className="not-printed">
          <Link href={beside}>{words.sentence('away.besideHere')}</Link>
        </p>
      )}
      {out.length === 0 ? null : (
        <div className="not-printed away-out">
          <h3>{words.sentence('diary.outTitle')}</h3>
          <ul className="away-list">
            {out.map((diary) => (
              <DiaryOut key={diary.entry} diary={diary} person={person} />
            ))}
          </ul>
        </div>
      )}
      {isClosed ? null : isHanding ? (
        <HandOutDiary person={person} onClose={() => setHanding(false)} />
      ) : (
        <div className="buttons">
          {mayHand ? (
            <Link href={`/people/${person}/away/new`} className="button">
              {words.sentence('diary.enter')}
            </Link>
          ) : null}
          {mayHand ? (
            <button type="button" className="button button-quiet" onClick={() => setHanding(true)}>
              {words.sentence('diary.handOut')}
            </button>
          ) : null}
        </div>
      )}
    </section>
  );
}

/** A series that was signed on this device and that the server has not taken yet. */
function WaitingLine({ entry }: { readonly entry: ReturnType<typeof waitingSeries>[number] }) {
  const { words } = useApp();
  const { content } = entry;
  const days = content.readings.map(({ at }) => at.at.slice(0, 'YYYY-MM-DD'.length)).sort();
  const [from, until] = [dayText(days[0] ?? '', words), dayText(days.at(-1) ?? '', words)];
  const { systolic, diastolic } = content.value.shown;
  return (
    <li className="away-line round-waiting">
      <p>
        {words.sentence(content.of === 'home' ? 'diary.home' : 'diary.ambulatory')},{' '}
        {from === until ? from : words.sentence('diary.days', { from, until })}
      </p>
      <p>
        {systolic === null || diastolic === null
          ? words.sentence('diary.noMean')
          : words.sentence('diary.mean', { systolic, diastolic })}
      </p>
      {content.value.actNow.map(({ condition, figures }) => (
        <p key={condition}>{words.detail({ code: condition, figures })}</p>
      ))}
      <p className="small standing">{words.sentence('chart.waitingRound')}</p>
    </li>
  );
}

function SeriesLine({ series, person }: { readonly series: ChartedSeries; readonly person: string }) {
  const { words } = useApp();
  const { content, value, open } = series;
  const [from, until] = [dayText(series.from, words), dayText(series.until, words)];
  const days = from === until ? from : words.sentence('diary.days', { from, until });
  return (
    <li className="away-line">
      <p>
        <Link href={`/people/${person}/away/${series.id}`}>
          {words.sentence(content.of === 'home' ? 'diary.home' : 'diary.ambulatory')}, {days}
        </Link>
      </p>
      {series.isInError ? (
        <p>{words.sentence('diary.inError')}</p>
      ) : (
        <>
          <p>{[...saidOf(series, words)].join(', ')}</p>
          {series.isPreliminary ? (
            <p>
              <strong>{words.sentence('chart.preliminary')}</strong>
            </p>
          ) : null}
          <p className="small soft">{[...besideOf(series, words)].join(', ')}</p>
          {open.length === 0 ? null : (
            <p>
              <a href={`#${OPEN_ACTS_NOW}`} className="person-alert">
                {words.sentence('people.actNow', { alerts: open.length })}
              </a>
            </p>
          )}
        </>
      )}
    </li>
  );

  /** What it comes to: the mean as shown beside the limits, its name, and whether that is enough. */
  function* saidOf({ content: { of } }: ChartedSeries, { sentence, title }: Words): Iterable<string> {
    const { systolic, diastolic } = value.shown;
    yield systolic === null || diastolic === null
      ? sentence('diary.noMean')
      : sentence('diary.mean', { systolic, diastolic });
    if (value.days !== null) yield sentence('diary.onDays', { days: value.days });
    // What readings show, never what the person has.
    if (value.category !== null && of === 'home') yield title('homeCategory', value.category);
    if (value.category !== null && of === 'ambulatory')
      yield sentence('diary.pattern', { text: title('ambulatoryPattern', value.category) });
    if (!value.valid) yield sentence('diary.tooFew');
  }

  /** How it was made: readings used and left out, rows that could not be read, by which rules. */
  function* besideOf({ decided }: ChartedSeries, { sentence, title }: Words): Iterable<string> {
    yield sentence('diary.used', { used: value.used });
    if (value.dropped.length > 0) yield sentence('diary.leftOut', { readings: value.dropped.length });
    if (content.refused.length > 0) yield sentence('diary.refused', { rows: content.refused.length });
    if (decided.length > 0) yield sentence('diary.byHand');
    const { preset } = content.computedBy;
    if (preset !== null) yield sentence('diary.byRules', { text: title(content.of, preset) });
  }
}
