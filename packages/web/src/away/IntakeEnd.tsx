import type { PersonRecord } from '@evenfall/api';
import { EMERGENCY_FEATURES, type EmergencyFeature, SIDES } from '@evenfall/clinical';
import type { ReadSeries } from '@evenfall/exchange';
import {
  addedEvidence,
  chartDiaries,
  chartSeries,
  continuedSeries,
  type InForce,
  keptApart,
  LONGEST_NOTE,
  MOST_SERIES_READINGS,
  mayAddTo,
  newReadings,
  roundFactsOf,
  type SeriesContent,
  seriesAsked,
  seriesMade,
} from '@evenfall/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { dayText } from '../app/times.js';
import { useRulesOf } from '../chart/useRulesOf.js';
import { AskedFirst } from '../parts/AskedFirst.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { localDate } from '../ports/stampAt.js';
import { SignAs, useSigner } from '../round/SignAs.js';
import { entriesIn } from '../round/useRound.js';
import { ActFirstIn } from './ActFirst.js';
import { AsRead } from './AsRead.js';
import { apartText } from './apartText.js';
import type { Unfinished } from './askedOfRow.js';
import { devicesNamed } from './devicesNamed.js';
import { evidenceOf, linesOfLongNotes, linesOfUnreadArms } from './evidence.js';
import { flagText, linesText } from './flagText.js';
import { isGridDated, isNightAsked } from './intake.js';
import { LeftOut } from './LeftOut.js';
import { RefusedLines } from './RefusedLines.js';
import { ShortResult } from './ShortResult.js';
import { sleepTyped } from './sleepTyped.js';
import { TakenWith } from './TakenWith.js';
import type { IntakeState } from './useIntake.js';
import type { useSignSeries } from './useSignSeries.js';
import { waitingSeries } from './waitingSeries.js';
import { cellId } from './weekGrid.js';

type EndProps = {
  readonly person: string;
  readonly record: PersonRecord;
  readonly inForce: InForce;
  readonly isWithoutRules: boolean;
  readonly state: IntakeState;
  readonly signing: ReturnType<typeof useSignSeries>;
};

/** What was read comes to this, dangerous readings first; then it is signed. */
export function IntakeEnd(props: EndProps) {
  const { words } = useApp();
  const { form, intake } = props.state;
  const { read, way } = intake;
  if (read === null) return null;
  if (read.questions.length > 0) return <p className="soft">{words.sentence('away.afterQuestions')}</p>;
  if (way === 'typed' && !isGridDated(form.text)) return null;
  return <ComesTo {...props} read={read} />;
}

const JOINS = ['add', 'apart'] as const;
const FEATURES_ASKED = ['notAsked', 'none', 'some'] as const;

function ComesTo({
  person,
  record,
  inForce,
  isWithoutRules,
  state,
  signing,
  read,
}: EndProps & { readonly read: ReadSeries }) {
  const app = useApp();
  const { words, clock, program } = app;
  const { form, intake, unfinished } = state;
  // What waits on this device stands already, so that nothing is signed twice while there is no network.
  const waiting = useKept(({ kept }) => kept.waiting);
  const charted = entriesIn(record);
  const entries = [...charted, ...waitingSeries(waiting, person, charted)];
  const rulesOf = useRulesOf();
  const [, go] = useLocation();
  const [isAsked, setAsked] = useState(false);
  const [pressedAt, setPressedAt] = useState<Unfinished | null>(null);
  const signer = useSigner();
  const { agent, role } = signer;
  const { sign, refused } = signing;

  const now = clock.stamp();
  const today = localDate(now);
  const facts = roundFactsOf(record.identity, entries, today);
  const sleep = sleepTyped(form.text);
  const scheduled = /^[1-9]\d{0,3}$/.test(form.text('scheduled').trim())
    ? Number(form.text('scheduled'))
    : null;
  const isScheduledWrong = form.text('scheduled').trim() !== '' && scheduled === null;
  const evidence = evidenceOf({ ...intake, read }, form.text, {
    diary: intake.of === 'home' && form.text('diary') !== '' ? form.text('diary') : null,
    status: signer.isPreliminary ? 'preliminary' : 'final',
    asleep: intake.of === 'ambulatory' ? sleep.asleep : null,
    nap: intake.of === 'ambulatory' ? sleep.nap : null,
    scheduled: intake.of === 'ambulatory' ? scheduled : null,
    arm: SIDES.find((one) => one === form.text('arm')) ?? null,
    device: form.text('device').trim() === '' ? null : form.text('device').trim(),
    treated: form.text('treated') === 'yes' ? true : form.text('treated') === 'no' ? false : null,
    note: form.text('note').trim() === '' ? null : form.text('note').trim(),
    features: featuresIn(form.text),
    facts,
  });
  const before = chartSeries(entries, rulesOf, inForce).filter(({ isInError }) => !isInError);
  const { fresh, already } = newReadings(
    before.map(({ id, content }) => ({ series: id, readings: content.readings })),
    evidence.readings,
  );
  const more = { ...evidence, readings: [...fresh] } as typeof evidence;
  const thatMay = (wanted: ReturnType<typeof mayAddTo>) =>
    before.filter((one) => mayAddTo(one, agent, signer.isPreliminary) === wanted);
  const continued = continuedSeries(thatMay('yes'), more, inForce);
  const waits = continued === null ? continuedSeries(thatMay('waits'), more, inForce) : null;
  const apart = continued === null && waits === null ? keptApart(before, more, inForce) : null;
  const joins = continued === null ? null : (JOINS.find((one) => one === form.text('joins')) ?? null);
  const joined = joins === 'add' ? continued : null;
  const content = seriesMade(joined === null ? more : addedEvidence(joined.content, more), inForce, program);
  // The notes of both are kept as one.
  const noteOver = Math.max(0, (content.note?.length ?? 0) - LONGEST_NOTE);
  const longNotes = linesOfLongNotes(read);
  const unreadArms = linesOfUnreadArms(read);
  // A day that has begun where the person was may be tomorrow here: only what is later by both is still to come.
  const toCome = fresh.find(({ at }) => localDate(at) > today && Date.parse(at.at) > Date.parse(now.at));
  const cannot = [
    ...(fresh.length === 0
      ? [words.sentence(already.length > 0 ? 'away.nothingNew' : 'away.noReading')]
      : []),
    ...(fresh.length > MOST_SERIES_READINGS
      ? [words.sentence('away.tooMany', { most: MOST_SERIES_READINGS })]
      : []),
    ...(continued !== null && joins === null ? [words.sentence('away.sayJoins')] : []),
    ...(toCome === undefined
      ? []
      : [words.sentence('away.stillToCome', { text: dayText(localDate(toCome.at), words) })]),
    ...(content.value.actNow.length > 0 && form.text('features') === ''
      ? [words.sentence('review.unaskedFeatures')]
      : []),
    ...(intake.of === 'ambulatory' && sleep.wrong !== null ? [words.sentence(`away.${sleep.wrong}`)] : []),
    ...(noteOver > 0 ? [words.sentence('away.noteTooLong')] : []),
    ...(isNightAsked(evidence, form.text) ? [words.sentence('away.sayAsleep')] : []),
    ...(isScheduledWrong ? [words.sentence('away.scheduledWrong')] : []),
    ...(record.identity === null ? [words.sentence('away.nobodyKnown')] : []),
    ...(isWithoutRules ? [words.sentence('away.withoutRules')] : []),
    ...(agent === null ? [words.sentence('review.needsAgent')] : []),
  ];
  const submit = async () => {
    setAsked(true);
    // A number or a row that is still being typed is finished first; what is left so is a row that was refused, and seen.
    setPressedAt(unfinished);
    if (unfinished !== null) return;
    if (cannot.length > 0 || agent === null) return;
    const { id } = form.entry();
    const [standing] = joined?.amended.current ?? [];
    const text = words.sentence('away.moreDays');
    const amends = { entry: standing?.id ?? '', reason: 'other' as const, text };
    const added = joined === null ? null : { round: joined.round, amends };
    const as = await sign({ agent, role, content, joined: added });
    if (as === 'taken') go(`/people/${person}/away/${joined?.id ?? id}`, { replace: true });
    // Where nobody can be asked, the chart says that it waits.
    if (as === 'waiting') go(`/people/${person}`, { replace: true });
  };
  return (
    <>
      <ActFirstIn content={content} rows={read.refused} />
      <AsRead state={state} readings={evidence.readings} />
      <RefusedLines state={state} />
      <section className="away-comes-to" aria-label={words.sentence('away.comesTo')}>
        <h2>{words.sentence('away.comesTo')}</h2>
        {already.length === 0 ? null : (
          <p className="notice">{words.sentence('away.already', { readings: already.length })}</p>
        )}
        {waits === null ? null : (
          <p className="notice">
            {words.sentence('away.joinsNothing', {
              from: dayText(waits.from, words),
              until: dayText(waits.until, words),
              readings: fresh.length,
            })}
          </p>
        )}
        {apart === null ? null : (
          <p className="notice" role="status">
            {apartText(apart, fresh.length, words)}
          </p>
        )}
        {continued === null ? null : (
          <div id="away-joins" tabIndex={-1}>
            <Choices
              legend={words.sentence('away.continues', {
                from: dayText(continued.from, words),
                until: dayText(continued.until, words),
                readings: fresh.length,
              })}
              choices={JOINS.map((id) => ({ id, text: words.sentence(`away.joins-${id}`) }))}
              chosen={joins}
              onChoose={(id) => form.set('joins', id)}
              isListed
            />
          </div>
        )}
        {fresh.length === 0 ? (
          <p>{words.sentence(already.length > 0 ? 'away.nothingNew' : 'away.noReading')}</p>
        ) : (
          <>
            {isNightAsked(evidence, form.text) ? (
              <p className="notice">{words.sentence('away.nightByClockYet')}</p>
            ) : null}
            <ShortResult
              content={content}
              rules={inForce}
              asked={seriesAsked(
                content,
                inForce,
                chartDiaries(entries).find(({ entry }) => entry === (content.diary ?? '')) ?? null,
              )}
            />
            <LeftOut content={content} isRefusedSaid />
            <ul className="flags">
              {read.flags.map((flag) => (
                <li key={flag.code}>{flagText(flag, words)}</li>
              ))}
              {unreadArms.length === 0 ? null : (
                <li>
                  {words.sentence('away.armsUnread', {
                    lines: linesText(unreadArms),
                    count: unreadArms.length,
                  })}
                </li>
              )}
              {longNotes.length === 0 ? null : (
                <li>
                  {words.sentence('away.notesCut', {
                    lines: linesText(longNotes),
                    count: longNotes.length,
                    most: LONGEST_NOTE,
                  })}
                </li>
              )}
            </ul>
          </>
        )}
      </section>
      <section className="form sign-form" aria-label={words.sentence('away.before')}>
        <h2>{words.sentence('away.before')}</h2>
        <TakenWith state={state} devices={devicesNamed(before)} />
        <Choices
          legend={words.sentence('away.treated')}
          choices={(['yes', 'no', 'unknown'] as const).map((id) => ({
            id,
            text: words.sentence(`away.treated-${id}`),
          }))}
          chosen={(['yes', 'no', 'unknown'] as const).find((one) => one === form.text('treated')) ?? null}
          onChoose={(id) => form.set('treated', id)}
        />
        <div id="away-features" tabIndex={-1}>
          <Features content={content} state={state} />
        </div>
        <Field
          id="away-note"
          label={words.sentence('away.note')}
          wrong={
            noteOver === 0 ? null : words.sentence('away.noteOver', { over: noteOver, most: LONGEST_NOTE })
          }
        >
          {(control) => (
            <textarea
              {...control}
              rows={2}
              maxLength={LONGEST_NOTE}
              value={form.text('note')}
              onInput={({ currentTarget }) => form.set('note', currentTarget.value)}
            />
          )}
        </Field>
        <SignAs signer={signer} />
        {isAsked && cannot.length > 0 ? (
          <div className="notice" role="alert">
            <p>{words.sentence('review.cannotYet')}</p>
            <ul className="flags">
              {cannot.map((text) => (
                <li key={text}>
                  <ToQuestion at={QUESTIONS.find(({ says }) => words.sentence(says) === text)?.at ?? null}>
                    {text}
                  </ToQuestion>
                </li>
              ))}
            </ul>
          </div>
        ) : null}
        {unfinished !== null && isSameUnfinished(unfinished, pressedAt) ? (
          <NotFinished {...unfinished} />
        ) : null}
        <Refused text={refused} />
        <button
          type="button"
          className="button button-first button-large"
          // The focus stays where something is half typed: left, its row would be refused and this button move from under the press.
          onMouseDown={(event) => {
            if (unfinished !== null) event.preventDefault();
          }}
          onClick={() => void submit()}
        >
          {words.sentence('away.sign')}
        </button>
        <p className="soft small">{words.sentence('away.signHint')}</p>
        <StartAgain onSure={() => form.done()} />
      </section>
    </>
  );
}

/** Questions of this page that can stand open, and where they are asked. */
const QUESTIONS = [
  { says: 'away.sayJoins', at: 'away-joins' },
  { says: 'away.sayAsleep', at: 'away-asleep' },
  { says: 'review.unaskedFeatures', at: 'away-features' },
  { says: 'away.noteTooLong', at: 'away-note' },
] as const;

function isSameUnfinished(one: Unfinished, other: Unfinished | null): boolean {
  return (
    other !== null && one.text === other.text && cellId(one.row, one.cell) === cellId(other.row, other.cell)
  );
}

/** Beside the button that signs: a number or a row is half typed, and where. */
function NotFinished({ of, row, cell, text }: Unfinished) {
  const { words } = useApp();
  const place = words.sentence('away.gridRow', {
    day: row.day,
    part: words.sentence(`away.${row.part}`),
    reading: row.reading,
  });
  const what = words.sentence(of === 'row' ? 'away.notFinishedRow' : 'away.notFinished', { text });
  return (
    <p className="notice" role="alert">
      <ToQuestion at={cellId(row, cell)}>{`${place}: ${what}`}</ToQuestion>
    </p>
  );
}

/** Takes away everything that was typed or brought in, once it was asked. */
function StartAgain({ onSure }: { readonly onSure: () => void }) {
  const { words } = useApp();
  return (
    <AskedFirst
      does={words.sentence('away.startAgain')}
      asks={words.sentence('away.startAgainSure')}
      now={words.sentence('review.discardNow')}
      onSure={onSure}
    />
  );
}

/** Leads to the place at which something is asked; null for a place of its own. */
function ToQuestion({ at, children }: { readonly at: string | null; readonly children: string }) {
  if (at === null) return children;
  return (
    <a
      href={`#${at}`}
      // What leaves a cell would move this from under the press.
      onMouseDown={(event) => event.preventDefault()}
      onClick={(event) => {
        event.preventDefault();
        const asked = document.getElementById(at);
        asked?.scrollIntoView({ block: 'center' });
        asked?.focus();
      }}
    >
      {children}
    </a>
  );
}

/** What the person says of danger signs; asked wherever a reading is to be acted on. */
function Features({
  content,
  state: { form },
}: {
  readonly content: SeriesContent;
  readonly state: IntakeState;
}) {
  const { words } = useApp();
  if (content.value.actNow.length === 0 && form.text('features') === '') return null;
  const said = FEATURES_ASKED.find((one) => one === form.text('features')) ?? null;
  return (
    <>
      <Choices
        legend={words.sentence('away.features')}
        choices={FEATURES_ASKED.map((id) => ({ id, text: words.sentence(`away.features-${id}`) }))}
        chosen={said}
        onChoose={(id) => form.set('features', id)}
        isListed
      />
      {said === 'some'
        ? EMERGENCY_FEATURES.map((feature) => (
            <label key={feature} className="tick">
              <input
                type="checkbox"
                checked={form.text(`feature ${feature}`) !== ''}
                onChange={({ target }) => form.set(`feature ${feature}`, target.checked ? 'yes' : '')}
              />
              <span>{words.title('feature', feature)}</span>
            </label>
          ))
        : null}
    </>
  );
}

/** Null where nobody was asked; none of them is an empty list. */
function featuresIn(text: (field: string) => string): EmergencyFeature[] | null {
  const said = text('features');
  if (said === 'none') return [];
  if (said !== 'some') return null;
  const found = EMERGENCY_FEATURES.filter((feature) => text(`feature ${feature}`) !== '');
  return found.length === 0 ? null : found;
}
