import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { label, line } from './parts.js';
import { SCREEN_DROP, SCREEN_TEXT } from './screenText.js';

/** One exercise in a figure of errors over time. */
export type ErrorColumn = {
  readonly key: string;
  /** Its place in the list beside the figure. */
  readonly number: number;
  /** How far off each of its numbers is. */
  readonly values: readonly number[];
  /** Where it is read out, in the unit of the values. */
  readonly at: number;
  /** So far to either side is accepted; null: not drawn. */
  readonly within: number | null;
  readonly says: string;
  readonly shapes: (x: number, y: (value: number) => number) => readonly Svg[];
};

/** What differs from one kind of number to another. */
export type ErrorKind = {
  readonly title: string;
  readonly description: string;
  readonly axis: string;
  /** A value with its sign, as it stands at the scale. */
  readonly signed: (value: number) => string;
  readonly step: number;
  /** The scale reaches at least so far, and at most: what is further off stands at the edge and its number says it. */
  readonly least: number;
  readonly most: number;
  /** Over this only every second step has a line. */
  readonly coarseOver: number;
  readonly table: Figure['table'];
};

const MARGIN = { left: 54, right: 12, top: 14, bottom: 30 } as const;
/** Numbers of columns stand no closer than this. */
const NUMBER_WIDTH = 20;
const MOST_COLUMN = 72;

/** Errors of one person's exercises in the order in which they were made, above and below a line of none. */
export function errorsOverTime(
  columns: readonly ErrorColumn[],
  kind: ErrorKind,
  words: Words,
  drawing: Drawing,
): Figure {
  const { width, height, paint } = drawing;
  const { title, description } = kind;
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const bottom = height - MARGIN.bottom;
  const reach = columns.flatMap(({ values, within }) => [...values.map(Math.abs), within ?? 0]);
  const furthest = Math.min(kind.most, Math.max(kind.least, ...reach));
  const limit = kind.step * Math.ceil((furthest + 1) / kind.step);
  const y = scaleLinear([-limit, limit], [bottom, top]).clamp(true);
  const column = Math.min(MOST_COLUMN, (right - left) / Math.max(1, columns.length));
  const x = (k: number) => left + column * (k + 0.5);
  const every = Math.max(1, Math.ceil(NUMBER_WIDTH / column));
  const step = limit > kind.coarseOver ? 2 * kind.step : kind.step;
  const grid: Svg[] = [];
  for (let value = -step * Math.floor(limit / step); value <= limit; value += step) {
    grid.push(line([left, y(value), right, y(value)], paint.grid, 0.6, null, 'figure-grid'));
    grid.push(
      label(kind.signed(value), left - 5, y(value) + SCREEN_DROP, paint, {
        anchor: 'end',
        size: SCREEN_TEXT.small,
      }),
    );
  }
  const last = columns.length - 1;
  const svg = drawn(drawing, title, description, words.say.locale, [
    ...columns.flatMap(({ within }, k) =>
      within === null
        ? []
        : [
            element('rect', {
              x: x(k) - column / 2,
              y: y(within),
              width: k === last ? right - x(k) + column / 2 : column,
              height: y(-within) - y(within),
              fill: paint.shade,
              class: 'figure-band',
            }),
          ],
    ),
    ...grid,
    line([left, y(0), right, y(0)], paint.ink, 1, null, 'figure-axis'),
    ...columns.flatMap(({ number }, k) =>
      (last - k) % every === 0
        ? [
            label(words.sentence('debrief.errorNumber', { number }), x(k), bottom + 20, paint, {
              anchor: 'middle',
              size: SCREEN_TEXT.small,
            }),
          ]
        : [],
    ),
    ...columns.flatMap(({ shapes }, k) => shapes(x(k), y)),
    label(kind.axis, 14, (top + bottom) / 2, paint, {
      anchor: 'middle',
      size: SCREEN_TEXT.usual,
      turned: true,
    }),
  ]);
  const marks: Mark[] = columns.map(({ key, at, says }, k) => ({
    key,
    index: null,
    x: x(k),
    y: y(at),
    text: says,
    isUsed: true,
  }));
  return { svg, width, height, title, description, marks, table: kind.table };
}
