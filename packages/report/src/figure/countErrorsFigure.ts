import type { Words } from '@evenfall/words';
import { element, type Svg } from '../svg/svg.js';
import type { Drawing, Figure } from './figure.js';
import { errorsOverTime } from './overTime.js';
import { PAPER, type Paint } from './paint.js';

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
const SCALE = { step: 5, least: 9, most: 40, coarseOver: 20 } as const;
const BESIDE: Readonly<Record<Sign, number>> = { pulse: -8, apex: 0, breaths: 8 };
const HALF = 3.4;

/** The errors of one person's counts in the order in which the exercises were made. */
export function countErrorsFigure(
  errors: readonly CountErrorsDrawn[],
  words: Words,
  how: Partial<Drawing> = {},
): Figure {
  const drawing = { ...USUAL, ...how };
  const title = words.sentence('counts.errorsFigure');
  const signed = (perMinute: number) => words.sentence('counts.signed', { perMinute });
  const says = (one: CountErrorsDrawn) => {
    const all = SIGNS.flatMap((sign) => {
      const error = one[sign];
      if (error === null) return [];
      const what = words.sentence(`counts.name-${sign}`);
      return [words.sentence('counts.errorOf', { what, perMinute: error.perMinute })];
    });
    return words.sentence('counts.errorSays', { name: one.name, text: all.join(', ') });
  };
  const columns = errors.map((one) => {
    const values = SIGNS.flatMap((sign) => (one[sign] === null ? [] : [one[sign].perMinute]));
    return {
      key: one.key,
      number: one.number,
      values,
      at: values[0] ?? 0,
      within: null,
      says: says(one),
      shapes: (x: number, y: (perMinute: number) => number) =>
        SIGNS.flatMap((sign) => {
          const error = one[sign];
          if (error === null) return [];
          const at = y(error.perMinute);
          return [shape(sign, x + BESIDE[sign], at, error.isAccepted, drawing.paint, one.key)];
        }),
    };
  });
  const table = {
    caption: title,
    columns: [
      words.sentence('debrief.exerciseColumn'),
      words.sentence('counts.columnPulse'),
      words.sentence('counts.columnApex'),
      words.sentence('counts.columnBreaths'),
    ],
    rows: errors.map((one) => [
      one.name,
      ...SIGNS.map((sign) => (one[sign] === null ? '-' : signed(one[sign].perMinute))),
    ]),
  };
  return errorsOverTime(
    columns,
    {
      ...SCALE,
      title,
      description: errors.slice(-3).map(says).join(' '),
      axis: words.sentence('counts.errorAxis'),
      signed,
      table,
    },
    words,
    drawing,
  );
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
