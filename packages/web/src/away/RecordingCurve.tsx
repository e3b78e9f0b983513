import type { AnsweredRecording } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { timeText } from '../app/times.js';
import { Scrolling } from '../parts/Scrolling.js';

const MEASURES = ['systolic', 'diastolic', 'pulse'] as const;

/** The fitted curve: folded away, since it describes and judges nothing. */
export function Curve({ result }: Pick<AnsweredRecording, 'result'>) {
  const { words } = useApp();
  const rows = (['one', 'two'] as const).flatMap((which) =>
    MEASURES.flatMap((measure) => {
      const curve = result.cosinor[measure][which];
      return curve === null ? [] : [{ which, measure, curve }];
    }),
  );
  if (rows.length === 0) return null;
  return (
    <details className="more away-fold">
      <summary>{words.sentence('away.curve')}</summary>
      <p className="soft small">{words.sentence('away.curveSays')}</p>
      <Scrolling label={words.sentence('away.curve')}>
        <table className="away-table">
          <thead>
            <tr>
              <td />
              <th scope="col">{words.sentence('away.mesor')}</th>
              <th scope="col">{words.sentence('away.amplitude')}</th>
              <th scope="col">{words.sentence('away.peak')}</th>
              <th scope="col">R²</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ which, measure, curve }) => {
              const [first] = curve.harmonics;
              return (
                <tr key={`${which} ${measure}`}>
                  <th scope="row">
                    {words.sentence(`away.${measure}`)}, {words.sentence(`away.curve-${which}`)}
                  </th>
                  <td>{withError(curve.mesor, curve.mesorSe, words)}</td>
                  <td>{first === undefined ? '' : withError(first.amplitude, first.amplitudeSe, words)}</td>
                  <td>{first === undefined ? '' : timeText(clockOf(first.peakHour), words)}</td>
                  <td>{words.say.number(curve.r2, 2)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scrolling>
    </details>
  );
}

function withError(value: number, error: number | null, { say }: Words): string {
  return error === null ? say.number(value, 1) : `${say.number(value, 1)} ± ${say.number(error, 1)}`;
}

/** A time of day from hours since midnight. */
function clockOf(hour: number): string {
  const minutes = Math.round(hour * 60) % (24 * 60);
  return [Math.floor(minutes / 60), minutes % 60].map((one) => String(one).padStart(2, '0')).join(':');
}
