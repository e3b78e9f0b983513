import type { Words } from '@evenfall/words';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { element, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER } from './paint.js';
import { label, line, wrapped } from './parts.js';
import { SCREEN_DROP, SCREEN_TEXT } from './screenText.js';

/** One step of an error, mmHg, with its name in words. */
export type LedgerStep = { readonly key: string; readonly label: string; readonly mmHg: number };

/** How a number came from what was true to what was written: the steps sum to `entered - truth`. */
export type LedgerDrawn = {
  readonly component: 'systolic' | 'diastolic';
  readonly truth: number;
  readonly entered: number;
  readonly steps: readonly LedgerStep[];
};

const USUAL = { id: 'ledger', width: 480, paint: PAPER } as const;
const ROW = 30;
/** Between a name and the staircase. */
const NAME_GAP = 6;
/** Between the lines of a name that does not go on one. */
const NAME_LINE = 12;
const MARGIN = { right: 62, top: 10, bottom: 26 } as const;
/** Share of the width for the names; the rest is the staircase. */
const NAMES = 0.46;
const LEAST_SPAN = 10;
const BAR = 12;

/** Room that the number of a line of the scale takes, and the space beside it. */
const TICK_WIDTH = 24;

/** Lines of the scale, no closer than their numbers take room. */
function ticksOf(x: ScaleLinear<number, number>, width: number): number[] {
  for (let most = Math.max(2, Math.floor(width / TICK_WIDTH)); most > 1; most--) {
    const ticks = x.ticks(most);
    const [first = 0, second = Number.POSITIVE_INFINITY] = ticks;
    if (x(second) - x(first) >= TICK_WIDTH) return ticks;
  }
  return x.ticks(1);
}

/** How high the figure of so many steps is. */
export function ledgerHeight(steps: number): number {
  return MARGIN.top + ROW * (steps + 2) + MARGIN.bottom;
}

/**
 * An error as a staircase, from what was true down to what was written, a step for each line of the ledger: up to the right, with its
 * number. Steps that add are full, steps that take away hatched. Source: physiology handbook 1.2.
 */
export function ledgerFigure(
  { component, truth, entered, steps }: LedgerDrawn,
  words: Words,
  how: Partial<Omit<Drawing, 'height'>> = {},
): Figure {
  const drawing: Drawing = { ...USUAL, ...how, height: ledgerHeight(steps.length) };
  const { width, height, paint, id } = drawing;
  const left = Math.round(width * NAMES);
  const right = width - MARGIN.right;
  const bottom = height - MARGIN.bottom;
  let at = truth;
  const walked = steps.map((step) => {
    const from = at;
    at += step.mmHg;
    return { ...step, from, to: at };
  });
  const all = [truth, entered, ...walked.map(({ to }) => to)];
  const middle = (Math.min(...all) + Math.max(...all)) / 2;
  const half = Math.max(LEAST_SPAN, Math.max(...all) - Math.min(...all)) / 2 + 2;
  const x = scaleLinear([middle - half, middle + half], [left + 8, right]);
  const yOf = (row: number) => MARGIN.top + ROW * row + ROW / 2;
  const name = words.sentence(`debrief.${component}`);
  const title = words.sentence('debrief.ledgerFigure', { component: name });
  const signed = (mmHg: number) => words.sentence('debrief.signed', { mmHg });
  const says = (step: LedgerStep) =>
    words.sentence('debrief.stepSays', { label: step.label, mmHg: step.mmHg });
  const description = [
    words.sentence('debrief.ledgerSays', { component: name, truth, entered, error: entered - truth }),
    ...steps.map(says),
  ].join(' ');
  const nameOf = (text: string, y: number): Svg[] => {
    const lines = wrapped(text, left - NAME_GAP, SCREEN_TEXT.small);
    return lines.map((one, k) =>
      label(one, 0, y + SCREEN_DROP + (k - (lines.length - 1) / 2) * NAME_LINE, paint, {
        size: SCREEN_TEXT.small,
      }),
    );
  };
  const end = (row: number, text: string, mmHg: number, kind: string): Svg[] => [
    label(text, 0, yOf(row) + SCREEN_DROP, paint, { isBold: true, size: SCREEN_TEXT.usual }),
    line([x(mmHg), yOf(row) - ROW / 2 + 3, x(mmHg), yOf(row) + ROW / 2 - 3], paint.ink, 2.4, null, `figure-end is-${kind}`), // biome-ignore format: one thought
    label(words.say.number(mmHg, 1), width - 2, yOf(row) + SCREEN_DROP, paint, {
      anchor: 'end',
      isBold: true,
      size: SCREEN_TEXT.usual,
    }),
  ];
  const bars = walked.flatMap(({ key, label: text, mmHg, from, to }, k): Svg[] => {
    const row = k + 1;
    const y = yOf(row);
    const [x0, x1] = [Math.min(x(from), x(to)), Math.max(x(from), x(to))];
    const isUp = mmHg >= 0;
    return [
      ...nameOf(text, y),
      line([x(from), y - ROW / 2 - BAR / 2, x(from), y + BAR / 2], paint.muted, 0.7, '2 2', 'figure-join'),
      element('rect', {
        x: x0,
        y: y - BAR / 2,
        width: Math.max(0.8, x1 - x0),
        height: BAR,
        fill: isUp ? paint.ink : `url(#${id}-hatch)`,
        stroke: paint.ink,
        'stroke-width': 0.8,
        class: `figure-step ${isUp ? 'is-up' : 'is-down'} key-${key}`,
      }),
      label(signed(mmHg), width - 2, y + SCREEN_DROP, paint, { anchor: 'end', size: SCREEN_TEXT.usual }),
    ];
  });
  const last = steps.length + 1;
  const svg = drawn(drawing, title, description, words.say.locale, [
    element('defs', {}, [
      element(
        'pattern',
        {
          id: `${id}-hatch`,
          width: 4,
          height: 4,
          patternUnits: 'userSpaceOnUse',
          patternTransform: 'rotate(45)',
        },
        [
          element('rect', { x: 0, y: 0, width: 4, height: 4, fill: paint.ground }),
          line([0, 0, 0, 4], paint.ink, 1.4, null, 'figure-hatch'),
        ],
      ),
    ]),
    ...ticksOf(x, right - left).flatMap((mmHg) => [
      line([x(mmHg), MARGIN.top, x(mmHg), bottom], paint.grid, 0.6, null, 'figure-grid'),
      label(words.say.short(mmHg), x(mmHg), bottom + 14, paint, {
        anchor: 'middle',
        size: SCREEN_TEXT.small,
      }),
    ]),
    line([left, bottom, right, bottom], paint.ink, 0.8, null, 'figure-axis'),
    ...end(0, words.sentence('debrief.truthRow'), truth, 'truth'),
    ...bars,
    line([x(entered), yOf(last - 1), x(entered), yOf(last)], paint.muted, 0.7, '2 2', 'figure-join'),
    ...end(last, words.sentence('debrief.enteredRow'), entered, 'entered'),
  ]);
  const marks: Mark[] = walked.map((step, k) => ({
    key: step.key,
    index: null,
    x: (x(step.from) + x(step.to)) / 2,
    y: yOf(k + 1),
    text: says(step),
    isUsed: true,
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
      columns: [words.sentence('debrief.stepColumn'), words.sentence('debrief.mmHgColumn')],
      rows: [
        [words.sentence('debrief.truthRow'), words.say.number(truth, 1)],
        ...steps.map(({ label: text, mmHg }) => [text, signed(mmHg)]),
        [words.sentence('debrief.enteredRow'), words.say.number(entered, 1)],
      ],
    },
  };
}
