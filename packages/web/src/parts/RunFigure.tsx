import { REPEAT_SCATTER_MMHG } from '@evenfall/clinical';
import { pressureWritten, type RunContent } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { placeText } from '../pressure/placeText.js';

import { runStrip } from './runStrip.js';

type RunFigureProps = {
  readonly content: RunContent;
  /** Whether it stands among others of its round, beside which the scatter of repeats is said once. */
  readonly isInRound?: boolean;
};

/** A charted pressure: its numbers, where the cuff was, its range beside the scatter of repeats, and its deflation. */
export function RunFigure({ content, isInRound = false }: RunFigureProps) {
  const { words } = useApp();
  const { value, override, evidence } = content;
  const { systolicRange, diastolicRange } = value;
  const ranges = (['systolic', 'diastolic'] as const).flatMap((part) => {
    const range = part === 'systolic' ? systolicRange : diastolicRange;
    if (range === null) return [];
    const [low, high] = range;
    return [words.sentence('pressure.rangeOf', { text: words.sentence(`pressure.${part}`), low, high })];
  });
  return (
    <>
      <p className="rate rate-pressure">
        <span className="rate-number">{pressureWritten(content)}</span>
        <span className="rate-unit">{words.sentence('pressure.mmHg')}</span>
        {override === null ? null : <span className="small rate-hand">{words.sentence('chart.byHand')}</span>}
      </p>
      <p className="small">
        {words.title('method', evidence.run.method)} · {placeText(evidence.place, words)}
      </p>
      {ranges.length === 0 || override !== null ? null : (
        <p className="small soft">
          {words.sentence('pressure.rangeFrom', { text: ranges.join(', ') })}{' '}
          {isInRound ? null : words.sentence('run.scatter', { mmHg: REPEAT_SCATTER_MMHG })}
        </p>
      )}
      <DeflationStrip content={content} />
    </>
  );
}

const HEIGHT = 56;
const WIDTH = 320;

/** The deflation as it was recorded: how high, where the sounds were. Times are drawn only where they were taken. */
function DeflationStrip({ content }: { readonly content: RunContent }) {
  const { words } = useApp();
  const { run } = content.evidence;
  const strip = runStrip(run, { width: WIDTH, height: HEIGHT });
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
