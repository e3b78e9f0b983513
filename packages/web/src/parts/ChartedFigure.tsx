import type { PulseOfReading } from '@evenfall/record';
import { readingTexts } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { placeText } from '../pressure/placeText.js';
import { type Charted, chartedText, isRate } from './charted.js';
import { RunFigure } from './RunFigure.js';
import { EvidenceStrip, isVoidContent, RangeLine, Rate } from './ValueFigures.js';

type ChartedFigureProps = {
  readonly given: Charted;
  /** Whether it stands among others of its round. */
  readonly isInRound?: boolean;
  /** Of a pressure: as of {@link RunFigure}. */
  readonly pulse?: PulseOfReading | undefined;
};

/** A charted value of any sign, in figures, with its evidence. */
export function ChartedFigure({ given, isInRound = false, pulse }: ChartedFigureProps) {
  const { words } = useApp();
  if (given.kind === 'run') return <RunFigure content={given.content} isInRound={isInRound} pulse={pulse} />;
  if (!isRate(given)) return <p className="measure-figure">{chartedText(given, words)}</p>;
  return (
    <>
      {isVoidContent(given) ? null : (
        <div className="value-line">
          <Rate given={given} />
          <RangeLine given={given} />
        </div>
      )}
      <EvidenceStrip given={given} />
    </>
  );
}

/** The figures alone, struck through: what was replaced stays readable. */
export function StruckFigure({ given }: { readonly given: Charted }) {
  const { words } = useApp();
  if (isRate(given)) return <Rate given={given} isStruck />;
  if (given.kind === 'sign') {
    return (
      <p className="measure-figure">
        <s className="rate-number">{chartedText(given, words)}</s>
      </p>
    );
  }
  const { place, run, circumstances } = given.content.evidence;
  const about = [placeText(place, words), ...readingTexts(run.pulsePerMinute, circumstances, words)];
  return (
    <>
      <p className="rate rate-pressure">
        <s className="rate-number">{chartedText(given, words)}</s>
      </p>
      <p className="small">{about.join(' · ')}</p>
    </>
  );
}
