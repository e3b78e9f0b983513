import type { RefusedSeriesRow } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';

/** Rows that were no readings, in the words in which they stood. */
export function RefusedRows({ refused }: { readonly refused: readonly RefusedSeriesRow[] }) {
  const { words } = useApp();
  if (refused.length === 0) return null;
  return (
    <Scrolling label={words.sentence('away.refused')}>
      <table className="away-table">
        <caption className="unseen">{words.sentence('away.refused')}</caption>
        <thead>
          <tr>
            <th scope="col">{words.sentence('bring.line')}</th>
            <th scope="col">{words.sentence('away.asItStood')}</th>
          </tr>
        </thead>
        <tbody>
          {refused.map(({ line, got }) => (
            <tr key={line} className="away-grey">
              <th scope="row">{line === null ? '–' : words.say.short(line)}</th>
              <td className="away-raw">{got}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scrolling>
  );
}
