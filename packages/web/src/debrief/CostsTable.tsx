import type { Costs } from '@evenfall/practice';
import { useApp } from '../app/context.js';

/** What each fault cost, the dearest first, each with one thing to do instead. */
export function CostsTable({ costs: { costs, left, best } }: { readonly costs: Costs }) {
  const { words } = useApp();
  const cost = (mmHg: number | null) => words.sentence('debrief.cost', { mmHg });
  const hasGap = costs.some(({ systolic, diastolic }) => systolic === null || diastolic === null);
  const isWhole = best !== null && left !== null && left.systolic !== null && left.diastolic !== null;
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
              {costs.map(({ code, doInstead, systolic, diastolic }) => (
                <tr key={code}>
                  <th scope="row">{words.sentence(`debrief.fault-${code}`)}</th>
                  <td data-label={words.sentence('debrief.systolicCost')}>{cost(systolic)}</td>
                  <td data-label={words.sentence('debrief.diastolicCost')}>{cost(diastolic)}</td>
                  <td>{words.sentence(`debrief.do-${doInstead}`)}</td>
                </tr>
              ))}
              {left === null || (left.systolic === null && left.diastolic === null) ? null : (
                <tr className="debrief-left">
                  <th scope="row">{words.sentence('debrief.left')}</th>
                  <td data-label={words.sentence('debrief.systolicCost')}>{cost(left.systolic)}</td>
                  <td data-label={words.sentence('debrief.diastolicCost')}>{cost(left.diastolic)}</td>
                  <td>{words.sentence('debrief.leftHint')}</td>
                </tr>
              )}
            </tbody>
          </table>
          <p className="small soft">
            {words.sentence(hasGap || !isWhole ? 'debrief.noNumber' : 'debrief.costsSum')}
          </p>
        </>
      )}
    </section>
  );
}
