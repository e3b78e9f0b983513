import type { RefusedRow } from '@evenfall/exchange';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { unbroken } from '../app/figuresText.js';
import { lineField } from './intake.js';
import { rowName } from './placeText.js';
import type { IntakeState } from './useIntake.js';

/** Rows that could not be read, each with what was expected where and what came, to be mended where it stands. */
export function RefusedLines({ state }: { readonly state: IntakeState }) {
  const { words } = useApp();
  const { intake, form } = state;
  const { read, mended, lines } = intake;
  if (read === null) return null;
  const right = [...mended].filter((line) => !read.refused.some((row) => row.line === line));
  if (read.refused.length === 0 && right.length === 0) return null;
  return (
    <section aria-label={words.sentence('away.refused')}>
      <h2>{words.sentence('away.refusedCount', { rows: read.refused.length })}</h2>
      <p className="soft">{words.sentence('away.refusedHint')}</p>
      <ul className="away-refused">
        {read.refused.map((row) => (
          <Refused key={row.line} row={row} state={state} />
        ))}
      </ul>
      {right.length === 0 ? null : (
        <ul className="away-refused" role="status">
          {right.map((line) => (
            <li key={line}>
              <p>{words.sentence('away.mended', { line })}</p>
              <p className="soft small">
                <del>{lines[line - 1]}</del>
              </p>
              <button
                type="button"
                className="button button-quiet"
                onClick={() => form.set(lineField(line), '')}
              >
                {words.sentence('away.unmend', { line })}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Refused({ row, state }: { readonly row: RefusedRow; readonly state: IntakeState }) {
  const { words } = useApp();
  const { intake, form } = state;
  const { table, lines } = intake;
  const { line, problems } = row;
  const stands = form.text(lineField(line)) === '' ? (lines[line - 1] ?? '') : form.text(lineField(line));
  const [typed, setTyped] = useState(stands);
  const name = rowName(line, table, words);
  return (
    <li>
      <p>
        <strong>{name}</strong>
      </p>
      <dl className="away-wrong">
        {problems.map((problem) => {
          const { expected } = words.problem(problem);
          const { column, field, got } = problem;
          return (
            <div key={`${field} ${problem.code}`}>
              <dt>
                {table === null
                  ? words.sentence('away.inColumn', { text: field ?? '', column: column ?? 0 })
                  : words.sentence(columnName(field ?? ''))}
              </dt>
              <dd>
                {unbroken(
                  words.sentence('away.expectedCame', {
                    expected: expected ?? '',
                    came: got === null || got === '' ? words.sentence('bring.nothingCame') : `“${got}”`,
                  }),
                )}
              </dd>
            </div>
          );
        })}
      </dl>
      {table === null ? (
        <form
          className="away-mend"
          onSubmit={(event) => {
            event.preventDefault();
            form.set(lineField(line), typed);
          }}
        >
          <label className="field">
            <span className="label">{words.sentence('away.mend', { line })}</span>
            <input
              type="text"
              autoComplete="off"
              spellCheck={false}
              value={typed}
              onInput={({ currentTarget }) => setTyped(currentTarget.value)}
            />
          </label>
          <button type="submit" className="button">
            {words.sentence('away.readAgain', { line })}
          </button>
        </form>
      ) : null}
    </li>
  );
}

function columnName(field: string) {
  const found = (['systolic', 'diastolic', 'pulse'] as const).find((one) => one === field);
  return found === undefined ? 'away.column-time' : (`away.column-${found}` as const);
}
