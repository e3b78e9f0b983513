import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER } from './paint.js';
import { label, line } from './parts.js';
import { SCREEN_TEXT } from './screenText.js';

/** A count on what there was to be counted. Times are seconds of the visit. */
export type CountDrawn = {
  readonly of: 'pulse' | 'apex' | 'breaths';
  readonly startSeconds: number;
  readonly windowSeconds: number;
  /** Each beat or breath, in order, from a little before the window to a little after it. */
  readonly events: readonly number[];
  readonly n: number;
  readonly there: number;
};

const USUAL: Drawing = { id: 'count', width: 640, height: 110, paint: PAPER };
const MARGIN = { left: 12, right: 12, top: 22, bottom: 40 } as const;
/** Half the height of a stroke, in the window and outside it. */
const STROKE = { within: 20, outside: 12 } as const;
/** Numbers of strokes stand no closer than this. */
const NUMBER_WIDTH = 20;
const STEPS_SECONDS = [5, 10, 15, 30] as const;
const LEAST_STEP_WIDTH = 44;

/** The window of a count with each beat or breath in it and about it. */
export function countFigure(count: CountDrawn, words: Words, how: Partial<Drawing> = {}): Figure {
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const { of, startSeconds, windowSeconds, n, there } = count;
  const events = count.events.map((at) => at - startSeconds);
  const from = Math.min(0, ...events);
  const to = Math.max(windowSeconds, ...events);
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const bottom = height - MARGIN.bottom;
  const middle = (top + bottom) / 2;
  const x = scaleLinear([from, to], [left, right]);
  const step =
    STEPS_SECONDS.find((one) => x(one) - x(0) >= LEAST_STEP_WIDTH) ?? (STEPS_SECONDS.at(-1) as number);
  const ticks = Array.from({ length: Math.floor(windowSeconds / step) + 1 }, (_, k) => k * step);
  const isWithin = (at: number) => at >= 0 && at < windowSeconds;
  const first = events.findIndex(isWithin);
  const numberOf = (k: number) => k - first + 1;
  const closest = Math.min(...events.slice(1).map((at, k) => x(at) - x(events[k] as number)));
  const every = Math.max(1, Math.ceil(NUMBER_WIDTH / Math.max(1, closest)));
  const title = words.sentence(`counts.figure-${of}`);
  const description = words.sentence('counts.figureSays', { windowSeconds, there, n });
  const seconds = (at: number) => words.say.number(at, 1);
  const says = (at: number, k: number) =>
    isWithin(at)
      ? words.sentence(`counts.strokeIn-${of}`, { number: numberOf(k), seconds: seconds(at) })
      : words.sentence('counts.strokeOut', { seconds: seconds(at) });
  const svg = drawn(drawing, title, description, words.say.locale, [
    element('rect', {
      x: x(0),
      y: top - 2,
      width: x(windowSeconds) - x(0),
      height: bottom - top + 4,
      fill: paint.shade,
      class: 'figure-band',
    }),
    line([left, bottom + 2, right, bottom + 2], paint.grid, 0.6, null, 'figure-axis'),
    ...[0, windowSeconds].map((at) =>
      line([x(at), top - 2, x(at), bottom + 6], paint.ink, 0.9, null, 'figure-window'),
    ),
    ...ticks.map((at) =>
      label(words.say.number(at), x(at), bottom + 17, paint, { anchor: 'middle', size: SCREEN_TEXT.small }),
    ),
    ...events.flatMap((at, k) => {
      const is = isWithin(at);
      const half = is ? STROKE.within : STROKE.outside;
      const stroke = line(
        [x(at), middle - half, x(at), middle + half],
        is ? paint.ink : paint.muted,
        is ? 1.6 : 1,
        null,
        `figure-stroke key-stroke-${k}`,
      );
      const isNumbered = is && (numberOf(k) - 1) % every === 0;
      return isNumbered
        ? [
            stroke,
            label(words.say.number(numberOf(k)), x(at), top - 7, paint, {
              anchor: 'middle',
              size: SCREEN_TEXT.small,
              isMuted: true,
            }),
          ]
        : [stroke];
    }),
    label(words.sentence('counts.axis'), (left + right) / 2, height - 6, paint, {
      anchor: 'middle',
      size: SCREEN_TEXT.small,
      isMuted: true,
    }),
  ]);
  const marks: Mark[] = events.map((at, k) => ({
    key: `stroke-${k}`,
    index: null,
    x: x(at),
    y: middle,
    text: says(at, k),
    isUsed: isWithin(at),
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
      columns: [words.sentence('counts.tableNumber'), words.sentence('counts.tableSeconds')],
      rows: events.map((at, k) => [isWithin(at) ? words.say.number(numberOf(k)) : '-', seconds(at)]),
    },
  };
}
