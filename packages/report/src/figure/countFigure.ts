import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER, type Paint } from './paint.js';
import { label, line } from './parts.js';
import { SCREEN_TEXT } from './screenText.js';

/** What an observer made of a window: a number; or a tap for each, with those there were to be tapped and those that have no tap. */
type Yours =
  | { readonly of: 'number'; readonly n: number }
  | {
      readonly of: 'taps';
      readonly taps: readonly { readonly atSeconds: number; readonly isExtra: boolean }[];
      readonly wanted: readonly number[];
      readonly missed: readonly number[];
    };

/** A count on what there was to be counted. Times are seconds of the visit. */
export type CountDrawn = {
  readonly of: 'pulse' | 'apex' | 'breaths';
  readonly startSeconds: number;
  readonly windowSeconds: number;
  /** Each beat or breath, in order, from a little before the window to a little after it. */
  readonly events: readonly number[];
  readonly there: number;
  readonly yours: Yours;
};

const USUAL: Drawing = { id: 'count', width: 640, height: 132, paint: PAPER };
const MARGIN = { left: 12, right: 12, top: 22, bottom: 62 } as const;
/** Half the height of a stroke, in the window and outside it. */
const STROKE = { within: 20, outside: 12 } as const;
/** What the observer did stands in a row of its own, so far under the strokes. */
const YOURS = { under: 14, half: 5 } as const;
/** Numbers of strokes stand no closer than this. */
const NUMBER_WIDTH = 20;
const STEPS_SECONDS = [5, 10, 15, 30] as const;
const LEAST_STEP_WIDTH = 44;
/** Room for what was counted, beside its mark. */
const COUNTED_WIDTH = 110;

/** The window of a count with each beat or breath in it and about it, and in a row below them what the observer made of it. */
export function countFigure(count: CountDrawn, words: Words, how: Partial<Drawing> = {}): Figure {
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const { of, startSeconds, windowSeconds, yours } = count;
  const events = eventsOf(count);
  const taps = yours.of === 'taps' ? yours.taps : [];
  const since = (atSeconds: number) => atSeconds - startSeconds;
  const from = Math.min(0, ...events.map(({ at }) => at));
  const to = Math.max(windowSeconds, ...events.map(({ at }) => at));
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const bottom = height - MARGIN.bottom;
  const middle = (top + bottom) / 2;
  const row = bottom + YOURS.under;
  const foot = row + YOURS.half + 3;
  const x = scaleLinear([from, to], [left, right]);
  const step =
    STEPS_SECONDS.find((one) => x(one) - x(0) >= LEAST_STEP_WIDTH) ?? (STEPS_SECONDS.at(-1) as number);
  const ticks = Array.from({ length: Math.floor(windowSeconds / step) + 1 }, (_, k) => k * step);
  const closest = Math.min(...events.slice(1).map(({ at }, k) => x(at) - x(events[k]?.at ?? 0)));
  const every = Math.max(1, Math.ceil(NUMBER_WIDTH / Math.max(1, closest)));
  const title = words.sentence(`counts.figure-${of}`);
  const description = descriptionOf(count, words);
  const svg = drawn(drawing, title, description, words.say.locale, [
    element('rect', {
      x: x(0),
      y: top - 2,
      width: x(windowSeconds) - x(0),
      height: foot - top + 2,
      fill: paint.shade,
      class: 'figure-band',
    }),
    line([left, foot, right, foot], paint.grid, 0.6, null, 'figure-axis'),
    ...[0, windowSeconds].map((at) =>
      line([x(at), top - 2, x(at), foot + 4], paint.ink, 0.9, null, 'figure-window'),
    ),
    ...ticks.map((at) =>
      label(words.say.number(at), x(at), foot + 15, paint, { anchor: 'middle', size: SCREEN_TEXT.small }),
    ),
    ...events.flatMap(({ at, number }, k) => {
      const half = number === null ? STROKE.outside : STROKE.within;
      const stroke = line(
        [x(at), middle - half, x(at), middle + half],
        number === null ? paint.muted : paint.ink,
        number === null ? 1 : 1.6,
        null,
        `figure-stroke key-stroke-${k}`,
      );
      return number !== null && (number - 1) % every === 0
        ? [stroke, small(words.say.number(number), x(at), top - 7, paint)]
        : [stroke];
    }),
    ...events.flatMap(({ at, isMissed }) => (isMissed ? [cross(x(at), row, paint)] : [])),
    ...taps.map(({ atSeconds, isExtra }, k) => arrow(x(since(atSeconds)), row, !isExtra, paint, `tap-${k}`)),
    ...(yours.of === 'number' ? countedTo(yours.n) : []),
    small(
      words.sentence(yours.of === 'taps' ? 'counts.axisTaps' : 'counts.axis'),
      (left + right) / 2,
      height - 6,
      paint,
    ),
  ]);

  /** Where a count of every one from the start on would have come to that number. */
  function countedTo(n: number): Svg[] {
    const last = events.find(({ number }) => number === n)?.at ?? windowSeconds;
    const hasRoom = x(last) - left > COUNTED_WIDTH;
    const beside = hasRoom ? -YOURS.half - 4 : YOURS.half + 4;
    return [
      arrow(x(last), row, true, paint, 'counted'),
      label(words.sentence('counts.youCounted', { n }), x(last) + beside, row + 4, paint, {
        anchor: hasRoom ? 'end' : 'start',
        size: SCREEN_TEXT.small,
      }),
    ];
  }

  const seconds = (at: number) => words.say.number(at, 1);
  const shown = [
    ...events.map(({ at, number, isMissed }, k) => ({
      key: `stroke-${k}`,
      at,
      y: middle,
      isUsed: number !== null,
      text:
        number === null
          ? words.sentence('counts.strokeOut', { seconds: seconds(at) })
          : [
              words.sentence(`counts.strokeIn-${of}`, { number, seconds: seconds(at) }),
              ...(isMissed ? [words.sentence('counts.noTap')] : []),
            ].join('; '),
      cells: [number === null ? '-' : words.say.number(number), seconds(at)],
      yours: isMissed ? words.sentence('counts.noTap') : '-',
    })),
    ...taps.map(({ atSeconds, isExtra }, k) => ({
      key: `tap-${k}`,
      at: since(atSeconds),
      y: row,
      isUsed: !isExtra,
      text: words.sentence(isExtra ? 'counts.tapExtra' : 'counts.tap', {
        number: k + 1,
        seconds: seconds(since(atSeconds)),
      }),
      cells: ['-', seconds(since(atSeconds))],
      yours: words.sentence(isExtra ? 'counts.tableExtra' : 'counts.tableTap', { number: k + 1 }),
    })),
  ].toSorted((a, b) => a.at - b.at);
  const marks: Mark[] = shown.map(({ key, at, y, isUsed, text }) => ({
    key,
    index: null,
    x: x(at),
    y,
    text,
    isUsed,
  }));
  return {
    svg,
    width,
    height,
    title,
    description,
    marks,
    table: {
      caption: title,
      columns: [
        words.sentence('counts.tableNumber'),
        words.sentence('counts.tableSeconds'),
        ...(yours.of === 'taps' ? [words.sentence('counts.tableYours')] : []),
      ],
      rows: shown.map((one) => (yours.of === 'taps' ? [...one.cells, one.yours] : one.cells)),
    },
  };
}

type Event = {
  /** Seconds from the start of the window. */
  readonly at: number;
  /** Its number among those that were to be counted; null: none of them. */
  readonly number: number | null;
  readonly isMissed: boolean;
};

function eventsOf({ events, startSeconds, windowSeconds, yours }: CountDrawn): Event[] {
  const isWanted = (seconds: number) =>
    yours.of === 'taps'
      ? yours.wanted.includes(seconds)
      : seconds >= startSeconds && seconds < startSeconds + windowSeconds;
  const first = events.findIndex(isWanted);
  return events.map((seconds, k) => ({
    at: seconds - startSeconds,
    number: isWanted(seconds) ? k - first + 1 : null,
    isMissed: yours.of === 'taps' && yours.missed.includes(seconds),
  }));
}

function descriptionOf({ windowSeconds, there, yours }: CountDrawn, words: Words): string {
  return yours.of === 'number'
    ? words.sentence('counts.figureSays', { windowSeconds, there, n: yours.n })
    : words.sentence('counts.tapped', {
        taps: yours.taps.length,
        there,
        missed: yours.missed.length,
        extra: yours.taps.filter(({ isExtra }) => isExtra).length,
      });
}

function small(text: string, x: number, y: number, paint: Paint): Svg {
  return label(text, x, y, paint, { anchor: 'middle', size: SCREEN_TEXT.small, isMuted: true });
}

/** What the observer did, pointing up at what it was of; open where it was of nothing. */
function arrow(x: number, y: number, isFilled: boolean, paint: Paint, key: string): Svg {
  const { half } = YOURS;
  return element('path', {
    class: `figure-tap key-${key}`,
    d: `M${x} ${y - half} l${half} ${2 * half} h${-2 * half} Z`,
    fill: isFilled ? paint.ink : paint.ground,
    stroke: paint.ink,
    'stroke-width': 1.1,
  });
}

function cross(x: number, y: number, paint: Paint): Svg {
  const half = YOURS.half - 1;
  return element('path', {
    class: 'figure-missed',
    d: `M${x - half} ${y - half} l${2 * half} ${2 * half} m0 ${-2 * half} l${-2 * half} ${2 * half}`,
    fill: 'none',
    stroke: paint.ink,
    'stroke-width': 1.4,
  });
}
