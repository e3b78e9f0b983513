import type { PersonRow } from '@evenfall/api';
import { DEFAULT_DEFLATION_RULES, NOTHING_BESIDE, numbersText, shorthandOf } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { dayOfYearText, shortStampText } from '../app/times.js';
import { begunIn, intakeForm } from '../away/begun.js';
import { DiariesDue } from '../diary/DiariesDue.js';
import { Asking } from '../parts/Asking.js';
import { Field } from '../parts/Field.js';
import { secondIdentifiers } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { localDate } from '../ports/stampAt.js';
import type { BegunAlarm } from '../round/begunAlarm.js';
import { loadPeople } from '../server/load.js';
import { DeviceNotes } from '../shell/DeviceNotes.js';
import { OthersWaiting } from '../signIn/OthersWaiting.js';
import { useMay } from '../signIn/useAccess.js';
import { actNowText } from './actNowText.js';
import { begunText } from './begunText.js';
import { DueList } from './DueList.js';
import { dueText } from './dueText.js';
import { inOrder } from './inOrder.js';
import { KeptPeople } from './KeptPeople.js';
import { matching } from './matching.js';
import { type BegunAlarms, useBegunAlarms } from './useBegunAlarms.js';
import { useTick } from './useTick.js';
import { WhoMeasures } from './WhoMeasures.js';

/** More people than this and the list gets a field to find one. */
const FIND_FROM = 8;

/** How often the list is put in order anew, and how often it is asked for, ms: what is late moves up by itself. */
const ORDER_EVERY_MS = 10_000;
const ASK_EVERY_MS = 60_000;

/** The start page: who is here, their newest values, and who is measuring. */
export function PeoplePage() {
  const app = useApp();
  const { words, clock } = app;
  const people = useKept(({ known }) => known.people);
  const [wanted, setWanted] = useState('');
  const waiting = useKept(({ kept }) => kept.waiting.length);
  useTick(ORDER_EVERY_MS);
  const begun = useBegunAlarms();
  // What was signed without network and has gone out ends what is due.
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked for again when one went out
  useEffect(() => void loadPeople(app), [app, waiting]);
  useEffect(() => {
    const load = () => void (document.visibilityState === 'visible' && loadPeople(app));
    // A page that was out of sight may be hours old: what others charted, or what is late by now, is asked for again.
    document.addEventListener('visibilitychange', load);
    const timer = window.setInterval(load, ASK_EVERY_MS);
    return () => {
      document.removeEventListener('visibilitychange', load);
      window.clearInterval(timer);
    };
  }, [app]);

  return (
    <Page title={words.sentence('people.title')}>
      <WhoMeasures isStart />
      <OthersWaiting />
      {people.is === 'unreachable' && people.value !== null ? (
        <p className="soft">{words.sentence('people.mayBeOld')}</p>
      ) : null}
      <Asking asked={people} again={() => loadPeople(app)}>
        {(rows) => (
          <section className="people" aria-label={words.sentence('people.title')}>
            <DueList rows={rows} begun={begun} />
            <DiariesDue rows={rows} />
            {rows.length >= FIND_FROM ? (
              <Field label={words.sentence('people.find')}>
                {(control) => (
                  <input
                    {...control}
                    type="search"
                    autoComplete="off"
                    value={wanted}
                    onChange={(event) => setWanted(event.target.value)}
                  />
                )}
              </Field>
            ) : null}
            <ToCountersignLink rows={rows} />
            <PeopleList
              rows={inOrder(matching(rows, wanted), clock.stamp(), begun)}
              begun={begun}
              isEmpty={rows.length === 0}
            />
            <Link href="/people/new" className={rows.length === 0 ? 'button button-first' : 'button'}>
              {words.sentence('people.add')}
            </Link>
            <Link href="/protocol" className="button button-quiet">
              {words.sentence('protocol.link')}
            </Link>
            <Link href="/equipment" className="button button-quiet">
              {words.sentence('equipment.link')}
            </Link>
            <Link href="/class" className="button button-quiet">
              {words.sentence('class.link')}
            </Link>
            <PracticeLink />
            <MarkLink />
            <Link href="/settings" className="button button-quiet">
              {words.sentence('settings.title')}
            </Link>
            <DeviceNotes />
          </section>
        )}
      </Asking>
      {people.is === 'unreachable' && people.value === null ? <KeptPeople /> : null}
    </Page>
  );
}

/** Where somebody practises on simulated people; for whoever takes signs. */
function PracticeLink() {
  const { words } = useApp();
  if (!useMay('clinician', 'supervisor', 'learner')) return null;
  return (
    <Link href="/practice" className="button button-quiet">
      {words.sentence('practice.link')}
    </Link>
  );
}

/** Where somebody marks for a run on another device; for whoever takes signs. */
function MarkLink() {
  const { words } = useApp();
  if (!useMay('clinician', 'supervisor', 'learner')) return null;
  return (
    <Link href="/mark" className="button button-quiet">
      {words.sentence('second.link')}
    </Link>
  );
}

/** Where every learner's round that waits for a supervisor stands with its values. */
function ToCountersignLink({ rows }: { readonly rows: readonly PersonRow[] }) {
  const { words } = useApp();
  const rounds = rows.reduce((sum, { latest }) => sum + latest.toCountersign, 0);
  if (rounds === 0) return null;
  return (
    <Link href="/countersign" className="button to-countersign-link">
      {words.sentence('people.toCountersign', { rounds })}
    </Link>
  );
}

type ListProps = {
  readonly rows: readonly PersonRow[];
  readonly begun: BegunAlarms;
  readonly isEmpty: boolean;
};

function PeopleList({ rows, begun, isEmpty }: ListProps) {
  const { words } = useApp();
  if (rows.length > 0) {
    return (
      <ul className="people-list">
        {rows.map((row) => (
          <li key={row.id} className={row.identity === null ? undefined : 'has-quick'}>
            <PersonLine row={row} begun={begun.get(row.id)} />
            <QuickLink row={row} />
          </li>
        ))}
      </ul>
    );
  }
  if (!isEmpty) return <p role="status">{words.sentence('people.noneFound')}</p>;
  return (
    <p>
      {words.sentence('people.none')} {words.sentence('people.noneHint')}
    </p>
  );
}

/** Straight to the keypad, for a set that was just taken. Nothing can be taken of somebody whose identity was erased. */
function QuickLink({ row: { id, identity } }: { readonly row: PersonRow }) {
  const { words } = useApp();
  if (identity === null) return null;
  return (
    <Link
      href={`/people/${id}/quick`}
      className="button button-quiet quick-link"
      aria-describedby={`name-${id}`}
    >
      {words.sentence('quick.link')}
    </Link>
  );
}

/** That no round is in the chart; and until when there are readings from away, where there are. */
function nothingText({ awayUntil }: PersonRow['latest'], words: Words): string {
  return awayUntil === null
    ? words.sentence('people.nothingYet')
    : words.sentence('people.onlyAway', { text: dayOfYearText(awayUntil, words) });
}

type LineProps = {
  readonly row: PersonRow;
  readonly base?: string;
  /** What a round that was begun here and not signed asks for at once. */
  readonly begun?: BegunAlarm | undefined;
};

/** One person: who, what is to be done about them, and their newest values. In a class they go by their pseudonym. */
export function PersonLine({ row, base = '', begun: alarm }: LineProps) {
  const { words } = useApp();
  const hasDraft = useKept(({ kept }) => kept.drafts[row.id] !== undefined);
  const begun = useKept(({ kept }) => begunIn(kept.forms[intakeForm(row.id)]));
  const isWaiting = useKept(({ kept }) =>
    kept.waiting.some(({ draft, person }) => draft !== null && person === row.id),
  );
  const { identity, classIdentity, latest } = row;
  const name = classIdentity?.pseudonym ?? identity?.name ?? words.sentence('people.erased');
  return (
    <Link href={`${base}/people/${row.id}`} className="person-line">
      <span className="person-who">
        <span className="person-name" id={`name-${row.id}`}>
          {name}
        </span>
        {alarm === undefined ? null : <strong className="person-alert">{begunText(alarm, words)}</strong>}
        <DutyMarks latest={latest} />
        {identity === null ? null : (
          <span className="soft small identity-parts">
            {secondIdentifiers(identity, words).map((part) => (
              <span key={part}>{part}</span>
            ))}
          </span>
        )}
        {begun === null ? null : <PersonMark text={words.sentence('people.diaryBegun')} />}
        {hasDraft ? <PersonMark text={words.sentence('people.draft')} /> : null}
        {isWaiting ? <PersonMark text={words.sentence('people.waiting')} /> : null}
        <LatestMark label={words.sentence('app.pulse')} latest={latest.pulse} />
        <LatestMark label={words.sentence('app.breaths')} latest={latest.breaths} />
        <LatestMark label={words.sentence('app.pressure')} latest={latest.pressure} />
      </span>
      {latest.pulse === null && latest.breaths === null && latest.pressure === null ? (
        <span className="soft small person-values person-values-none">{nothingText(latest, words)}</span>
      ) : (
        <span className="person-values">
          <LatestText sign="pulse" latest={latest.pulse} />
          <LatestText sign="breaths" latest={latest.breaths} />
          <LatestPressureText latest={latest.pressure} />
        </span>
      )}
    </Link>
  );
}

function PersonMark({ text }: { readonly text: string }) {
  return <span className="small person-mark">{text}</span>;
}

/** What must be known of the newest value besides its number. */
function LatestMark({ label, latest }: MarkProps) {
  const { words } = useApp();
  if (latest === null || !(latest.contested || latest.byHand || latest.preliminary)) return null;
  const key = latest.contested ? 'people.contested' : latest.byHand ? 'people.byHand' : 'people.preliminary';
  const text = words.sentence(key);
  return <span className="small soft">{`${label}: ${text}`}</span>;
}

type LatestProps = { readonly sign: 'pulse' | 'breaths'; readonly latest: PersonRow['latest']['pulse'] };
type MarkProps = {
  readonly label: string;
  readonly latest: Pick<
    NonNullable<PersonRow['latest']['pulse']>,
    'contested' | 'byHand' | 'preliminary'
  > | null;
};

function LatestText({ sign, latest }: LatestProps) {
  const { words, clock } = useApp();
  if (latest === null) return null;
  const rate = words.say.anyOf([...latest.others, latest.perMinute].map(words.say.rate));
  return (
    <span className={`person-value person-value-${sign}`}>
      <span className="small soft">{words.sentence(`app.${sign}`)}</span>
      <span className="person-rate">{rate}</span>
      <span className="small soft">{shortStampText(latest.measuredAt, localDate(clock.stamp()), words)}</span>
    </span>
  );
}

type Numbers = NonNullable<PersonRow['latest']['pressure']>['others'][number];

function LatestPressureText({ latest }: { readonly latest: PersonRow['latest']['pressure'] }) {
  const { words, clock } = useApp();
  if (latest === null) return null;
  // A list that was kept on this device by an older program has no posture.
  const { measuredAt, posture = null } = latest;
  const textOf = (numbers: Numbers) => {
    const method = numbers.diastolic === null ? ('palpation' as const) : ('auscultation' as const);
    return numbersText(
      shorthandOf({ ...numbers, method, gap: null }, NOTHING_BESIDE, DEFAULT_DEFLATION_RULES),
    );
  };
  const { average } = latest;
  const pressureText =
    average === null
      ? words.say.anyOf([...latest.others, latest].map(textOf))
      : `${average.shown.systolic ?? words.say.number(average.systolic)}/${average.shown.diastolic ?? words.say.number(average.diastolic)}`;
  return (
    <span className="person-value person-value-pressure">
      <span className="small soft">{words.sentence('app.pressure')}</span>
      <span className="person-rate">{pressureText}</span>
      {average === null ? null : (
        <span className="small soft">{words.sentence('people.meanOf', { readings: average.readings })}</span>
      )}
      {posture === null || posture === 'sit' ? null : (
        <span className="small">{words.sentence(`pressure.${posture}Posture`)}</span>
      )}
      <span className="small soft">{shortStampText(measuredAt, localDate(clock.stamp()), words)}</span>
    </span>
  );
}

/** What somebody still has to do: an act-now first. A page that is closed cannot ring. */
function DutyMarks({ latest }: { readonly latest: PersonRow['latest'] }) {
  const { words, clock } = useApp();
  const { actNow, actNowFirst, recheck, toCountersign } = latest;
  return (
    <>
      {actNow === 0 ? null : (
        <strong className="person-alert">{actNowText(actNow, actNowFirst, words)}</strong>
      )}
      {recheck === null ? null : <PersonMark text={dueText(recheck, clock.stamp(), words)} />}
      {toCountersign === 0 ? null : (
        <span className="small">{words.sentence('people.toCountersign', { rounds: toCountersign })}</span>
      )}
    </>
  );
}
