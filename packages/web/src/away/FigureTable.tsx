import type { DataTable } from '@evenfall/report';
import { Scrolling } from '../parts/Scrolling.js';

/** The data of a figure, folded away: for whoever cannot see it or wants the numbers; on paper the lists of the page have them. */
export function FigureTable({ title, table }: { readonly title: string; readonly table: DataTable }) {
  return (
    <details className="more not-printed">
      <summary>{title}</summary>
      <Scrolling label={table.caption}>
        <table className="away-table">
          <caption className="unseen">{table.caption}</caption>
          <thead>
            <tr>
              {table.columns.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map(([first = '', ...rest], k) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows have no other name and never change places
              <tr key={k}>
                <th scope="row">{first}</th>
                {rest.map((cell, n) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a cell is its column
                  <td key={n}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
    </details>
  );
}
