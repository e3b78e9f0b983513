import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER } from './paint.js';
import { label, line } from './parts.js';
import { SCREEN_TEXT } from './screenText.js';

/** An estimate with its Monte Carlo error; null: nobody had a number. */
export type Estimate = { readonly value: number | null; readonly standardError: number | null };

/** One row: what is estimated, in words, of the first way and of the second (null: there is none), in mmHg or as a share. */
export type PlanRow = {
  readonly key: string;
  readonly label: string;
  readonly unit: 'mmHg' | 'share';
  readonly first: Estimate;
  readonly second: Estimate | null;
};

const USUAL = { id: 'plan', width: 640, paint: PAPER } as const;
/** A row is its name over its estimates, so that both have the whole width, on a phone too. */
const ROW = 50;
const NAME_DROP = 15;
const ESTIMATES_DROP = 34;
/** No line of the scale goes through a name. */
const SCALE_DROP = 22;
const MARGIN = { side: 22, top: 4, axis: 22 } as const;
const LEAST_SPAN = { mmHg: 4, share: 0.1 } as const;
/** So many standard errors on either side hold the long-run value in 19 studies of 20. */
const WIDE = 1.96;
const APART = 5;

/** How high the figure of these rows is. */
export function planHeight(rows: readonly PlanRow[]): number {
  const units = new Set(rows.map(({ unit }) => unit)).size;
  return MARGIN.top + ROW * rows.length + units * (MARGIN.axis + 14);
}

/** What two ways of measuring get wrong, side by side on the same people: full for the first, open for the second. */
export function planFigure(
  rows: readonly PlanRow[],
  words: Words,
  how: Partial<Omit<Drawing, 'height'>> = {},
): Figure {
  const drawing: Drawing = { ...USUAL, ...how, height: planHeight(rows) };
  const { width, height, paint } = drawing;
  const [left, right] = [0, width];
  const parts: Svg[] = [];
  const marks: Mark[] = [];
  let top: number = MARGIN.top;
  for (const unit of ['mmHg', 'share'] as const) {
    const own = rows.filter((row) => row.unit === unit);
    if (own.length === 0) continue;
    const ends = own.flatMap(({ first, second }) => [first, second].flatMap(endsOf));
    const [low, high] = [Math.min(0, ...ends), Math.max(LEAST_SPAN[unit], ...ends)];
    const x = scaleLinear([low, high], [left + MARGIN.side, right - MARGIN.side]).nice(5);
    const bottom = top + own.length * ROW;
    for (const tick of x.ticks(5)) {
      own.forEach((_, k) => {
        const from = top + ROW * k + SCALE_DROP;
        const [stroke, size] = tick === 0 ? ([paint.ink, 0.9] as const) : ([paint.grid, 0.6] as const);
        const name = tick === 0 ? 'figure-zero' : 'figure-grid';
        parts.push(line([x(tick), from, x(tick), top + ROW * (k + 1)], stroke, size, null, name));
      });
      const text = (unit === 'share' ? words.say.percent(tick) : words.say.short(tick)).replace('-', '−');
      parts.push(label(text, x(tick), bottom + 15, paint, { anchor: 'middle', size: SCREEN_TEXT.small }));
    }
    parts.push(line([left, bottom, right, bottom], paint.ink, 0.8, null, 'figure-axis'));
    own.forEach((row, k) => {
      const y = top + ROW * k + ESTIMATES_DROP;
      parts.push(label(row.label, 0, top + ROW * k + NAME_DROP, paint, { size: SCREEN_TEXT.usual }));
      const places = [
        ['first', row.first, row.second === null ? y : y - APART],
        ['second', row.second, y + APART],
      ] as const;
      for (const [way, estimate, at] of places) {
        if (estimate === null || estimate.value === null) continue;
        const [from, to] = endsOf(estimate) as [number, number];
        const key = `${row.key}-${way}`;
        parts.push(line([x(from), at, x(to), at], paint.ink, 1.2, null, 'figure-error'));
        parts.push(
          way === 'first'
            ? element('circle', { cx: x(estimate.value), cy: at, r: 3.2, fill: paint.ink, stroke: paint.ink, class: `figure-estimate is-first key-${key}` })
            : element('rect', { x: x(estimate.value) - 3, y: at - 3, width: 6, height: 6, fill: paint.ground, stroke: paint.ink, 'stroke-width': 1.1, class: `figure-estimate is-second key-${key}` }),
        ); // biome-ignore format: one thought
        marks.push({
          key,
          index: null,
          x: x(estimate.value),
          y: at,
          text: words.sentence('plan.estimateSays', {
            way: words.sentence(`plan.${way}`),
            label: row.label,
            text: estimateText(estimate, unit, words),
          }),
          isUsed: true,
        });
      }
    });
    top = bottom + MARGIN.axis + 14;
  }
  const title = words.sentence('plan.figure');
  const description = [title, ...marks.map(({ text }) => text)].join(' ');
  const svg = drawn(drawing, title, description, words.say.locale, parts);
  return {
    svg,
    width,
    height,
    title,
    description,
    marks,
    table: {
      caption: title,
      columns: [words.sentence('plan.what'), words.sentence('plan.first'), words.sentence('plan.second')],
      rows: rows.map(({ label: text, unit, first, second }) => [
        text,
        estimateText(first, unit, words),
        second === null ? '-' : estimateText(second, unit, words),
      ]),
    },
  };
}

/** An estimate in words: its value and, where it is known, its Monte Carlo error. */
export function estimateText(
  { value, standardError }: Estimate,
  unit: PlanRow['unit'],
  words: Words,
): string {
  if (value === null) return '-';
  const scaled = unit === 'share' ? 100 : 1;
  return words.sentence(unit === 'share' ? 'plan.shareText' : 'plan.mmHgText', {
    amount: value * scaled,
    error: standardError === null ? null : standardError * scaled,
  });
}

function endsOf(estimate: Estimate | null): number[] {
  if (estimate === null || estimate.value === null) return [];
  const wide = WIDE * (estimate.standardError ?? 0);
  return [estimate.value - wide, estimate.value + wide];
}
