import type { Judged } from '@evenfall/practice';
import { useApp } from '../app/context.js';
import { resultRows } from './resultRows.js';

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
      <div className="trend-scroll">
        <table className="debrief-table debrief-result">
          <caption className="unseen">{words.sentence('debrief.reading')}</caption>
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">{words.sentence('debrief.number')}</span>
              </th>
              {(['wrote', 'had', 'error', 'accepted', 'truth'] as const).map((key) => (
                <th key={key} scope="col">
                  {words.sentence(`debrief.${key}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ of, isMuffled, written, truth, had, error, isAccepted }) => (
              <tr key={of}>
                <th scope="row">{words.sentence(isMuffled ? 'debrief.muffledRow' : `debrief.${of}`)}</th>
                <td className="debrief-number">
                  {written === null ? words.sentence('debrief.notWritten') : say.number(written)}
                </td>
                <td className="debrief-number">{had === null ? '–' : say.number(had)}</td>
                <td>{error === null ? '–' : words.sentence('debrief.signedWhole', { mmHg: error })}</td>
                <td className={isAccepted === true ? 'ticked' : undefined}>
                  {isAccepted === null
                    ? '–'
                    : words.sentence(isAccepted ? 'debrief.isAccepted' : 'debrief.isNotAccepted')}
                </td>
                <td>{say.number(truth)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
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
