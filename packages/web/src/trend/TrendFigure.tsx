import type { TrendPoint, TrendRound } from '@evenfall/record';
import { scaleLinear, scaleUtc } from 'd3-scale';
import { type PointerEvent, type RefObject, useLayoutEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { type DrawnBand, drawnAverage, numbersOf } from './bands.js';
import { drawnIn, evenScale, roundTicks } from './evenScale.js';
import { Mark } from './Mark.js';
import { roundTickTexts, tickText } from './tickText.js';
import { titleText } from './trendText.js';
import { nearest, type Span, wallClock } from './view.js';

type FigureProps = {
  readonly bands: readonly DrawnBand[];
  readonly rounds: readonly TrendRound[];
  readonly span: Span;
  /** The place of the round that is read out; -1 for none. */
  readonly at: number;
  readonly label: string;
  /** Of a drawing that is only printed, which has no width before: px. Each round has a place of its own there (`evenScale`). */
  readonly printedWidth?: number;
  readonly onRead: (at: number) => void;
  /** A part was dragged across. */
  readonly onPart: (one: number, other: number) => void;
};

const LEFT = 44;
const RIGHT = 12;
const BAND_GAP = 46;
const TITLE = 34;
const AXIS = 26;
/** As the axis and as the widest label, of a drawing that writes a time and a day under each round, px. */
const EVEN_AXIS = 40;
const EVEN_LABEL = 56;
/** Half of the longest label below the drawing, px: nearer to its end one would be cut. */
const LABEL = 40;
/** A drag shorter than this was a slip of the hand, px. */
const LEAST_DRAG = 12;

/** Values over time in the notation of paper charts: carets at the pressures, a dot for the pulse. */
export function TrendFigure({ bands, rounds, span, at, label, printedWidth, onRead, onPart }: FigureProps) {
  const { words } = useApp();
  const frame = useRef<HTMLDivElement>(null);
  const measured = useWidth(frame);
  const width = printedWidth ?? measured;
  const [drag, setDrag] = useState<{ readonly from: number; readonly to: number } | null>(null);
  const right = Math.max(width - RIGHT, LEFT + 1);
  const even = printedWidth === undefined ? null : evenScale(rounds, drawnIn(bands));
  const x =
    even === null
      ? scaleUtc().domain([span.from, span.to]).range([LEFT, right])
      : scaleLinear()
          .domain(even.times)
          .range(even.places.map((place) => LEFT + ((right - LEFT) * place) / even.width))
          .clamp(true);
  const tops = topsOf(bands);
  const axis = even === null ? AXIS : EVEN_AXIS;
  const height = (tops.at(-1) ?? 0) + (bands.at(-1)?.height ?? 0) + axis;
  const most = Math.max(Math.floor((width - LEFT) / 84), 2);
  const ticks =
    even === null
      ? x.ticks(most).map((tick) => ({ at: Number(tick), texts: [tickText(Number(tick), span, words)] }))
      : roundTicks(rounds, even, Math.floor((right - LEFT) / EVEN_LABEL)).map(({ at: time, isNewDay }) => ({
          at: time,
          texts: roundTickTexts(time, isNewDay, words),
        }));
  const read = rounds[at];

  function timeOf({ clientX, currentTarget }: PointerEvent): number {
    return Number(x.invert(clientX - currentTarget.getBoundingClientRect().left));
  }

  return (
    <div className="trend-frame" ref={frame}>
      <svg
        className="trend"
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={label}
        onPointerMove={(event) => {
          onRead(nearest(rounds, timeOf(event)));
          const to = timeOf(event);
          setDrag((now) => (now === null ? null : { ...now, to }));
        }}
        onPointerDown={(event) => {
          onRead(nearest(rounds, timeOf(event)));
          if (event.pointerType !== 'mouse' || event.button !== 0) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          setDrag({ from: timeOf(event), to: timeOf(event) });
        }}
        onPointerUp={() => {
          if (drag !== null && Math.abs(x(drag.to) - x(drag.from)) >= LEAST_DRAG) onPart(drag.from, drag.to);
          setDrag(null);
        }}
        onPointerCancel={() => setDrag(null)}
      >
        {bands.map((band, index) => (
          <Band
            key={band.id}
            band={band}
            top={tops[index] ?? 0}
            width={width}
            x={(time) => x(time)}
            rounds={rounds}
            title={titleText(band.id, words)}
          />
        ))}
        {ticks.map((tick) => (
          <g key={tick.at}>
            <path className="trend-tick" d={`M${x(tick.at)} ${tops[0] ?? 0} V${height - axis}`} />
            {tick.texts.map((text, line) => (
              <text
                key={text}
                className="trend-time"
                x={x(tick.at)}
                y={height - axis + 19 + 14 * line}
                textAnchor={x(tick.at) > width - LABEL ? 'end' : 'middle'}
              >
                {text}
              </text>
            ))}
          </g>
        ))}
        {read === undefined ? null : (
          <path
            className="trend-read"
            d={`M${x(wallClock(read.at))} ${(tops[0] ?? 0) - 4} V${height - axis}`}
          />
        )}
        {drag === null ? null : (
          <rect
            className="trend-part"
            x={Math.min(x(drag.from), x(drag.to))}
            width={Math.abs(x(drag.to) - x(drag.from))}
            y={tops[0] ?? 0}
            height={height - axis - (tops[0] ?? 0)}
          />
        )}
      </svg>
    </div>
  );
}

type BandProps = {
  readonly band: DrawnBand;
  readonly top: number;
  readonly width: number;
  readonly x: (time: number) => number;
  readonly rounds: readonly TrendRound[];
  readonly title: string;
};

function Band({ band, top, width, x, rounds, title }: BandProps) {
  const { words } = useApp();
  const [low, high] = band.range;
  const scale = scaleLinear()
    .domain([low, high])
    .range([top + band.height, top]);
  const y = (kept: number) => scale(band.onScale(kept));
  const steps = Array.from(
    { length: Math.round((high - low) / band.step) + 1 },
    (_, at) => low + at * band.step,
  );
  const isHeld = ({ value }: TrendPoint) => band.holds.includes(value.of);
  return (
    <g>
      <text className="trend-title" x={0} y={top - 16}>
        {title}
      </text>
      {steps.map((step) => (
        <g key={step}>
          <path className="trend-rule" d={`M${LEFT} ${scale(step)} H${width - RIGHT}`} />
          <text className="trend-step" x={LEFT - 7} y={scale(step) + 4} textAnchor="end">
            {words.say.short(step)}
          </text>
        </g>
      ))}
      <path className="trend-line" d={lineOf(rounds, band, x, y)} />
      {rounds.map((round) => (
        <g key={round.round}>
          {round.points.filter(isHeld).map((point) => (
            <Mark
              key={point.entry}
              value={point.value}
              x={x(wallClock(point.at))}
              y={y}
              weight={
                round.isNotReliedOn || (round.average !== null && point.value.of === 'pressure')
                  ? 'thin'
                  : 'plain'
              }
              isStruck={round.isNotReliedOn && (round.average === null || point.value.of !== 'pressure')}
              isElsewhere={round.elsewhere !== null}
              isDoubtful={isDoubtful(point)}
            />
          ))}
          {round.average === null || !band.holds.includes('pressure') ? null : (
            <Mark
              value={drawnAverage(round.average)}
              x={x(wallClock(timeOfAverage(round)))}
              y={y}
              weight={round.isNotReliedOn ? 'thin' : 'bold'}
              isStruck={round.isNotReliedOn}
              isDoubtful={round.points.some(
                ({ entry, failedGauge }) => failedGauge !== null && round.average?.used.includes(entry),
              )}
            />
          )}
        </g>
      ))}
    </g>
  );
}

/** Whether a value is drawn as one that is not like the others: of another site, of a gauge that failed, one of several claims. */
function isDoubtful({ isContested, failedGauge, value }: TrendPoint): boolean {
  return isContested || failedGauge !== null || (value.of === 'pressure' && !value.isAveraged);
}

/** An average stands at the last of its own readings: what was taken on the feet after them is none of it. */
function timeOfAverage({ points, average, at }: TrendRound): string {
  const pressures = points.filter(({ value }) => value.of === 'pressure');
  const own = pressures.findLast(({ entry }) => average?.used.includes(entry));
  return (own ?? pressures.at(-1))?.at ?? at;
}

/**
 * Joins what was taken here, is one number at a time and was not refused by a supervisor, from round to round; pressures are
 * joined to their diastolic only.
 */
function lineOf(
  rounds: readonly TrendRound[],
  band: DrawnBand,
  x: (time: number) => number,
  y: (number: number) => number,
) {
  const taken = rounds.filter((round) => round.elsewhere === null && !round.isNotReliedOn);
  const points = taken.flatMap((round) =>
    round.points.filter(({ value }) => value.of !== 'pressure' && band.holds.includes(value.of)),
  );
  return points
    .flatMap(({ at, value }) => numbersOf(value).map((number) => [x(wallClock(at)), y(number)]))
    .map(([left, top], index) => `${index === 0 ? 'M' : 'L'}${left} ${top}`)
    .join(' ');
}

function topsOf(bands: readonly DrawnBand[]): number[] {
  let next = TITLE;
  return bands.map(({ height }) => {
    const top = next;
    next = top + height + BAND_GAP;
    return top;
  });
}

/** How wide an element is, px, as long as it is shown. */
function useWidth(of: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(640);
  useLayoutEffect(() => {
    const { current } = of;
    if (current === null) return;
    const measure = () => setWidth(Math.max(Math.round(current.clientWidth), 240));
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(current);
    return () => watch.disconnect();
  }, [of]);
  return width;
}
