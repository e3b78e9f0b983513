import type { Drawing, Figure, Paint } from '@evenfall/report';
import { type PointerEvent, useEffect, useId, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { useIsPrinting } from '../chart/useIsPrinting.js';
import { FigureTable } from './FigureTable.js';

/** The colours of the page, which on paper and in the dark are others. */
const SCREEN: Paint = {
  ink: 'var(--ink)',
  muted: 'var(--ink-soft)',
  grid: 'var(--rule)',
  shade: 'var(--paper-sunk)',
  ground: 'var(--paper)',
  font: 'var(--sans)',
};

type ShownProps = {
  readonly name: string;
  readonly draw: (how: Partial<Drawing>) => Figure;
  readonly height: number;
  /** Narrower than this it scrolls in its frame. */
  readonly leastWidth?: number;
  readonly mostWidth?: number;
  /** Pixels to a unit on a phone and a laptop; 1 if absent. */
  readonly leastScale?: number;
  /** Drawn to the shape of a place that has a height of its own, between its least and its most width; not where it scrolls. */
  readonly fills?: boolean;
  /** Whether its numbers stand under it as a table, where no other one of the page has them. */
  readonly hasTable?: boolean;
  /**
   * How it is drawn for paper, in units that stand over the width there; as on the screen if absent. Of several heights, the highest
   * first, the style sheet shows the one that the sheet has room for.
   */
  readonly onPaper?: { readonly width: number; readonly heights: readonly number[] };
};

/** The smallest lettering of a figure is 8.5 units: 12 px on a screen on which it scrolls. */
const SCROLLED_SCALE = 1.4;
const USUAL_WIDTH = 640;
/** The size of type on a laptop, in pixels. */
const USUAL_ROOT = 17;

/** A figure as wide as its place; a pointer or the keys along the line below it read it out. */
export function FigureShown({
  name,
  draw,
  height,
  leastWidth = 320,
  mostWidth = USUAL_WIDTH * 2,
  leastScale = 1,
  fills = false,
  hasTable = false,
  onPaper,
}: ShownProps) {
  const { words } = useApp();
  const id = useId().replaceAll(/[^\w-]/g, '');
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(USUAL_WIDTH);
  const [scale, setScale] = useState(1);
  const [isScrolled, setScrolled] = useState(false);
  const [read, setRead] = useState<string | null>(null);
  useEffect(() => {
    const place = frame.current;
    if (place === null) return;
    const measure = () => {
      // As large as the text beside it, which is larger on a projector.
      const root = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL_ROOT;
      const asText = leastScale * (Number.isFinite(root) ? Math.max(1, root) : 1);
      // What does not fit scrolls: then it may as well be large enough to read.
      const times = place.clientWidth < leastWidth * asText ? Math.max(asText, SCROLLED_SCALE) : asText;
      setScrolled(place.clientWidth < Math.floor(leastWidth * times));
      setScale(times);
      // A place with a height of its own gives the drawing its shape; the drawing is stretched to it.
      const wide =
        fills && place.clientHeight > 0
          ? (height * place.clientWidth) / place.clientHeight
          : place.clientWidth / times;
      setWidth(Math.min(mostWidth, Math.max(leastWidth, Math.floor(wide))));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(place);
    return () => watch.disconnect();
  }, [leastWidth, mostWidth, leastScale, fills, height]);
  const isPrinting = useIsPrinting();
  const isOnPaper = isPrinting && onPaper !== undefined;
  const figure = draw({ id: `${name}-${id}`, width, height, paint: SCREEN });
  const { marks, table } = figure;
  // What is drawn for a screen is no wider on paper than its height leaves it, and cannot be read there.
  const drawings = isOnPaper
    ? onPaper.heights.map(
        (high) =>
          draw({ id: `${name}-${id}-${high}`, width: onPaper.width, height: high, paint: SCREEN }).svg,
      )
    : [figure.svg];
  const drawn = drawings.join('');
  useEffect(() => {
    // Parsed as a drawing and never as a page: what a note says cannot become a part of the page.
    const parsed = new DOMParser().parseFromString(`<figures>${drawn}</figures>`, 'image/svg+xml');
    const nodes = [...parsed.documentElement.children].map((one) => document.importNode(one, true));
    if (!isOnPaper)
      for (const one of nodes) {
        one.setAttribute('width', String(width * scale));
        one.setAttribute('height', String(height * scale));
      }
    frame.current?.replaceChildren(...nodes);
  }, [drawn, isOnPaper, width, height, scale]);
  const at = marks.findIndex(({ key }) => key === read);
  const mark = marks[at];
  const key = mark?.key;
  // After every drawing: a new one carries no mark of what is read out.
  useEffect(() => {
    const place = frame.current;
    if (place === null || key === undefined) return;
    for (const one of place.querySelectorAll('.figure-read')) one.classList.remove('figure-read');
    for (const one of place.querySelectorAll(`.key-${CSS.escape(key)}`)) one.classList.add('figure-read');
  });
  const follow = (event: PointerEvent<HTMLDivElement>) => {
    const box = event.currentTarget.querySelector('svg')?.getBoundingClientRect();
    if (box === undefined || box.width === 0) return;
    // What is not of its shape stands in the middle of its box.
    const times = Math.min(box.width / width, box.height / height);
    const x = width / 2 + (event.clientX - box.left - box.width / 2) / times;
    const y = height / 2 + (event.clientY - box.top - box.height / 2) / times;
    const far = (one: (typeof marks)[number]) => (one.x - x) ** 2 + ((one.y - y) / 4) ** 2;
    const [nearest] = marks.toSorted((a, b) => far(a) - far(b));
    if (nearest !== undefined) setRead(nearest.key);
  };
  return (
    <div className={`away-figure away-figure-${name}`}>
      {isScrolled ? (
        <p className="small soft not-printed" id={`${id}-scrolls`}>
          {words.sentence('away.figureScrolls')}
        </p>
      ) : null}
      <div
        className={`away-figure-frame ${isScrolled ? 'away-figure-scrolls' : fills ? 'away-figure-fills' : ''}`}
        ref={frame}
        onPointerMove={follow}
        onPointerDown={follow}
        {...(isScrolled ? { tabIndex: 0, role: 'group', 'aria-labelledby': `${id}-scrolls` } : {})}
      />
      {marks.length === 0 ? null : (
        <div className="trend-readout not-printed">
          <label>
            <span className="small soft">{words.sentence('away.readOut')}</span>
            <input
              type="range"
              min={0}
              max={marks.length - 1}
              value={Math.max(0, at)}
              aria-valuetext={mark?.text ?? ''}
              onInput={({ currentTarget }) => setRead(marks[currentTarget.valueAsNumber]?.key ?? null)}
              onFocus={() => setRead((was) => was ?? marks[0]?.key ?? null)}
            />
          </label>
          <output className="away-says">{mark?.text ?? words.sentence('away.readOutHint')}</output>
        </div>
      )}
      {hasTable ? <FigureTable title={words.sentence('away.asTable')} table={table} /> : null}
    </div>
  );
}

/** Pixels to a unit of the figures of a series: their smallest lettering, of 8.5 units, is 11 px. */
export const SERIES_SCALE = 1.3;
