import type { Judged } from '@evenfall/practice';
import { type ResultRow, resultRows } from '@evenfall/practice';
import { useApp } from '../app/context.js';

/** What was written beside what was true and what was to be had. */
export function ResultTable({ result }: { readonly result: Judged }) {
  const { words } = useApp();
  const { say } = words;
  const rows = resultRows(result);
  // What was not prepared is told apart from hand, ear and eye.
  const isParted = rows.some(({ asTheyWere }) => asTheyWere !== null);
  const spread = (['systolic', 'diastolic'] as const).flatMap((of) => {
    const isMuffled = of === 'diastolic' && result.isByMuffled;
    const one = isMuffled ? result.had.muffled : result.had[of];
    const part = words.sentence(isMuffled ? 'debrief.muffledRow' : `debrief.${of}`);
    return one === null ? [] : [words.sentence('debrief.spreadOf', { ...one, part })];
  });
  return (
    <>
      <table className="debrief-table debrief-result">
        <caption className="unseen">{words.sentence('debrief.reading')}</caption>
        <thead>
          <tr>
            <td />
            {rows.map(({ of, isMuffled }) => (
              <th key={of} scope="col">
                {words.sentence(isMuffled ? 'debrief.muffledRow' : `debrief.${of}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{words.sentence('debrief.wrote')}</th>
            {rows.map(({ of, written }) => (
              <td key={of} className="debrief-number">
                {written === null ? words.sentence('debrief.notWritten') : say.number(written)}
              </td>
            ))}
          </tr>
          {isParted ? (
            <>
              <NumberRow title="asTheyWere" rows={rows} of={({ asTheyWere }) => asTheyWere} />
              <DifferenceRow title="ofReading" rows={rows} of={({ parts }) => parts?.ofReading ?? null} />
            </>
          ) : null}
          <NumberRow title={isParted ? 'hadPrepared' : 'had'} rows={rows} of={({ had }) => had} />
          {isParted ? (
            <DifferenceRow title="ofPreparing" rows={rows} of={({ parts }) => parts?.ofPreparing ?? null} />
          ) : null}
          <DifferenceRow title={isParted ? 'errorInAll' : 'error'} rows={rows} of={({ error }) => error} />
          <tr>
            <th scope="row">{words.sentence('debrief.accepted')}</th>
            {rows.map(({ of, isAccepted, isFar }) => (
              <td key={of} className={isAccepted === true && !isFar ? 'ticked' : undefined}>
                {isAccepted === null
                  ? '–'
                  : words.sentence(
                      isFar ? 'debrief.isFar' : isAccepted ? 'debrief.isAccepted' : 'debrief.isNotAccepted',
                    )}
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">{words.sentence('debrief.truth')}</th>
            {rows.map(({ of, truth }) => (
              <td key={of}>{say.number(truth)}</td>
            ))}
          </tr>
        </tbody>
      </table>
      {isParted ? <p className="small soft">{words.sentence('debrief.asTheyWereHint')}</p> : null}
      <p className="small soft">{words.sentence('debrief.truthHint')}</p>
      {spread.length === 0 ? null : (
        <p className="small soft">{words.sentence('debrief.spreadSays', { text: spread.join(', ') })}</p>
      )}
      {rows.some(({ isMuffled }) => isMuffled) ? (
        <p className="small soft">{words.sentence('debrief.muffledHint')}</p>
      ) : null}
    </>
  );
}

type RowProps = {
  readonly title: 'asTheyWere' | 'ofReading' | 'had' | 'hadPrepared' | 'ofPreparing' | 'error' | 'errorInAll';
  readonly rows: readonly ResultRow[];
  readonly of: (row: ResultRow) => number | null;
};

function NumberRow({ title, rows, of }: RowProps) {
  const { words } = useApp();
  return (
    <tr>
      <th scope="row">{words.sentence(`debrief.${title}`)}</th>
      {rows.map((row) => (
        <td key={row.of} className="debrief-number">
          {numberText(of(row), (one) => words.say.number(one))}
        </td>
      ))}
    </tr>
  );
}

function DifferenceRow({ title, rows, of }: RowProps) {
  const { words } = useApp();
  return (
    <tr className="debrief-between">
      <th scope="row">{words.sentence(`debrief.${title}`)}</th>
      {rows.map((row) => (
        <td key={row.of}>{numberText(of(row), (mmHg) => words.sentence('debrief.signedWhole', { mmHg }))}</td>
      ))}
    </tr>
  );
}

function numberText(one: number | null, text: (one: number) => string): string {
  return one === null ? '–' : text(one);
}
