import type { Words } from '@evenfall/words';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { element, pathThrough, type Svg } from '../svg/svg.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER, type Paint } from './paint.js';
import { DASH, keyLines, label, line, markShape, SMALL_LINE, TEXT, wrapped } from './parts.js';

/** A sound of a letting down: seconds of the visit, mmHg in the cuff, dB over what a normal ear hears. */
export type SoundDrawn = {
  readonly atSeconds: number;
  readonly cuffMmHg: number;
  readonly phase: 1 | 2 | 3 | 4;
  readonly levelDb: number;
  readonly isAudible: boolean;
};

/** A moment that was marked; `atSeconds` null: written down without a time. */
export type MomentDrawn = {
  readonly what: 'first sound' | 'muffled' | 'last sound' | 'pulse back';
  readonly atSeconds: number | null;
  readonly mmHg: number;
};

/** One letting down of an exercise. Traces have `tracePerSecond` points a second from the beginning of the visit. */
export type ExerciseDrawn = {
  readonly tracePerSecond: number;
  readonly cuffMmHg: Float64Array;
  readonly arterialMmHg: Float64Array;
  readonly sounds: readonly SoundDrawn[];
  readonly marks: readonly MomentDrawn[];
  readonly fall: { readonly peakSeconds: number; readonly peakMmHg: number; readonly endSeconds: number };
  /** What the reading is held against. */
  readonly reference: { readonly systolic: number; readonly diastolic: number };
  readonly gap: { readonly topMmHg: number; readonly bottomMmHg: number } | null;
};

/** Whether the pressure inside the artery is drawn on the scale of the cuff, which no cuff can show; whether the key stands under it. */
export type ExerciseDrawing = Drawing & { readonly showsArtery: boolean; readonly showsKey: boolean };

const USUAL: ExerciseDrawing = {
  id: 'exercise',
  width: 720,
  height: 420,
  paint: PAPER,
  showsArtery: false,
  showsKey: true,
};
const MARGIN = { left: 46, right: 84, top: 34, bottom: 44 } as const;
/** The strip under the plot in which the pulse runs, and what lies between. */
const STRIP = { height: 30, above: 8 } as const;
/** Height of the loudest sound there is (60 dB), in units of the figure. */
const LOUDEST = { db: 60, height: 46 } as const;
/** Drawn before the fall and after the last thing in it, seconds. */
const BEFORE_SECONDS = 1;
const AFTER_SECONDS = 4;
const STEP_MMHG = 20;
/** A time axis has a line at every so many seconds: the first that leaves room for its numbers. */
const STEPS_SECONDS = [2, 5, 10, 20, 30, 60] as const;
const LEAST_STEP_WIDTH = 34;
const HATCH = 7;

type Scales = {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

/**
 * A letting down as it was: the cuff falling, each sound on it as high as it was loud and with a head by its phase, the moments that were
 * marked, what they are held against, the pulse under it. Source: physiology handbook 1.1, 8.3; assessment handbook 14 (content of feedback).
 */
export function exerciseFigure(
  exercise: ExerciseDrawn,
  words: Words,
  how: Partial<ExerciseDrawing> = {},
): Figure {
  const drawing = { ...USUAL, ...how };
  const { width, height, paint } = drawing;
  const { fall, reference, gap } = exercise;
  const key = drawing.showsKey
    ? wrapped(words.sentence('debrief.figureKey'), width - MARGIN.left - 4, TEXT.small)
    : [];
  const began = beganAt(exercise);
  const placed = exercise.marks.map((mark) => ({
    ...mark,
    x: mark.atSeconds ?? passedAt(exercise, mark.mmHg),
  }));
  const sounds = exercise.sounds.filter(
    ({ atSeconds }) => atSeconds >= fall.peakSeconds && atSeconds <= fall.endSeconds,
  );
  const marks = exercise.marks;
  const from = began - BEFORE_SECONDS;
  const lastThing = Math.max(
    began + AFTER_SECONDS,
    ...sounds.map(({ atSeconds }) => atSeconds),
    ...placed.map((mark) => mark.x),
  );
  const to = Math.min(fall.endSeconds, lastThing + AFTER_SECONDS);
  const points = tracePoints(exercise.cuffMmHg, exercise.tracePerSecond, from, to, 5);
  const lowest = Math.min(reference.diastolic, ...points.map(([, mmHg]) => mmHg), ...marks.map((one) => one.mmHg)); // biome-ignore format: one thought
  const highest = Math.max(reference.systolic, fall.peakMmHg, ...marks.map((one) => one.mmHg));
  const low = Math.max(0, STEP_MMHG * Math.floor(lowest / STEP_MMHG));
  const high = STEP_MMHG * Math.ceil((highest + 1) / STEP_MMHG);
  const [left, right, top] = [MARGIN.left, width - MARGIN.right, MARGIN.top];
  const stripBottom = height - MARGIN.bottom - Math.max(0, key.length - 1) * SMALL_LINE;
  const bottom = stripBottom - STRIP.height - STRIP.above;
  const scales: Scales = {
    x: scaleLinear([from, Math.max(to, from + 1)], [left, right]),
    y: scaleLinear([low, high], [bottom, top]),
    left,
    right,
    top,
    bottom,
  };
  const { x, y } = scales;

  const references = [reference.systolic, reference.diastolic].map(y);
  const fallMmHg = (seconds: number) =>
    exercise.cuffMmHg[Math.round(seconds * exercise.tracePerSecond)] ?? lowest;
  const cuff = element('path', {
    d: pathThrough(points.map(([at, mmHg]) => [x(at), y(mmHg)])),
    fill: 'none',
    stroke: paint.ink,
    'stroke-width': 1.4,
    class: 'figure-cuff',
  });
  const artery = drawing.showsArtery
    ? [
        element('path', {
          d: pathThrough(
            tracePoints(exercise.arterialMmHg, exercise.tracePerSecond, from, to, 2).map(([at, mmHg]) => [
              x(at),
              Math.max(top, Math.min(bottom, y(mmHg))),
            ]),
          ),
          fill: 'none',
          stroke: paint.muted,
          'stroke-width': 0.8,
          class: 'figure-artery',
        }),
      ]
    : [];
  const title = words.sentence('debrief.figure');
  const audible = sounds.filter(({ isAudible }) => isAudible);
  const svg = drawn(drawing, title, describe(exercise, audible, words), words.say.locale, [
    ...frameOf(scales, low, high, began, stripBottom, words, paint),
    ...(gap === null ? [] : gapShade(gap, exercise, scales, from, to, words, paint)),
    ...referenceLines(reference, scales, words, paint),
    ...artery,
    ...pulseStrip(exercise, scales, from, to, stripBottom, words, paint),
    cuff,
    ...sounds.flatMap((sound, k) => soundShape(sound, `sound-${k}`, scales, paint)),
    ...phaseBrackets(audible, scales, paint),
    ...momentShapes(placed, references, fallMmHg, scales, words, paint),
    ...keyLines(key, left, height, paint),
  ]);
  const since = (atSeconds: number) => words.say.number(atSeconds - began, 1);
  const readOut: (Mark & { readonly at: number })[] = [
    ...sounds.map((sound, k) => ({
      key: `sound-${k}`,
      index: null,
      x: x(sound.atSeconds),
      y: y(sound.cuffMmHg),
      text: words.sentence('debrief.soundSays', {
        seconds: since(sound.atSeconds),
        cuff: sound.cuffMmHg,
        phase: PHASES[sound.phase],
        isAudible: sound.isAudible,
        db: sound.levelDb,
      }),
      isUsed: sound.isAudible,
      at: sound.atSeconds,
    })),
    ...placed.map((mark, k) => ({
      key: `moment-${k}`,
      index: null,
      x: x(mark.x),
      y: y(mark.mmHg),
      text: words.sentence('debrief.momentSays', {
        what: words.sentence(`debrief.${mark.what}`),
        seconds: mark.atSeconds === null ? null : since(mark.atSeconds),
        mmHg: mark.mmHg,
      }),
      isUsed: true,
      at: mark.x,
    })),
  ].toSorted((a, b) => a.at - b.at);
  return {
    svg,
    width,
    height,
    title,
    description: describe(exercise, audible, words),
    marks: readOut.map(({ at: _, ...mark }) => mark),
    table: {
      caption: words.sentence('debrief.tableCaption'),
      columns: [
        words.sentence('debrief.tableSeconds'),
        words.sentence('debrief.tableCuff'),
        words.sentence('debrief.tableWhat'),
        words.sentence('debrief.tableLoud'),
      ],
      rows: rowsOf(sounds, marks, since, words),
    },
  };
}

/** A cuff that stands hardly lower than at its peak for so long has not begun to fall: mmHg, seconds. */
const HARDLY_MMHG = 3;
const STANDS_SECONDS = 4;

/** When the cuff began to fall: at its peak, or at the end of a long stand there. */
function beganAt({ fall, cuffMmHg, tracePerSecond }: ExerciseDrawn): number {
  let i = Math.ceil(fall.peakSeconds * tracePerSecond);
  while (i + 1 < cuffMmHg.length && (cuffMmHg[i + 1] as number) >= fall.peakMmHg - HARDLY_MMHG) i += 1;
  const stoodTo = Math.min(fall.endSeconds, i / tracePerSecond);
  return stoodTo - fall.peakSeconds < STANDS_SECONDS ? fall.peakSeconds : stoodTo;
}

/** When the falling cuff passed a pressure: there a number without a time is drawn. */
function passedAt({ fall, cuffMmHg, tracePerSecond }: ExerciseDrawn, mmHg: number): number {
  let i = Math.ceil(fall.peakSeconds * tracePerSecond);
  while (i / tracePerSecond < fall.endSeconds && (cuffMmHg[i] ?? 0) > mmHg) i += 1;
  return Math.min(fall.endSeconds, i / tracePerSecond);
}

export const PHASES = { 1: 'I', 2: 'II', 3: 'III', 4: 'IV' } as const;

function describe(
  { marks, reference, gap }: ExerciseDrawn,
  audible: readonly SoundDrawn[],
  words: Words,
): string {
  const [first, last] = [audible[0], audible.at(-1)];
  const parts = [
    first === undefined || last === undefined
      ? words.sentence('debrief.figureSilent')
      : words.sentence('debrief.figureSays', {
          sounds: audible.length,
          first: first.cuffMmHg,
          last: last.cuffMmHg,
        }),
    words.sentence('debrief.referenceSays', reference),
    ...(gap === null ? [] : [words.sentence('debrief.gapSays', gap)]),
    ...marks.map(({ what, mmHg }) =>
      words.sentence('debrief.markedSays', { what: words.sentence(`debrief.${what}`), mmHg }),
    ),
  ];
  return parts.join(' ');
}

function rowsOf(
  sounds: readonly SoundDrawn[],
  marks: readonly MomentDrawn[],
  since: (atSeconds: number) => string,
  words: Words,
): string[][] {
  const rows = [
    ...sounds.map(({ atSeconds, cuffMmHg, phase, isAudible, levelDb }) => ({
      at: atSeconds,
      cells: [
        since(atSeconds),
        words.say.number(cuffMmHg, 1),
        words.sentence('debrief.phase', { phase: PHASES[phase] }),
        isAudible ? words.say.number(levelDb) : words.sentence('debrief.tooFaint'),
      ],
    })),
    ...marks.map(({ what, atSeconds, mmHg }) => ({
      at: atSeconds ?? Infinity,
      cells: [
        atSeconds === null ? '-' : since(atSeconds),
        words.say.number(mmHg),
        words.sentence('debrief.yourMark', { what: words.sentence(`debrief.${what}`) }),
        '',
      ],
    })),
  ];
  return rows.toSorted((a, b) => a.at - b.at).map(({ cells }) => cells);
}

function tracePoints(trace: Float64Array, perSecond: number, from: number, to: number, every: number) {
  const points: (readonly [number, number])[] = [];
  const last = Math.min(trace.length - 1, Math.ceil(to * perSecond));
  for (let i = Math.max(0, Math.floor(from * perSecond)); i <= last; i += every) {
    points.push([Math.min(to, Math.max(from, i / perSecond)), trace[i] as number]);
  }
  return points;
}

function frameOf(
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

/** What the reading is held against: a line for each number, its name and value at its right end. */
function referenceLines(
  { systolic, diastolic }: ExerciseDrawn['reference'],
  { y, left, right }: Scales,
  words: Words,
  paint: Paint,
): Svg[] {
  return (
    [
      ['systolic', systolic, DASH.systolicLimit],
      ['diastolic', diastolic, DASH.diastolicLimit],
    ] as const
  ).flatMap(([of, mmHg, dash]) => [
    line([left, y(mmHg), right, y(mmHg)], paint.ink, 0.9, dash, `figure-reference is-${of}`),
    label(words.sentence('debrief.truthShort', { mmHg }), right + 5, y(mmHg) + 3.5, paint, {
      size: TEXT.small,
      isBold: true,
    }),
  ]);
}

/** The stretch of the fall that lies in the gap, hatched: colour alone says nothing on paper. */
function gapShade(
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
function pulseStrip(
  { arterialMmHg, tracePerSecond }: ExerciseDrawn,
  { x, left, right }: Scales,
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
    ...wrapped(words.sentence('debrief.pulseStrip'), MARGIN.right - 8, TEXT.small).map((text, k) =>
      label(text, right + 5, bottom - STRIP.height + 10 + k * SMALL_LINE, paint, {
        size: TEXT.small,
        isMuted: true,
      }),
    ),
    line([left, bottom - STRIP.height, left, bottom], paint.grid, 0.6, null, 'figure-grid'),
  ];
}

/** A sound: a stem as high as it was loud, and a head that tells its phase without colour. */
function soundShape(
  { atSeconds, cuffMmHg, phase, levelDb, isAudible }: SoundDrawn,
  key: string,
  { x, y }: Scales,
  paint: Paint,
): Svg[] {
  const [at, foot] = [x(atSeconds), y(cuffMmHg)];
  if (!isAudible)
    return [
      element('circle', {
        cx: at,
        cy: foot,
        r: 1.5,
        fill: paint.ground,
        stroke: paint.muted,
        'stroke-width': 0.8,
        class: `figure-sound is-faint key-${key}`,
      }),
    ];
  const head = foot - 3 - (LOUDEST.height * Math.min(LOUDEST.db, Math.max(0, levelDb))) / LOUDEST.db;
  const look = {
    class: `figure-sound is-phase-${phase} key-${key}`,
    fill: phase === 1 || phase === 3 ? paint.ink : paint.ground,
    stroke: paint.ink,
    'stroke-width': 0.9,
  };
  const isRound = phase === 1 || phase === 2;
  return [
    line([at, foot, at, head], paint.muted, 0.8, null, 'figure-stem'),
    isRound
      ? element('circle', { cx: at, cy: head, r: 2.3, ...look })
      : element('rect', { x: at - 2.1, y: head - 2.1, width: 4.2, height: 4.2, ...look }),
  ];
}

/** Over the plot: from where to where each phase went. */
function phaseBrackets(audible: readonly SoundDrawn[], { x, top }: Scales, paint: Paint): Svg[] {
  const runs: { phase: SoundDrawn['phase']; from: number; to: number }[] = [];
  for (const { phase, atSeconds } of audible) {
    const last = runs.at(-1);
    if (last !== undefined && last.phase === phase) last.to = atSeconds;
    else runs.push({ phase, from: atSeconds, to: atSeconds });
  }
  let free = -Infinity;
  return runs.flatMap(({ phase, from, to }) => {
    const [x0, x1] = [x(from) - 2, x(to) + 2];
    const text = PHASES[phase];
    const middle = (x0 + x1) / 2;
    const half = (text.length * TEXT.small) / 4 + 2;
    const hasRoom = middle - half > free;
    if (hasRoom) free = middle + half;
    return [
      line([x0, top - 12, x1, top - 12], paint.ink, 1, null, 'figure-phase'),
      ...(hasRoom ? [label(text, middle, top - 17, paint, { anchor: 'middle', size: TEXT.small })] : []),
    ];
  });
}

/** Room that the name of a moment takes, and how far apart two of them have to stand. */
const NAME = { width: 96, height: 13 } as const;

/** How far the letters of a name reach over its foot and under it. */
const REACH = { over: 11, under: 4 } as const;

/** The foot of a name that no line crosses: under a line that would, or over it where there is no room. */
function clearOf(lines: readonly number[], foot: number, lowest: number): number {
  const crossing = lines.find((at) => at > foot - REACH.over && at < foot + REACH.under);
  if (crossing === undefined) return foot;
  const under = crossing + REACH.over;
  return under <= lowest ? under : crossing - REACH.under;
}

/** The moments that were marked, as paper charts have them, each with its number where nothing else is drawn: under the fall. */
function momentShapes(
  marks: readonly (MomentDrawn & { readonly x: number })[],
  lines: readonly number[],
  fallMmHg: (seconds: number) => number,
  { x, y, left, right, bottom, top }: Scales,
  words: Words,
  paint: Paint,
): Svg[] {
  let before: { readonly at: number; readonly foot: number } | null = null;
  return marks.flatMap(({ what, atSeconds, mmHg, x: seconds }, k) => {
    const isTop = what === 'first sound' || what === 'pulse back';
    const at = Math.min(right, Math.max(left, x(seconds)));
    const hasRoom = at - left > NAME.width;
    // To the right of a mark the fall goes on: its name stands under where that has come to by then.
    const end = y(Math.min(mmHg, fallMmHg(x.invert(Math.min(right, at + NAME.width)))));
    const under = isTop && !hasRoom ? end + REACH.over + 3 : y(mmHg) + 18;
    let foot = clearOf(lines, Math.min(bottom - 5, under), bottom - 5);
    if (before !== null && at - before.at < NAME.width && Math.abs(foot - before.foot) < NAME.height) {
      const next = before.foot + NAME.height;
      foot = clearOf(lines, next > bottom - 5 ? before.foot - NAME.height : next, bottom - 5);
    }
    before = { at, foot };
    const text = words.sentence('debrief.momentShort', { what: words.sentence(`debrief.${what}`), mmHg });
    return [
      ...(atSeconds === null ? [] : [line([at, bottom, at, top], paint.ink, 0.9, '1 2', 'figure-moment')]),
      markShape(isTop ? 'systolic' : 'diastolic', at, y(mmHg), true, paint, `moment-${k}`, 5),
      label(text, at + (hasRoom ? -6 : 6), foot, paint, { anchor: hasRoom ? 'end' : 'start', isBold: true }),
    ];
  });
}
