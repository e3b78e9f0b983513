import { PREPARATION_TIMES } from '@evenfall/clinical';
import {
  type ChartedDiary,
  chartDiaries,
  type Identity,
  type InForce,
  NOTHING_CHOSEN,
} from '@evenfall/record';
import {
  DIARY_TEXTS,
  type DiaryLimits,
  type DiaryText,
  diaryBirth,
  diaryDate,
  diaryDay,
  diaryYear,
} from '@evenfall/words';
import { Fragment } from 'react';
import { useApp, useKept } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { Page } from '../parts/Page.js';
import { entriesIn, useRecord } from '../round/useRound.js';
import '../styles/diary.css';

/** A diary to print and hand over: how to measure and when to get help on one side, the readings on the other. */
export function DiaryPage({ person, diary }: { readonly person: string; readonly diary: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  return (
    <Page
      title={words.sentence('diary.pageTitle')}
      back={{ href: `/people/${person}`, text: words.sentence('chart.title') }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {(record) => {
          const found = chartDiaries(entriesIn(record)).find(({ entry }) => entry === diary);
          if (found === undefined) return <p>{words.sentence('diary.noSuchDiary')}</p>;
          return (
            <>
              <div className="buttons not-printed">
                <button type="button" className="button button-first" onClick={() => window.print()}>
                  {words.sentence('diary.printNow')}
                </button>
              </div>
              <Diary diary={found} identity={record.identity} inForce={inForce} />
            </>
          );
        }}
      </Asking>
    </Page>
  );
}

type DiaryProps = {
  readonly diary: ChartedDiary;
  /** Whose it is; null once that was erased. */
  readonly identity: Identity | null;
  readonly inForce: InForce;
};

function Diary({ diary, identity, inForce }: DiaryProps) {
  const { words } = useApp();
  const text: DiaryText = DIARY_TEXTS[diary.language];
  const { rest, clear } = PREPARATION_TIMES;
  const limits = limitsOf(inForce);
  return (
    <article className="diary" lang={text.locale.slice(0, 2)} dir={text.direction}>
      <section className="diary-how" aria-labelledby="diary-title">
        <h2 id="diary-title">{text.title}</h2>
        <p className="diary-lead">
          {identity === null ? null : <bdi>{text.whose(identity.name)}. </bdi>}
          {text.plan(diary.days, diary.readingsInSitting)} {text.bringBack(diaryDate(diary.dueOn, text))}
        </p>
        <h3>{text.howTitle}</h3>
        <ol className="diary-steps">
          <li>{text.before(clear.value)}</li>
          <li>{text.rest(rest.value)}</li>
          <li>{text.cuff}</li>
          <li>
            {text.arm} <span className="diary-box" aria-hidden="true" /> {text.left}{' '}
            <span className="diary-box" aria-hidden="true" /> {text.right}
          </li>
          <li>{text.quiet}</li>
          <li>{text.times(diary.readingsInSitting)}</li>
          <li>{text.write}</li>
        </ol>
        <div className="diary-danger">
          <h3>{text.dangerTitle}</h3>
          <p>
            <strong>{text.severe(limits)}</strong> {text.again(rest.value)}
          </p>
          <p>{text.symptoms}</p>
          <p>{text.pregnant(limits)}</p>
          <p>{text.ownAdvice}</p>
          <p className="diary-phones">
            <span>{text.clinicPhone}</span> <span>{text.emergencyPhone}</span>
          </p>
        </div>
        {text.isReviewed ? null : <p className="diary-small">{text.notReviewed}</p>}
      </section>
      <p className="small soft not-printed diary-scrolls" lang={words.say.locale} dir="ltr">
        {words.sentence('away.figureScrolls')}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: on a small screen the table scrolls, by keyboard too */}
      <section className="diary-readings" aria-label={text.table} tabIndex={0}>
        <ReadingsTable diary={diary} identity={identity} text={text} />
      </section>
    </article>
  );
}

const NUMBERS = ['upper', 'lower', 'pulse'] as const;

type TableProps = {
  readonly diary: ChartedDiary;
  /** Whose it is: the sides of two sheets may part. */
  readonly identity: Identity | null;
  readonly text: DiaryText;
};

function ReadingsTable({ diary, identity, text }: TableProps) {
  const readings = Array.from({ length: diary.readingsInSitting }, (_, at) => at + 1);
  return (
    <table className={diary.days > 7 ? 'diary-table diary-table-long' : 'diary-table'}>
      <caption>
        {text.table}
        {identity === null ? null : <Whose identity={identity} text={text} />}
      </caption>
      <thead>
        <tr>
          <th rowSpan={2} colSpan={2} scope="col">
            {text.day}
          </th>
          <th rowSpan={2} scope="col">
            {text.time}
          </th>
          {readings.map((reading) => (
            <th key={reading} colSpan={NUMBERS.length} scope="colgroup">
              {text.reading(reading)}
            </th>
          ))}
          <th rowSpan={2} scope="col">
            {text.notes}
          </th>
        </tr>
        <tr>
          {readings.flatMap((reading) =>
            NUMBERS.map((number) => (
              <th key={`${reading} ${number}`} scope="col">
                {text[number]}
              </th>
            )),
          )}
        </tr>
      </thead>
      {daysFrom(diary.from, diary.days).map((day) => (
        <tbody key={day}>
          {(['morning', 'evening'] as const).map((part) => (
            <tr key={part}>
              {part === 'morning' ? (
                <th rowSpan={2} scope="rowgroup">
                  <span className="diary-day">{diaryDay(day, text)}</span>{' '}
                  <span className="diary-year">{diaryYear(day, text)}</span>
                </th>
              ) : null}
              <th scope="row">{text[part]}</th>
              <td />
              {readings.map((reading) => (
                <Fragment key={reading}>
                  {NUMBERS.map((number) => (
                    <td key={number} className={number === 'upper' ? 'diary-first' : undefined} />
                  ))}
                </Fragment>
              ))}
              <td />
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** Whose diary it is, so that two of one name are told apart, and which device it was measured with: a line where that is not known. */
function Whose({
  identity: { name, birthDate, number },
  text,
}: {
  readonly identity: Identity;
  readonly text: DiaryText;
}) {
  return (
    <span className="diary-whose">
      <bdi>{text.whose(name)}</bdi>
      {birthDate === null && number !== null ? null : (
        <Line label={text.born} value={birthDate === null ? null : diaryBirth(birthDate, text)} />
      )}
      {number === null ? null : <Line label={text.number} value={number} />}
      <Line label={text.device} value={null} />
    </span>
  );
}

function Line({ label, value }: { readonly label: string; readonly value: string | null }) {
  return (
    <span className={value === null ? 'diary-blank' : undefined}>
      {label} {value === null ? null : <bdi>{value}</bdi>}
    </span>
  );
}

/** The limits of the place. Whoever is alone at home acts at the number itself, whichever side of it the protocol says. */
function limitsOf({ roundRules: { actNow } }: InForce): DiaryLimits {
  return {
    systolic: Math.floor(actNow.severeSystolic.limit),
    diastolic: Math.floor(actNow.severeDiastolic.limit),
    pregnantSystolic: Math.floor(actNow.pregnancySystolic),
    pregnantDiastolic: Math.floor(actNow.pregnancyDiastolic),
    weeksAfterBirth: actNow.weeksAfterBirth,
  };
}

/** So many local days (`YYYY-MM-DD`) from the first. */
function daysFrom(first: string, count: number): string[] {
  return Array.from({ length: count }, (_, at) => {
    const day = new Date(`${first}T12:00:00Z`);
    day.setUTCDate(day.getUTCDate() + at);
    return day.toISOString().slice(0, 'YYYY-MM-DD'.length);
  });
}
