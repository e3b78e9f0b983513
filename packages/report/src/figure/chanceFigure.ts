import type { Belief, UsualResult } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { area, line as pathLine } from 'd3-shape';
import { element, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER } from './paint.js';
import { DASH, label, line, TEXT } from './parts.js';

/** Where the usual systolic or diastolic pressure lies, as it was computed about a threshold in mmHg. */
export type ChanceDrawn = {
  readonly component: 'systolic' | 'diastolic';
  readonly result: UsualResult;
  readonly threshold: number;
};

const USUAL: Drawing = { id: 'chance', width: 330, height: 190, paint: PAPER };
const MARGIN = { left: 10, right: 10, top: 26, bottom: 44 } as const;

/** How many SD are drawn on either side, how many points make a curve, how far apart the hatching stands. */
const SDS = 3.6;
const POINTS = 120;
const HATCH = 5;

/**
 * The density of the usual pressure: the part at or over the threshold hatched, what was thought beforehand dashed. Heights have no unit:
 * areas are chances.
 */
export function chanceFigure(
  { component, result, threshold }: ChanceDrawn,
  words: Words,
  how: Partial<Drawing> = {},
): Figure {
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const [left, right, top, bottom] = [MARGIN.left, width - MARGIN.right, MARGIN.top, height - MARGIN.bottom];
  const beliefs: Belief[] = [result, ...(result.prior === null ? [] : [result.prior])];
  const least = Math.min(threshold - 5, ...beliefs.map(({ mean, sd }) => mean - SDS * sd));
  const most = Math.max(threshold + 5, ...beliefs.map(({ mean, sd }) => mean + SDS * sd));
  const x = scaleLinear([least, most], [left, right]);
  const highest = Math.max(...beliefs.map(({ sd }) => densityAt({ mean: 0, sd }, 0)));
  const y = scaleLinear([0, highest], [bottom, top]);

  const curve = (belief: Belief) => pointsOf(belief, least, most);
  const draw = pathLine<readonly [number, number]>(
    ([at]) => x(at),
    ([, high]) => y(high),
  ).digits(2);
  const under = area<readonly [number, number]>(
    ([at]) => x(at),
    bottom,
    ([, high]) => y(high),
  ).digits(2);
  const over = curve(result).filter(([at]) => at > threshold);
  const cut: [number, number] = [threshold, densityAt(result, threshold)];
  const hatching: Svg[] = [];
  for (let at = x(threshold) + HATCH; at < right; at += HATCH) {
    const high = y(densityAt(result, x.invert(at)));
    if (bottom - high > 0.4)
      hatching.push(line([at, bottom, at, high], paint.ink, 0.7, null, 'figure-hatch'));
  }
  const ticks = x
    .ticks(6)
    .flatMap((mmHg) => [
      line([x(mmHg), bottom, x(mmHg), bottom + 3], paint.ink, 0.6, null, 'figure-tick'),
      label(words.say.short(mmHg), x(mmHg), bottom + 13, paint, { anchor: 'middle', size: TEXT.small }),
    ]);
  const name = words.sentence(`report.${component}`);
  const { mean, sd, probability, interval, prior, scale } = result;
  const title = words.sentence('report.chanceFigure', { component: name });
  const description = words.sentence('report.chanceSays', {
    component: name,
    scale: words.sentence(scale === 'home' ? 'report.scaleHome' : 'report.scaleOffice'),
    mean,
    low: interval[0],
    high: interval[1],
    threshold,
    chance: probability,
    prior: prior === null ? null : prior.mean,
  });
  const marks: Mark[] = [
    { key: 'mean', index: null, x: x(mean), y: y(densityAt(result, mean)), text: words.sentence('report.usualMean', { mean, low: interval[0], high: interval[1] }), isUsed: true }, // biome-ignore format: one thought
    { key: 'threshold', index: null, x: x(threshold), y: y(densityAt(result, threshold)), text: words.sentence('report.overThreshold', { threshold, chance: probability }), isUsed: true }, // biome-ignore format: one thought
    ...(prior === null
      ? []
      : [{ key: 'prior', index: null, x: x(prior.mean), y: y(densityAt(prior, prior.mean)), text: words.sentence('report.priorMean', prior), isUsed: true }]), // biome-ignore format: one thought
  ];
  const isRight = x(threshold) < (left + right) / 2;
  const svg = drawn(drawing, title, description, words.say.locale, [
    element('path', { d: under([cut, ...over]) ?? '', fill: paint.shade, class: 'figure-over' }),
    ...hatching,
    ...(prior === null
      ? []
      : [element('path', { d: draw(curve(prior)) ?? '', fill: 'none', stroke: paint.muted, 'stroke-width': 1.1, 'stroke-dasharray': DASH.prior, class: 'figure-prior' })]), // biome-ignore format: one thought
    element('path', { d: draw(curve(result)) ?? '', fill: 'none', stroke: paint.ink, 'stroke-width': 1.4, class: 'figure-belief' }), // biome-ignore format: one thought
    line([left, bottom, right, bottom], paint.ink, 0.8, null, 'figure-axis'),
    line([x(threshold), top - 6, x(threshold), bottom], paint.ink, 1.1, DASH.systolicLimit, 'figure-limit'),
    label(words.sentence('report.thresholdChance', { threshold, chance: probability }), x(threshold) + (isRight ? 4 : -4), top - 12, paint, { anchor: isRight ? 'start' : 'end', isBold: true }), // biome-ignore format: one thought
    ...ticks,
    label(words.sentence('report.usualAxis', { component: name }), (left + right) / 2, bottom + 26, paint, {
      anchor: 'middle',
    }),
    ...(prior === null ? [] : [label(words.sentence('report.priorKey'), (left + right) / 2, bottom + 39, paint, { anchor: 'middle', size: TEXT.small, isMuted: true })]), // biome-ignore format: one thought
  ]);
  const row = (of: string, belief: Belief) => [
    of,
    words.say.number(belief.mean, 1),
    words.say.number(belief.sd, 1),
  ];
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
        words.sentence('report.curve'),
        words.sentence('report.meanMmHg'),
        words.sentence('report.sdMmHg'),
      ],
      rows: [
        row(words.sentence('report.afterwards'), { mean, sd }),
        ...(prior === null ? [] : [row(words.sentence('report.beforehand'), prior)]),
      ],
    },
  };
}

/** The density of a normal distribution, a mmHg. */
function densityAt({ mean, sd }: Belief, at: number): number {
  return Math.exp(-(((at - mean) / sd) ** 2) / 2) / (sd * Math.sqrt(2 * Math.PI));
}

function pointsOf(belief: Belief, from: number, to: number): (readonly [number, number])[] {
  return Array.from({ length: POINTS + 1 }, (_, k) => {
    const at = from + (k * (to - from)) / POINTS;
    return [at, densityAt(belief, at)] as const;
  });
}
