import type { Words } from '@evenfall/words';
import { scaleLinear } from 'd3-scale';
import { element, pathThrough } from '../svg/svg.js';
import {
  beganAt,
  type ExerciseDrawn,
  type MomentDrawn,
  PHASES,
  passedAt,
  type SoundDrawn,
  tracePoints,
} from './exerciseDrawn.js';
import {
  BEFORE_SECONDS,
  frameOf,
  gapShade,
  MARGIN,
  pulseStrip,
  referenceLines,
  roomFor,
  type Scales,
  STEP_MMHG,
  STRIP,
} from './exerciseFrame.js';
import { momentShapes, phaseBrackets, soundShape } from './exerciseMarks.js';
import { type Drawing, drawn, type Figure, type Mark } from './figure.js';
import { PAPER } from './paint.js';
import { keyLines, SMALL_LINE, TEXT, wrapped } from './parts.js';

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
/** Drawn after the last thing in a fall, seconds. */
const AFTER_SECONDS = 4;

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
  const room = roomFor(width);
  const [left, right, top] = [MARGIN.left, width - room.right, MARGIN.top];
  const stripBottom = height - MARGIN.bottom - Math.max(0, key.length - 1) * SMALL_LINE;
  const bottom = stripBottom - STRIP.height - room.above;
  const scales: Scales = {
    x: scaleLinear([from, Math.max(to, from + 1)], [left, right]),
    y: scaleLinear([low, high], [bottom, top]),
    left,
    right,
    top,
    bottom,
    isNarrow: room.isNarrow,
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
