import type { RunContent } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { runStrip } from './runStrip.js';

const HEIGHT = 56;
const WIDTH = 320;

/** The deflation as it was recorded: how high, where the sounds were. Times are drawn only where they were taken. */
export function DeflationStrip({ content }: { readonly content: RunContent }) {
  const { words } = useApp();
  const { run } = content.evidence;
  const strip = runStrip(run, { width: WIDTH, height: HEIGHT });
  // Nothing was heard: two numbers of a display are no let-down, and stand above already.
  if (strip.isDisplay) return <p className="small soft">{words.sentence('pressure.offDisplay')}</p>;
  const label = words.sentence(strip.isTimed ? 'pressure.stripTimed' : 'pressure.stripUntimed', {
    text: strip.marks.map(({ what, mmHg }) => `${words.title('moment', what)} ${mmHg}`).join(', '),
  });
  return (
    <figure className="evidence">
      <svg className="strip" viewBox={`-8 -22 ${WIDTH + 16} ${HEIGHT + 28}`} role="img" aria-label={label}>
        {strip.isTimed ? <path className="strip-window" d={`M0 ${HEIGHT} H${WIDTH}`} /> : null}
        <path className={strip.isTimed ? 'run-line' : 'run-line run-line-untimed'} d={strip.line} />
        {strip.marks.map(({ what, mmHg, x, y }) => (
          <g key={`${what} ${x}`}>
            {strip.isTimed ? <path className="strip-timed" d={`M${x} ${y} V${HEIGHT}`} /> : null}
            {what === 'first sound' || what === 'pulse back' ? (
              <circle className="run-first" cx={x} cy={y} r={4} />
            ) : what === 'peak' ? (
              <path className="run-peak" d={`M${x - 4} ${y} h8`} />
            ) : (
              <rect className="run-last" x={x - 3.5} y={y - 3.5} width={7} height={7} />
            )}
            <text className="run-number" x={x} y={y - 9} textAnchor={x > WIDTH / 2 ? 'end' : 'start'}>
              {mmHg}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="small soft">
        {words.sentence(strip.isTimed ? 'pressure.timesRecorded' : 'pressure.timesNotTaken')}
      </figcaption>
    </figure>
  );
}
