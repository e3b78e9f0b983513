import type { ChartRound } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { standingValues } from './standingValues.js';

type SideBySideProps = { readonly learner: ChartRound; readonly own: ChartRound };

/** A learner's values and a supervisor's own, sign by sign. */
export function SideBySide({ learner, own: mine }: SideBySideProps) {
  const { words } = useApp();
  const [theirs, ours] = [standingValues(learner, words), standingValues(mine, words)];
  const signs = [...new Set([...theirs, ...ours].map(({ sign }) => sign))];
  return (
    <table className="side-by-side">
      <caption className="unseen">{words.sentence('chart.sideBySide')}</caption>
      <thead>
        <tr>
          <th scope="col">{words.sentence('chart.sign')}</th>
          <th scope="col">{words.sentence('chart.learner')}</th>
          <th scope="col">{words.sentence('chart.own')}</th>
        </tr>
      </thead>
      <tbody>
        {signs.map((sign) => (
          <tr key={sign}>
            <th scope="row">{signText(sign, words)}</th>
            {[theirs, ours].map((values) => (
              <td key={values === theirs ? 'learner' : 'own'}>
                {values
                  .filter((one) => one.sign === sign)
                  .map(({ text }) => text)
                  .join(', ') || '–'}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
