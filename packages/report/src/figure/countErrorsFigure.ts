import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER, type Paint } from './paint.js';
import { label, line } from './parts.js';
import { SCREEN_DROP, SCREEN_TEXT } from './screenText.js';

/** How far one count was off, a minute, and whether that is accepted. */
type CountError = { readonly perMinute: number; readonly isAccepted: boolean };

/** The counts of one exercise; null: not counted. `number` is its place in the list beside the figure. */
export type CountErrorsDrawn = {
  readonly key: string;
  readonly number: number;
  readonly name: string;
  readonly pulse: CountError | null;
  readonly apex: CountError | null;
  readonly breaths: CountError | null;
};

const SIGNS = ['pulse', 'apex', 'breaths'] as const;
type Sign = (typeof SIGNS)[number];
const USUAL: Drawing = { id: 'count-errors', width: 640, height: 220, paint: PAPER };
const MARGIN = { left: 54, right: 12, top: 14, bottom: 30 } as const;
const NUMBER_WIDTH = 20;
const STEP_PER_MINUTE = 5;
const LEAST_PER_MINUTE = 9;
/** What is further off stands at the edge and its number says it. */
const MOST_PER_MINUTE = 40;
const MOST_COLUMN = 72;
const BESIDE: Readonly<Record<Sign, number>> = { pulse: -8, apex: 0, breaths: 8 };
const HALF = 3.4;

/** The errors of one person's counts in the order in which the exercises were made. */
export function countErrorsFigure(
  errors: readonly CountErrorsDrawn[],
  words: Words,
  how: Partial<Drawing> = {},
): Figure {
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const bottom = height - MARGIN.bottom;
  const values = errors.flatMap((one) => SIGNS.map((sign) => Math.abs(one[sign]?.perMinute ?? 0)));
  const furthest = Math.min(MOST_PER_MINUTE, Math.max(LEAST_PER_MINUTE, ...values));
  const limit = STEP_PER_MINUTE * Math.ceil((furthest + 1) / STEP_PER_MINUTE);
  const y = scaleLinear([-limit, limit], [bottom, top]).clamp(true);
  const column = Math.min(MOST_COLUMN, (right - left) / Math.max(1, errors.length));
  const x = (k: number) => left + column * (k + 0.5);
  const every = Math.max(1, Math.ceil(NUMBER_WIDTH / column));
  const step = limit > 20 ? 2 * STEP_PER_MINUTE : STEP_PER_MINUTE;
  const grid: Svg[] = [];
  for (let perMinute = -step * Math.floor(limit / step); perMinute <= limit; perMinute += step) {
    grid.push(line([left, y(perMinute), right, y(perMinute)], paint.grid, 0.6, null, 'figure-grid'));
    const text = words.sentence('counts.signed', { perMinute });
    grid.push(
      label(text, left - 5, y(perMinute) + SCREEN_DROP, paint, { anchor: 'end', size: SCREEN_TEXT.small }),
    );
  }
  const title = words.sentence('counts.errorsFigure');
  const says = (one: CountErrorsDrawn) => {
    const all = SIGNS.flatMap((sign) => {
      const error = one[sign];
      if (error === null) return [];
      const what = words.sentence(`counts.name-${sign}`);
      return [words.sentence('counts.errorOf', { what, perMinute: error.perMinute })];
    });
    return words.sentence('counts.errorSays', { name: one.name, text: all.join(', ') });
  };
  const description = errors.slice(-3).map(says).join(' ');
  const svg = drawn(drawing, title, description, words.say.locale, [
    ...grid,
    line([left, y(0), right, y(0)], paint.ink, 1, null, 'figure-axis'),
    ...errors.flatMap(({ number }, k) =>
      (errors.length - 1 - k) % every === 0
        ? [
            label(words.sentence('debrief.errorNumber', { number }), x(k), bottom + 20, paint, {
              anchor: 'middle',
              size: SCREEN_TEXT.small,
            }),
          ]
        : [],
    ),
    ...errors.flatMap((one, k) =>
      SIGNS.flatMap((sign) => {
        const error = one[sign];
        if (error === null) return [];
        return [shape(sign, x(k) + BESIDE[sign], y(error.perMinute), error.isAccepted, paint, one.key)];
      }),
    ),
    label(words.sentence('counts.errorAxis'), 14, (top + bottom) / 2, paint, {
      anchor: 'middle',
      size: SCREEN_TEXT.usual,
      turned: true,
    }),
  ]);
  const marks: Mark[] = errors.map((one, k) => ({
    key: one.key,
    index: null,
    x: x(k),
    y: y((one.pulse ?? one.apex ?? one.breaths)?.perMinute ?? 0),
    text: says(one),
    isUsed: true,
  }));
  const cell = (error: CountError | null) =>
    error === null ? '-' : words.sentence('counts.signed', { perMinute: error.perMinute });
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
        words.sentence('counts.columnPulse'),
        words.sentence('counts.columnApex'),
        words.sentence('counts.columnBreaths'),
      ],
      rows: errors.map((one) => [one.name, ...SIGNS.map((sign) => cell(one[sign]))]),
    },
  };
}

/** A circle for what is counted of the heart, larger at the apex; a square for breaths; filled where it is accepted. */
function shape(sign: Sign, x: number, y: number, isFilled: boolean, paint: Paint, key: string): Svg {
  const look = {
    class: `figure-mark is-${sign} key-${key}`,
    fill: isFilled ? paint.ink : paint.ground,
    stroke: paint.ink,
    'stroke-width': 1.1,
  };
  if (sign === 'breaths')
    return element('rect', { x: x - HALF, y: y - HALF, width: 2 * HALF, height: 2 * HALF, ...look });
  return element('circle', { cx: x, cy: y, r: sign === 'apex' ? HALF + 1.6 : HALF, ...look });
}
