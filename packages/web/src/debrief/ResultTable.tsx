import type { Debrief } from '@evenfall/practice';
import { useApp } from '../app/context.js';
import { resultRows } from './resultRows.js';

/** What was written beside what was true and what was to be had. */
export function ResultTable({ result }: { readonly result: Debrief }) {
  const { words } = useApp();
  const { say } = words;
  const rows = resultRows(result);
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
              {(['wrote', 'truth', 'best', 'error', 'accepted'] as const).map((key) => (
                <th key={key} scope="col">
                  {words.sentence(`debrief.${key}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ of, isMuffled, written, truth, best, error, isAccepted }) => (
              <tr key={of}>
                <th scope="row">{words.sentence(isMuffled ? 'debrief.muffledRow' : `debrief.${of}`)}</th>
                <td className="debrief-number">
                  {written === null ? words.sentence('debrief.notWritten') : say.number(written)}
                </td>
                <td className="debrief-number">{say.number(truth)}</td>
                <td>{best === null ? '–' : say.number(best)}</td>
                <td>{error === null ? '–' : words.sentence('debrief.signed', { mmHg: error })}</td>
                <td className={isAccepted === true ? 'ticked' : undefined}>
                  {isAccepted === null
                    ? '–'
                    : words.sentence(isAccepted ? 'debrief.isAccepted' : 'debrief.isNotAccepted')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="small soft">{words.sentence('debrief.truthHint')}</p>
      {rows.some(({ isMuffled }) => isMuffled) ? (
        <p className="small soft">{words.sentence('debrief.muffledHint')}</p>
      ) : null}
    </>
  );
}
