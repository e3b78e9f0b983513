import type { Debrief } from '@evenfall/practice';
import { useApp } from '../app/context.js';
import { costRows } from './costRows.js';
import { insteadText } from './insteadText.js';
import { useDebriefRules } from './useDebriefRules.js';

/** What each fault cost, the dearest first, each with one thing to do instead; the lines add up as they are shown. */
export function CostsTable({ result }: { readonly result: Debrief }) {
  const { words } = useApp();
  const rules = useDebriefRules();
  const { costs } = result.costs;
  const cost = (mmHg: number | null) => words.sentence('debrief.cost', { mmHg });
  const { rows, rest, total } = costRows(result);
  const hasGap = costs.some(({ systolic, diastolic }) => systolic === null || diastolic === null);
  const isUnknown = result.conduct.some(({ code }) => code === 'not-marked');
  if (result.fall === null) return null;
  return (
    <section>
      <h2>{words.sentence('debrief.costs')}</h2>
      {costs.length === 0 ? (
        <p>{words.sentence('debrief.noFaults')}</p>
      ) : (
        <>
          <p className="small soft">{words.sentence('debrief.costsHint')}</p>
          <table className="debrief-table debrief-costs">
            <caption className="unseen">{words.sentence('debrief.costs')}</caption>
            <thead>
              <tr>
                {(['fault', 'systolicCost', 'diastolicCost', 'instead'] as const).map((key) => (
                  <th key={key} scope="col">
                    {words.sentence(`debrief.${key}`)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ code, doInstead, systolic, diastolic }) => (
                <tr key={code}>
                  <th scope="row">{words.sentence(`debrief.fault-${code}`)}</th>
                  <td data-label={words.sentence('debrief.systolicCost')}>{cost(systolic)}</td>
                  <td data-label={words.sentence('debrief.diastolicCost')}>{cost(diastolic)}</td>
                  <td>{insteadText(doInstead, rules, words)}</td>
                </tr>
              ))}
              {rest === null || total === null ? null : (
                <>
                  <tr className="debrief-left">
                    <th scope="row">{words.sentence('debrief.left')}</th>
                    <td data-label={words.sentence('debrief.systolicCost')}>{cost(rest.systolic)}</td>
                    <td data-label={words.sentence('debrief.diastolicCost')}>{cost(rest.diastolic)}</td>
                    <td>{words.sentence(isUnknown ? 'debrief.leftUnknown' : 'debrief.leftHint')}</td>
                  </tr>
                  <tr className="debrief-total">
                    <th scope="row">{words.sentence('debrief.total')}</th>
                    <td data-label={words.sentence('debrief.systolicCost')}>{cost(total.systolic)}</td>
                    <td data-label={words.sentence('debrief.diastolicCost')}>{cost(total.diastolic)}</td>
                    <td />
                  </tr>
                </>
              )}
            </tbody>
          </table>
          <p className="small soft">{words.sentence(hasGap ? 'debrief.noNumber' : 'debrief.costsSum')}</p>
        </>
      )}
    </section>
  );
}
