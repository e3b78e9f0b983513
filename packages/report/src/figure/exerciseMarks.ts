import type { Words } from '@evenfall/words';
import { element, type Svg } from '../svg/svg.js';
import { type MomentDrawn, PHASES, type SoundDrawn } from './exerciseDrawn.js';
import type { Scales } from './exerciseFrame.js';
import type { Paint } from './paint.js';
import { label, line, markShape, TEXT } from './parts.js';

/** Height of the loudest sound there is (60 dB), in units of the figure. */
const LOUDEST = { db: 60, height: 46 } as const;

/** A sound: a stem as high as it was loud, and a head that tells its phase without colour. */
export function soundShape(
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
export function phaseBrackets(audible: readonly SoundDrawn[], { x, top }: Scales, paint: Paint): Svg[] {
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
export function momentShapes(
  marks: readonly (MomentDrawn & { readonly x: number })[],
  lines: readonly number[],
  fallMmHg: (seconds: number) => number,
  { x, y, left, right, bottom, top }: Scales,
  words: Words,
  paint: Paint,
): Svg[] {
  let before: { readonly from: number; readonly foot: number } | null = null;
  return marks.flatMap(({ what, atSeconds, mmHg, x: seconds }, k) => {
    const isTop = what === 'first sound' || what === 'pulse back';
    const at = Math.min(right, Math.max(left, x(seconds)));
    const hasRoom = at - left > NAME.width;
    // To the right of a mark the fall goes on: its name stands under where that has come to by then.
    const end = y(Math.min(mmHg, fallMmHg(x.invert(Math.min(right, at + NAME.width)))));
    const under = isTop && !hasRoom ? end + REACH.over + 3 : y(mmHg) + 18;
    let foot = clearOf(lines, Math.min(bottom - 5, under), bottom - 5);
    // A name stands to the left of its mark, or to its right where there is no room.
    const from = hasRoom ? at - NAME.width : at;
    if (
      before !== null &&
      Math.abs(from - before.from) < NAME.width &&
      Math.abs(foot - before.foot) < NAME.height
    ) {
      const last = before.foot;
      // Under the name before it or over it, in the first line that is free.
      const feet = [1, -1, -2, -3].map((by) => clearOf(lines, last + by * NAME.height, bottom - 5));
      foot = feet.find((one) => one <= bottom - 5 && Math.abs(one - last) >= NAME.height - 1) ?? foot;
    }
    before = { from, foot };
    const text = words.sentence('debrief.momentShort', { what: words.sentence(`debrief.${what}`), mmHg });
    return [
      ...(atSeconds === null ? [] : [line([at, bottom, at, top], paint.ink, 0.9, '1 2', 'figure-moment')]),
      markShape(isTop ? 'systolic' : 'diastolic', at, y(mmHg), true, paint, `moment-${k}`, 5),
      label(text, at + (hasRoom ? -6 : 6), foot, paint, { anchor: hasRoom ? 'end' : 'start', isBold: true }),
    ];
  });
}
