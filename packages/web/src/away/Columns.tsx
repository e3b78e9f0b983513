import { SERIES_COLUMNS, type SeriesColumn } from '@evenfall/exchange';
import { useApp } from '../app/context.js';
import type { IntakeState } from './useIntake.js';

const SHOWN_LINES = 4;

/** What each column of a table is: open where something is missing, folded away where it was found or remembered. */
export function Columns({ state }: { readonly state: IntakeState }) {
  const { words } = useApp();
  const { intake, isRemembered, setColumns } = state;
  const { read, lines } = intake;
  if (read === null) return null;
  const missing = read.questions.filter(({ of }) => of === 'columns');
  const { headings, columns } = read.mapping;
  const set = (at: number, role: string) =>
    setColumns(
      columns.map((was, k) => {
        const chosen: SeriesColumn | null = SERIES_COLUMNS.find((one) => one === role) ?? null;
        if (k === at) return chosen;
        // A column that another one took over is no longer that.
        return was === chosen ? null : was;
      }),
    );
  return (
    <details className="more away-columns" open={missing.length > 0 ? true : undefined}>
      <summary>{words.sentence('away.columns')}</summary>
      {missing.length === 0 ? null : (
        <p className="notice" role="alert">
          {words.sentence('away.columnsMissing', {
            parts: missing.map(({ problem }) => words.sentence(columnKey(problem.field ?? ''))),
          })}
        </p>
      )}
      {isRemembered ? <p className="soft small">{words.sentence('away.columnsRemembered')}</p> : null}
      <pre className="away-lines">{lines.slice(0, SHOWN_LINES).join('\n')}</pre>
      <div className="away-columns-list">
        {columns.map((role, at) => {
          const heading = headings?.[at] ?? '';
          const name = words.sentence('away.column', { column: at + 1, text: heading });
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: columns have no other name than their place
            <label key={at} className="field">
              <span className="label">{name}</span>
              <select value={role ?? ''} onChange={({ target }) => set(at, target.value)}>
                <option value="">{words.sentence('away.notRead')}</option>
                {SERIES_COLUMNS.map((one) => (
                  <option key={one} value={one}>
                    {words.sentence(`away.column-${one}`)}
                  </option>
                ))}
              </select>
            </label>
          );
        })}
      </div>
    </details>
  );
}

function columnKey(field: string) {
  const role = SERIES_COLUMNS.find((one) => one === field) ?? 'time';
  return `away.column-${role}` as const;
}
