import type { ExerciseList, ExerciseRow } from '@evenfall/api';
import { type CountErrorsDrawn, countErrorsFigure, type ErrorDrawn, errorsFigure } from '@evenfall/report';
import { useCallback, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { stampText } from '../app/times.js';
import { FigureShown } from '../away/FigureShown.js';
import { FigureTable } from '../away/FigureTable.js';
import { Asking } from '../parts/Asking.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { refusedBecause } from '../server/server.js';
import { useAnswering } from '../signIn/useAccess.js';
import { scenarioName } from './exerciseName.js';
import { type Judged, useErrors } from './useErrors.js';
import { useFetched } from './useFetched.js';

/** What was practised here, by whom, and how near it came to the truth over time. */
export function ExercisesPage() {
  const { words, server } = useApp();
  const ask = useCallback(() => server.call('listExercises', {}), [server]);
  const { asked, again } = useFetched(ask);
  const own = useAnswering();
  const [chosen, setChosen] = useState<string | null>(null);
  const { older, failed, askOlder } = useOlder();
  return (
    <SimulatedPage
      title={words.sentence('debrief.listTitle')}
      back={{ href: '/practice', text: words.sentence('practice.title') }}
    >
      <Asking asked={asked} again={again}>
        {(first) => {
          const exercises = [first, ...older].flatMap((page) => page.exercises);
          const { agents } = first;
          const { next } = older.at(-1) ?? first;
          const ids = [...new Set(exercises.map(({ agent }) => agent))];
          const agent = chosen ?? (own !== null && ids.includes(own) ? own : (ids[0] ?? null));
          const rows = exercises.filter((one) => one.agent === agent);
          if (rows.length === 0) return <p>{words.sentence('debrief.listNone')}</p>;
          return (
            <div className="debrief">
              {ids.length < 2 ? null : (
                <Field label={words.sentence('debrief.listOf')}>
                  {(control) => (
                    <select
                      {...control}
                      value={agent ?? ''}
                      onChange={({ target }) => setChosen(target.value)}
                    >
                      {ids.map((id) => (
                        <option key={id} value={id}>
                          {agents.find((one) => one.id === id)?.name ?? words.sentence('chart.unknownAgent')}
                        </option>
                      ))}
                    </select>
                  )}
                </Field>
              )}
              <Made key={agent} rows={rows} />
              {next === null ? null : (
                <button type="button" className="button" onClick={() => void askOlder(next)}>
                  {words.sentence('debrief.older')}
                </button>
              )}
              <Refused text={failed} />
            </div>
          );
        }}
      </Asking>
    </SimulatedPage>
  );
}

/** The pages of a long list after the first, as they are asked for. */
function useOlder() {
  const { server, words } = useApp();
  const [older, setOlder] = useState<readonly ExerciseList[]>([]);
  const [failed, setFailed] = useState<string | null>(null);
  const asking = useRef(false);
  const askOlder = async (before: string) => {
    // Two quick touches ask once.
    if (asking.current) return;
    asking.current = true;
    const answer = await server.call('listExercises', { query: { before } });
    asking.current = false;
    setFailed(answer.ok ? null : refusedBecause(answer, words));
    if (answer.ok) setOlder((pages) => [...pages, answer.value]);
  };
  return { older, failed, askOlder };
}

const HEIGHT = 250;

/** The newest of them as a figure, and all of them as a list under the same numbers. */
function Made({ rows }: { readonly rows: readonly ExerciseRow[] }) {
  const { words } = useApp();
  const { judged, isDone } = useErrors(rows);
  const errors = judged.flatMap((one, k): ErrorDrawn[] => {
    const { systolic, diastolic } = one.errors.written;
    // Where only something else was written there is no pressure to be off.
    if (systolic === null && diastolic === null && isAnyElse(one.row)) return [];
    return [{ key: `exercise-${one.row.id}`, number: k + 1, name: nameOf(one.row, words), ...one.errors }];
  });
  const counts = judged.flatMap((one, k): CountErrorsDrawn[] => {
    const of = (sign: 'pulse' | 'apex' | 'breaths') => {
      const found = one.errors.rates.find((rate) => rate.of === sign);
      return found === undefined ? null : { perMinute: found.error, isAccepted: found.isAccepted };
    };
    if (one.errors.rates.length === 0) return [];
    const [pulse, apex, breaths] = [of('pulse'), of('apex'), of('breaths')];
    return [
      { key: `counts-${one.row.id}`, number: k + 1, name: nameOf(one.row, words), pulse, apex, breaths },
    ];
  });
  return (
    <>
      {errors.length === 0 ? (
        counts.length > 0 ? null : (
          <p className="soft">{words.sentence(isDone ? 'debrief.noneJudged' : 'app.loading')}</p>
        )
      ) : (
        <section>
          <h2>{words.sentence('debrief.errorsFigure')}</h2>
          <FigureShown name="errors" height={HEIGHT} draw={(how) => errorsFigure(errors, words, how)} />
          <p className="small soft">{words.sentence('debrief.errorsKey')}</p>
          <FigureTable
            title={words.sentence('debrief.errorsTable')}
            table={errorsFigure(errors, words).table}
          />
        </section>
      )}
      {counts.length === 0 ? null : (
        <section>
          <h2>{words.sentence('counts.errorsFigure')}</h2>
          <FigureShown
            name="count-errors"
            height={HEIGHT}
            draw={(how) => countErrorsFigure(counts, words, how)}
          />
          <p className="small soft">{words.sentence('counts.errorsKey')}</p>
          <FigureTable
            title={words.sentence('debrief.errorsTable')}
            table={countErrorsFigure(counts, words).table}
          />
        </section>
      )}
      <ul className="debrief-list">
        {rows.map((row) => (
          <Row
            key={row.id}
            row={row}
            place={judged.findIndex((one) => one.row.id === row.id)}
            judged={judged}
          />
        ))}
      </ul>
    </>
  );
}

type RowProps = {
  readonly row: ExerciseRow;
  /** Its place in the figure; -1: not in it. */
  readonly place: number;
  readonly judged: readonly Judged[];
};

function Row({ row, place, judged }: RowProps) {
  const { words } = useApp();
  const errors = judged[place]?.errors ?? null;
  // Of several readings it is their average, where there is one.
  const written = errors?.averaged == null ? row : errors.written;
  const isNothing = row.systolic === null && row.diastolic === null;
  const rates = ratesOf(row);
  return (
    <li>
      <span className="soft small debrief-place">
        {place < 0 ? '' : words.sentence('debrief.errorNumber', { number: place + 1 })}
      </span>
      <Link href={`/practice/exercises/${row.id}`}>{scenarioName(row.scenario, row.title, words)}</Link>
      <span className="soft small">{stampText({ at: row.measuredAt }, words)}</span>
      <span>
        {isNothing
          ? isAnyElse(row)
            ? null
            : words.sentence('debrief.notWritten')
          : `${shown(written.systolic, words)}/${shown(written.diastolic, words)}`}
      </span>
      {errors === null || isNothing ? null : (
        <span className="soft">
          {whichText(errors, words)}
          {words.sentence('debrief.errorShort', errors)}
        </span>
      )}
      {row.temperatureC === null ? null : (
        <span>{words.sentence('counts.temperatureWritten', { celsius: row.temperatureC })}</span>
      )}
      {rates.map(({ of, perMinute }) => (
        <RateWritten key={of} of={of} written={perMinute} errors={errors} />
      ))}
    </li>
  );
}

type Rate = Judged['errors']['rates'][number]['of'];

/** The rates that were written. */
function ratesOf(row: ExerciseRow): readonly { readonly of: Rate; readonly perMinute: number }[] {
  const all = [
    ['pulse', row.pulsePerMinute],
    ['apex', row.apexPerMinute],
    ['breaths', row.breathsPerMinute],
  ] as const;
  return all.flatMap(([of, perMinute]) => (perMinute === null ? [] : [{ of, perMinute }]));
}

/** Whether something beside the pressure was written. */
function isAnyElse(row: ExerciseRow): boolean {
  return ratesOf(row).length > 0 || row.temperatureC !== null;
}

type RateProps = { readonly of: Rate; readonly written: number; readonly errors: Judged['errors'] | null };

function RateWritten({ of, written, errors }: RateProps) {
  const { words } = useApp();
  const error = errors?.rates.find((one) => one.of === of) ?? null;
  return (
    <span>
      {words.sentence('counts.wrote', { what: words.sentence(`counts.name-${of}`), written })}
      {error === null ? null : (
        <span className="soft">
          {' '}
          {words.sentence('counts.off', {
            text: words.sentence('counts.signed', { perMinute: error.error }),
          })}
        </span>
      )}
    </span>
  );
}

type Words = ReturnType<typeof useApp>['words'];

/** Which of several readings the numbers are of; nothing where there was one. */
function whichText({ averaged, readings }: Judged['errors'], words: Words): string {
  if (averaged !== null) return `${words.sentence('debrief.errorOfAverage', { readings: averaged })} `;
  return readings > 1 ? `${words.sentence('debrief.errorOfLast', { readings })} ` : '';
}

function shown(mmHg: number | null, { say }: Words): string {
  return mmHg === null ? '–' : say.number(mmHg);
}

function nameOf({ scenario, title, measuredAt }: ExerciseRow, words: Words): string {
  return words.sentence('debrief.made', {
    name: scenarioName(scenario, title, words),
    when: stampText({ at: measuredAt }, words),
  });
}
