import type { Words } from '@evenfall/words';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { element, pathThrough, type Svg } from '../svg/svg.js';
import { type ExerciseDrawn, tracePoints } from './exerciseDrawn.js';
import type { Paint } from './paint.js';
import { DASH, label, line, SMALL_LINE, TEXT, wrapped } from './parts.js';

/** Room about the plot, in units of the figure. */
export const MARGIN = { left: 46, right: 84, top: 34, bottom: 44 } as const;
/** A narrower figure, as on a phone, has what is named at its right within the plot. */
const NARROW = { width: 480, right: 12, above: 19 } as const;
/** The strip under the plot in which the pulse runs, and what lies between. */
export const STRIP = { height: 30, above: 8 } as const;
/** Room at the right of the plot, and between it and the strip, of a figure of this width. */
export function roomFor(width: number): {
  readonly isNarrow: boolean;
  readonly right: number;
  readonly above: number;
} {
  return width < NARROW.width
    ? { isNarrow: true, right: NARROW.right, above: NARROW.above }
    : { isNarrow: false, right: MARGIN.right, above: STRIP.above };
}

/** Drawn before the fall, seconds. */
export const BEFORE_SECONDS = 1;
/** Between two lines of the scale of the cuff. */
export const STEP_MMHG = 20;
/** A time axis has a line at every so many seconds: the first that leaves room for its numbers. */
const STEPS_SECONDS = [2, 5, 10, 20, 30, 60] as const;
const LEAST_STEP_WIDTH = 34;
const HATCH = 7;

/** Where seconds of the visit and mmHg of the cuff stand, and the edges of the plot. */
export type Scales = {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly isNarrow: boolean;
};

/** Both axes with their numbers and names. */
export function frameOf(
  { x, y, left, right, top, bottom }: Scales,
  low: number,
  high: number,
  zeroSeconds: number,
  stripBottom: number,
  words: Words,
  paint: Paint,
): Svg[] {
  const [from, to] = x.domain() as [number, number];
  const parts: Svg[] = [];
  for (let mmHg = low; mmHg <= high; mmHg += STEP_MMHG) {
    parts.push(line([left, y(mmHg), right, y(mmHg)], paint.grid, 0.6, null, 'figure-grid'));
    parts.push(label(words.say.short(mmHg), left - 5, y(mmHg) + 3.5, paint, { anchor: 'end', size: TEXT.small })); // biome-ignore format: one thought
  }
  const step =
    STEPS_SECONDS.find((seconds) => x(from + seconds) - left >= LEAST_STEP_WIDTH) ?? STEPS_SECONDS[5];
  for (let seconds = 0; zeroSeconds + seconds <= to; seconds += step) {
    const at = x(zeroSeconds + seconds);
    parts.push(line([at, stripBottom, at, stripBottom + 3], paint.ink, 0.6, null, 'figure-tick'));
    parts.push(label(words.say.short(seconds), at, stripBottom + 13, paint, { anchor: 'middle', size: TEXT.small })); // biome-ignore format: one thought
  }
  parts.push(line([left, bottom, right, bottom], paint.ink, 0.8, null, 'figure-axis'));
  parts.push(line([left, stripBottom, right, stripBottom], paint.ink, 0.8, null, 'figure-axis'));
  parts.push(
    label(words.sentence('debrief.cuffAxis'), 11, (top + bottom) / 2, paint, {
      anchor: 'middle',
      turned: true,
    }),
    label(words.sentence('debrief.secondsAxis'), (left + right) / 2, stripBottom + 25, paint, {
      anchor: 'middle',
      size: TEXT.small,
    }),
  );
  return parts;
}

/**
 * What the reading is held against: a line for each number, its name and value at its right end; of a narrow figure over that end and,
 * of the diastolic, over its left one, where the cuff is far above.
 */
export function referenceLines(
  { systolic, diastolic }: ExerciseDrawn['reference'],
  { y, left, right, isNarrow }: Scales,
  words: Words,
  paint: Paint,
): Svg[] {
  const named = (of: 'systolic' | 'diastolic', mmHg: number) => {
    const text = words.sentence('debrief.truthShort', { mmHg });
    const how = { size: TEXT.small, isBold: true };
    if (!isNarrow) return label(text, right + 5, y(mmHg) + 3.5, paint, how);
    return of === 'systolic'
      ? label(text, right, y(mmHg) - 4, paint, { ...how, anchor: 'end' })
      : label(text, left + 4, y(mmHg) - 4, paint, how);
  };
  return (
    [
      ['systolic', systolic, DASH.systolicLimit],
      ['diastolic', diastolic, DASH.diastolicLimit],
    ] as const
  ).flatMap(([of, mmHg, dash]) => [
    line([left, y(mmHg), right, y(mmHg)], paint.ink, 0.9, dash, `figure-reference is-${of}`),
    named(of, mmHg),
  ]);
}

/** The stretch of the fall that lies in the gap, hatched: colour alone says nothing on paper. */
export function gapShade(
  { topMmHg, bottomMmHg }: { readonly topMmHg: number; readonly bottomMmHg: number },
  { cuffMmHg, tracePerSecond }: ExerciseDrawn,
  { x, y, bottom, top }: Scales,
  from: number,
  to: number,
  words: Words,
  paint: Paint,
): Svg[] {
  const within = tracePoints(cuffMmHg, tracePerSecond, from, to, 1).filter(
    ([at, mmHg]) => at > from + BEFORE_SECONDS && mmHg <= topMmHg && mmHg >= bottomMmHg,
  );
  const [first, last] = [within[0], within.at(-1)];
  if (first === undefined || last === undefined) return [];
  const [x0, x1] = [x(first[0]), x(last[0])];
  const hatching: Svg[] = [];
  for (let at = x0; at <= x1; at += HATCH)
    hatching.push(line([at, bottom, at, top], paint.grid, 0.8, null, 'figure-hatch'));
  return [
    element('rect', { x: x0, y: top, width: x1 - x0, height: bottom - top, fill: paint.shade, class: 'figure-gap' }), // biome-ignore format: one thought
    ...hatching,
    line([x0, y(topMmHg), x1, y(topMmHg)], paint.muted, 0.8, null, 'figure-gap-edge'),
    line([x0, y(bottomMmHg), x1, y(bottomMmHg)], paint.muted, 0.8, null, 'figure-gap-edge'),
    label(words.sentence('debrief.gapShort'), (x0 + x1) / 2, bottom - 6, paint, {
      anchor: 'middle',
      size: TEXT.small,
      isBold: true,
    }),
  ];
}

/** The pulse in its own strip, without a scale: how high it goes no cuff can tell. */
export function pulseStrip(
  { arterialMmHg, tracePerSecond }: ExerciseDrawn,
  { x, left, right, isNarrow }: Scales,
  from: number,
  to: number,
  bottom: number,
  words: Words,
  paint: Paint,
): Svg[] {
  const points = tracePoints(arterialMmHg, tracePerSecond, from, to, 2);
  const values = points.map(([, mmHg]) => mmHg);
  const high = scaleLinear(
    [Math.min(...values), Math.max(...values)],
    [bottom - 3, bottom - STRIP.height + 3],
  );
  return [
    element('path', {
      d: pathThrough(points.map(([at, mmHg]) => [x(at), high(mmHg)])),
      fill: 'none',
      stroke: paint.muted,
      'stroke-width': 0.9,
      class: 'figure-pulse',
    }),
    ...(isNarrow
      ? [
          label(words.sentence('debrief.pulseStrip'), left, bottom - STRIP.height - 5, paint, {
            size: TEXT.small,
            isMuted: true,
          }),
        ]
      : wrapped(words.sentence('debrief.pulseStrip'), MARGIN.right - 8, TEXT.small).map((text, k) =>
          label(text, right + 5, bottom - STRIP.height + 10 + k * SMALL_LINE, paint, {
            size: TEXT.small,
            isMuted: true,
          }),
        )),
    line([left, bottom - STRIP.height, left, bottom], paint.grid, 0.6, null, 'figure-grid'),
  ];
}
