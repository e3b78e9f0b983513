import type { RefusedRow } from '@evenfall/exchange';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { unbroken } from '../app/figuresText.js';
import { lineField } from './intake.js';
import { rowName } from './placeText.js';
import { GRID_CELLS } from './typedCell.js';
import type { IntakeState } from './useIntake.js';
import { COLUMN_OF, cellId, type GridTable } from './weekGrid.js';

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
      <p className="soft">
        {words.sentence(intake.table === null ? 'away.refusedHint' : 'away.refusedInGrid')}
      </p>
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
  // What is wrong with a row of the grid stands beside its cell.
  if (table !== null) {
    const column = problems[0]?.column ?? COLUMN_OF.systolic;
    return (
      <li>
        <button type="button" className="button button-quiet" onClick={() => focusCell(table, line, column)}>
          {name}
        </button>
      </li>
    );
  }
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
              <dt>{words.sentence('away.inColumn', { text: field ?? '', column: column ?? 0 })}</dt>
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
    </li>
  );
}

/** Leads to the cell of the grid that a row was refused for. */
function focusCell({ rowOfLine }: GridTable, line: number, column: number): void {
  const row = rowOfLine.get(line);
  const cell = GRID_CELLS.find((one) => COLUMN_OF[one] === column) ?? 'systolic';
  if (row !== undefined) document.getElementById(cellId(row, cell))?.focus();
}
