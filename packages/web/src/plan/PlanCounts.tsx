import {
  COUNT_GROUPS,
  type CountPair,
  type CountResultOf,
  type CountsResult,
  type PlanResult,
} from '@evenfall/practice';
import { useApp } from '../app/context.js';
import { isSurelyApart } from './planRows.js';

/** What both ways get wrong of the pulse and, where they count them, of the breaths; by kind of people. */
export function PlanCounts({ result }: { readonly result: PlanResult }) {
  return (
    <>
      <OfOne of="pulse" result={result} />
      <OfOne of="breaths" result={result} />
    </>
  );
}

type OfOneProps = { readonly of: 'pulse' | 'breaths'; readonly result: PlanResult };

function OfOne({ of, result }: OfOneProps) {
  const { words } = useApp();
  const { protocol, against, paired } = result;
  const ways = [
    ['first', protocol.counts[of]],
    ['second', against?.counts[of] ?? null],
  ] as const;
  if (ways.every(([, counts]) => counts === null)) return null;
  const pair = paired?.counts[of] ?? null;
  return (
    <div>
      <h3>{words.sentence(`plan.counts-${of}`)}</h3>
      {pair === null ? null : <p>{pairText(pair)}</p>}
      <table className="debrief-table">
        <caption className="unseen">{words.sentence(`plan.counts-${of}`)}</caption>
        <thead>
          <tr>
            {(['what', 'first', 'second'] as const).map((key) => (
              <th key={key} scope="col">
                {words.sentence(`plan.${key}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {(['all', ...COUNT_GROUPS] as const).map((group) => (
            <tr key={group}>
              <th scope="row">{words.sentence(`plan.${of}-${group}`)}</th>
              {ways.map(([way, counts]) => (
                <td key={way}>
                  {counts === null ? '–' : text(group === 'all' ? counts : groupOf(counts, group))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );

  function groupOf(counts: CountsResult, group: (typeof COUNT_GROUPS)[number]): CountResultOf {
    return counts[group];
  }

  function text({ people, bias, sd, within4, standardErrors }: CountResultOf): string {
    if (bias === null || sd === null || within4 === null) return words.sentence('plan.countNobody');
    return words.sentence('plan.countText', { people, bias, sd, within4, error: standardErrors.bias ?? 0 });
  }

  function pairText({ size }: CountPair): string {
    const { mean, standardError } = size;
    return words.sentence('plan.countPair', {
      mean,
      error: standardError,
      isSure: isSurelyApart(mean, standardError),
    });
  }
}
