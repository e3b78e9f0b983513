import type { Judged } from '@evenfall/practice';
import { resultRows } from '@evenfall/practice';
import { useApp } from '../app/context.js';

/** What was written beside what was true and what was to be had. */
export function ResultTable({ result }: { readonly result: Judged }) {
  const { words } = useApp();
  const { say } = words;
  const rows = resultRows(result);
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
          <tr>
            <th scope="row">{words.sentence('debrief.had')}</th>
            {rows.map(({ of, had }) => (
              <td key={of} className="debrief-number">
                {had === null ? '–' : say.number(had)}
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">{words.sentence('debrief.error')}</th>
            {rows.map(({ of, error }) => (
              <td key={of}>
                {error === null ? '–' : words.sentence('debrief.signedWhole', { mmHg: error })}
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">{words.sentence('debrief.accepted')}</th>
            {rows.map(({ of, isAccepted }) => (
              <td key={of} className={isAccepted === true ? 'ticked' : undefined}>
                {isAccepted === null
                  ? '–'
                  : words.sentence(isAccepted ? 'debrief.isAccepted' : 'debrief.isNotAccepted')}
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
