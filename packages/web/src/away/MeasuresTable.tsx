import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';

const MEASURES = ['systolic', 'diastolic', 'pulse'] as const;
/** A number of a reading. */
export type Measure = (typeof MEASURES)[number];

type MeasuresTableProps = {
  readonly label: string;
  readonly rows: readonly { readonly name: string; readonly cell: (of: Measure) => string }[];
};

/** A table with a column for each number of a reading. */
export function MeasuresTable({ label, rows }: MeasuresTableProps) {
  const { words } = useApp();
  return (
    <Scrolling label={label}>
      <table className="away-table">
        <thead>
          <tr>
            <td />
            {MEASURES.map((one) => (
              <th key={one} scope="col">
                {words.sentence(`away.${one}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, cell }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {MEASURES.map((one) => (
                <td key={one}>{cell(one)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scrolling>
  );
}
