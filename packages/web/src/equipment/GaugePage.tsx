import type { Agent, Gauge, GaugeLine } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { dayText, stampText } from '../app/times.js';
import { whoText } from '../chart/who.js';
import { Asking } from '../parts/Asking.js';
import { Flags } from '../parts/Flags.js';
import { Page } from '../parts/Page.js';
import { Refused } from '../parts/Refused.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { useInForce } from '../round/useRound.js';
import { CorrectGauge } from './CorrectGauge.js';
import { EarlierNames } from './EarlierNames.js';
import { EndThing } from './EndThing.js';
import { GaugeMark } from './EquipmentPage.js';
import { GaugeDoubts } from './GaugeDoubts.js';
import { checkText, logText, logTitle } from './gaugeText.js';
import { LogForm } from './LogForm.js';
import { useEquipment } from './useEquipment.js';
import { useEquipmentEntry } from './useEquipmentEntry.js';

/** One gauge: how it stands, which readings are in doubt, its log, and the next line of it. */
export function GaugePage({ gauge: id }: { readonly gauge: string }) {
  const { words } = useApp();
  const { asked, again, equipment } = useEquipment();
  const inForce = useInForce().asked.value;
  const gauge = equipment?.gauges.find((one) => one.id === id);
  return (
    <Page
      title={gauge?.named.name ?? words.sentence('equipment.gaugeTitle')}
      under={gauge === undefined ? null : <GaugeUnder gauge={gauge} />}
      back={{ href: '/equipment', text: words.sentence('equipment.title') }}
    >
      <Asking asked={asked} again={again}>
        {({ agents }) =>
          gauge === undefined ? (
            <p>{words.sentence('equipment.noSuchGauge')}</p>
          ) : (
            <>
              <GaugeDoubts gauge={gauge} />
              <Checks gauge={gauge} />
              {gauge.endedOn === null && inForce !== null ? (
                <section className="sign-form form" aria-labelledby="log">
                  <h2 id="log">{words.sentence('equipment.log')}</h2>
                  <LogForm gauge={gauge.id} inForce={inForce} />
                </section>
              ) : null}
              <History gauge={gauge} agents={agents} />
              <EarlierNames gauge={gauge} agents={agents} />
              <details className="more">
                <summary>{words.sentence('equipment.right')}</summary>
                <CorrectGauge gauge={gauge} />
              </details>
              {gauge.endedOn === null ? <EndThing equipment={gauge.id} name={gauge.named.name} /> : null}
              <WhoMeasures />
            </>
          )
        }
      </Asking>
    </Page>
  );
}

function GaugeUnder({ gauge }: { readonly gauge: Gauge }) {
  const { words } = useApp();
  const { type, room, serial, note } = gauge.named;
  return (
    <>
      <p className="soft">
        {[words.title('gaugeType', type), room, serial, note].filter(Boolean).join(' · ')}
      </p>
      <GaugeMark gauge={gauge} />
    </>
  );
}

function Checks({ gauge }: { readonly gauge: Gauge }) {
  const { words } = useApp();
  return (
    <section aria-labelledby="checks">
      <h2 id="checks">{words.sentence('equipment.checks')}</h2>
      <dl className="facts">
        {gauge.standing.checks.map((check) => (
          <div key={check.of}>
            <dt>{words.title('gaugeCheck', check.of)}</dt>
            <dd>{checkText(check, words)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

type HistoryProps = { readonly gauge: Gauge; readonly agents: readonly Agent[] };

function History({ gauge, agents }: HistoryProps) {
  const { words } = useApp();
  return (
    <section aria-labelledby="history">
      <h2 id="history">{words.sentence('equipment.logHistory')}</h2>
      {gauge.log.length === 0 ? <p className="soft">{words.sentence('equipment.logNone')}</p> : null}
      <ul className="fact-list">
        {gauge.log.toReversed().map((line) => (
          <Line key={line.entry.id} line={line} agents={agents} />
        ))}
      </ul>
    </section>
  );
}

function Line({ line, agents }: { readonly line: GaugeLine; readonly agents: readonly Agent[] }) {
  const { words } = useApp();
  const { entry, isInError } = line;
  const { content } = entry;
  const { log } = content.evidence;
  const title = `${logTitle(content, words)}, ${dayText(entry.measuredAt.at.slice(0, 10), words)}`;
  return (
    <li className="fact-row">
      <p className="fact-what">{isInError ? <del>{title}</del> : title}</p>
      <p>
        {isInError ? <strong>{words.sentence('equipment.inError')} · </strong> : null}
        {logText(content, words)}
      </p>
      {log.of === 'comparison' ? (
        <p className="small">
          {words.sentence('equipment.reference')}: {log.reference} ·{' '}
          {log.points.map(({ referenceMmHg, gaugeMmHg }) => `${referenceMmHg} → ${gaugeMmHg}`).join(', ')}
        </p>
      ) : null}
      {isInError ? null : <Flags flags={[...content.value.flags, ...content.value.why]} />}
      {content.note === null ? null : <p>{content.note}</p>}
      <p className="soft small">
        {words.sentence('facts.said', {
          who: whoText(entry, agents, words),
          at: stampText({ at: entry.writtenAt }, words),
        })}
      </p>
      {isInError ? null : <ErrorMark entry={entry.id} title={title} />}
    </li>
  );
}

/** A line that never happened like this: marked, still readable, and counting for nothing. */
function ErrorMark({ entry, title }: { readonly entry: string; readonly title: string }) {
  const { words } = useApp();
  const form = useForm(`gauge-error ${entry}`);
  const { send, refused } = useEquipmentEntry(form);
  const [isAsking, setAsking] = useState(false);
  if (!isAsking)
    return (
      <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
        {words.sentence('equipment.errorLine')}
        <span className="unseen">: {title}</span>
      </button>
    );
  const amends = { entry, reason: 'typing-slip' as const, text: null };
  return (
    <>
      <Refused text={refused} />
      <div className="buttons">
        <button
          type="button"
          className="button"
          onClick={() => void send({ kind: 'entered-in-error', content: { note: null }, amends })}
        >
          {words.sentence('equipment.errorNow')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => setAsking(false)}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </>
  );
}
