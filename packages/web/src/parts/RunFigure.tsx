import { REPEAT_SCATTER_MMHG } from '@evenfall/clinical';
import { type PulseOfReading, pressureWritten, type RunContent } from '@evenfall/record';
import { readingTexts } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { placeText } from '../pressure/placeText.js';
import { rangeTexts } from '../pressure/rangeTexts.js';
import { DeflationStrip } from './DeflationStrip.js';

type RunFigureProps = {
  readonly content: RunContent;
  /** Whether it stands among others of its round, beside which the scatter of repeats is said once. */
  readonly isInRound?: boolean;
  /** The pulse that stands beside it, where that is known of the whole round; else the one that it was taken with. */
  readonly pulse?: PulseOfReading | undefined;
};

/** A charted pressure: its numbers, where the cuff was, its range beside the scatter of repeats, and its deflation. */
export function RunFigure({ content, isInRound = false, pulse }: RunFigureProps) {
  const { words } = useApp();
  const { value, override, evidence } = content;
  const ranges = rangeTexts(value, words);
  return (
    <>
      <p className="rate rate-pressure">
        <span className="rate-number">{pressureWritten(content)}</span>
        <span className="rate-unit">{words.sentence('pressure.mmHg')}</span>
        {override === null ? null : <span className="small rate-hand">{words.sentence('chart.byHand')}</span>}
      </p>
      <p className="small">
        {[
          words.title('method', evidence.run.method),
          placeText(evidence.place, words),
          ...readingTexts(pulse ?? evidence.run.pulsePerMinute, evidence.circumstances, words),
        ].join(' · ')}
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
