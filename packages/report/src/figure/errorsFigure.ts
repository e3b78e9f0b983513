import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER } from './paint.js';
import { label, line, markShape } from './parts.js';
import { SCREEN_DROP, SCREEN_TEXT } from './screenText.js';

/** What became of one exercise, mmHg over (under 0: below) what was to be had; null: no number. `name` says which and when. */
export type ErrorDrawn = {
  readonly key: string;
  /** Its place in the list beside the figure; absent: in the order of the figure. */
  readonly number?: number;
  readonly name: string;
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly withinMmHg: number;
  readonly isAccepted: { readonly systolic: boolean | null; readonly diastolic: boolean | null };
};

/** Whether all that was written is accepted; null: nothing was. */
function bothOf({ systolic, diastolic }: ErrorDrawn['isAccepted']): boolean | null {
  return systolic === null && diastolic === null ? null : systolic !== false && diastolic !== false;
}

const USUAL: Drawing = { id: 'errors', width: 640, height: 240, paint: PAPER };
const MARGIN = { left: 54, right: 12, top: 14, bottom: 30 } as const;
/** Numbers of columns stand no closer than this. */
const NUMBER_WIDTH = 20;
const LEAST_MMHG = 15;
const STEP_MMHG = 5;
/** Most of an error that is drawn to scale; what is further off stands at the edge and its number says it. */
const MOST_MMHG = 40;
const COLUMN = { most: 72, beside: 5 } as const;

/** The errors of one person's exercises in the order in which they were made, each in the band in which it is accepted. */
export function errorsFigure(
  errors: readonly ErrorDrawn[],
  words: Words,
  how: Partial<Drawing> = {},
): Figure {
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const bottom = height - MARGIN.bottom;
  const values = errors
    .flatMap(({ systolic, diastolic }) => [systolic, diastolic])
    .filter((one) => one !== null);
  const furthest = Math.min(
    MOST_MMHG,
    Math.max(LEAST_MMHG, ...values.map(Math.abs), ...errors.map((one) => one.withinMmHg)),
  );
  const limit = STEP_MMHG * Math.ceil((furthest + 1) / STEP_MMHG);
  const y = scaleLinear([-limit, limit], [bottom, top]).clamp(true);
  const column = Math.min(COLUMN.most, (right - left) / Math.max(1, errors.length));
  const x = (k: number) => left + column * (k + 0.5);
  const every = Math.max(1, Math.ceil(NUMBER_WIDTH / column));
  const step = limit > 25 ? 2 * STEP_MMHG : STEP_MMHG;
  const grid: Svg[] = [];
  for (let mmHg = -step * Math.floor(limit / step); mmHg <= limit; mmHg += step) {
    grid.push(line([left, y(mmHg), right, y(mmHg)], paint.grid, 0.6, null, 'figure-grid'));
    grid.push(
      label(words.sentence('debrief.signedWhole', { mmHg }), left - 5, y(mmHg) + SCREEN_DROP, paint, {
        anchor: 'end',
        size: SCREEN_TEXT.small,
      }),
    );
  }
  const title = words.sentence('debrief.errorsFigure');
  const says = ({ name, systolic, diastolic, withinMmHg }: ErrorDrawn) =>
    words.sentence('debrief.errorSays', { name, systolic, diastolic, withinMmHg });
  const description = [
    words.sentence('debrief.errorsSays', { exercises: errors.length }),
    ...errors.slice(-3).map(says),
  ].join(' ');
  const svg = drawn(drawing, title, description, words.say.locale, [
    ...errors.map(({ withinMmHg }, k) =>
      element('rect', {
        x: x(k) - column / 2,
        y: y(withinMmHg),
        width: k === errors.length - 1 ? right - x(k) + column / 2 : column,
        height: y(-withinMmHg) - y(withinMmHg),
        fill: paint.shade,
        class: 'figure-band',
      }),
    ),
    ...grid,
    line([left, y(0), right, y(0)], paint.ink, 1, null, 'figure-axis'),
    ...errors.flatMap((one, k) =>
      (errors.length - 1 - k) % every === 0
        ? [
            label(
              words.sentence('debrief.errorNumber', { number: one.number ?? k + 1 }),
              x(k),
              bottom + 20,
              paint,
              {
                anchor: 'middle',
                size: SCREEN_TEXT.small,
              },
            ),
          ]
        : [],
    ),
    ...errors.flatMap(({ key: name, systolic, diastolic, withinMmHg }, k) => [
      ...(systolic === null
        ? []
        : [
            markShape(
              'systolic',
              x(k) - COLUMN.beside,
              y(systolic),
              Math.abs(systolic) <= withinMmHg,
              paint,
              name,
            ),
          ]),
      ...(diastolic === null
        ? []
        : [
            markShape(
              'diastolic',
              x(k) + COLUMN.beside,
              y(diastolic),
              Math.abs(diastolic) <= withinMmHg,
              paint,
              name,
            ),
          ]),
      ...(systolic === null && diastolic === null ? [markShape('cross', x(k), y(0), true, paint, name)] : []),
    ]),
    label(words.sentence('debrief.errorAxis'), 14, (top + bottom) / 2, paint, {
      anchor: 'middle',
      size: SCREEN_TEXT.usual,
      turned: true,
    }),
  ]);
  const marks: Mark[] = errors.map((one, k) => ({
    key: one.key,
    index: null,
    x: x(k),
    y: y(one.systolic ?? one.diastolic ?? 0),
    text: says(one),
    isUsed: true,
  }));
  const signed = (mmHg: number | null) => (mmHg === null ? '-' : words.sentence('debrief.signed', { mmHg }));
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
        words.sentence('debrief.exerciseColumn'),
        words.sentence('debrief.systolicError'),
        words.sentence('debrief.diastolicError'),
        words.sentence('debrief.bandColumn'),
      ],
      rows: errors.map((one) => [
        one.name,
        signed(one.systolic),
        signed(one.diastolic),
        words.sentence('debrief.band', { withinMmHg: one.withinMmHg, isAccepted: bothOf(one.isAccepted) }),
      ]),
    },
  };
}
