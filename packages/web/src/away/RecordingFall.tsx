import type { Surge } from '@evenfall/clinical';
import type { AnsweredRecording } from '@evenfall/record';
import { fallText, risesSaid, riseText } from '@evenfall/report';
import { useApp } from '../app/context.js';

/** How far the pressure falls by night, with its class; the rise after waking only where a diary tells the waking. */
export function Fall({ result }: Pick<AnsweredRecording, 'result'>) {
  const { words } = useApp();
  return (
    <>
      <p>{fallText(result, words) ?? words.sentence('series.notKnown')}</p>
      {result.surge === null ? null : <Rises surge={result.surge} />}
    </>
  );
}

/** The rise by the definition that comes first, the others folded away. */
function Rises({ surge }: { readonly surge: Surge }) {
  const { words } = useApp();
  const { rises, notes } = risesSaid(surge, words);
  const [first, ...others] = rises;
  return (
    <>
      {first === undefined ? null : (
        <p>
          {words.sentence('series.rise')}: {riseText(first, words)}
        </p>
      )}
      <details className="more away-fold">
        <summary>{words.sentence('away.otherRises')}</summary>
        <ul className="away-left-out">
          {others.map((one) => (
            <li key={one.name}>{riseText(one, words)}</li>
          ))}
        </ul>
        {notes.map((note) => (
          <p key={note} className="small soft">
            {note}
          </p>
        ))}
      </details>
    </>
  );
}
