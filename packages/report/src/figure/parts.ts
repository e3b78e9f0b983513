import { type Attributes, coordinate, element, escaped, type Svg } from '../svg/svg.js';
import type { Paint } from './paint.js';

/** Sizes of text in a figure, in its units. */
export const TEXT = { usual: 10, small: 8.5 } as const;

/** Half the width of a mark. */
export const HALF = 3.6;

export type Shape = 'systolic' | 'diastolic' | 'pulse' | 'cross';

/** A mark as paper charts have it: a triangle on its point for systolic, on its base for diastolic, a dot for pulse. */
export function markShape(
  shape: Shape,
  x: number,
  y: number,
  isUsed: boolean,
  paint: Paint,
  key: string,
  half = HALF,
): Svg {
  const look: Attributes = {
    class: `figure-mark is-${shape} ${isUsed ? 'is-used' : 'is-left-out'} key-${key}`,
    fill: isUsed ? paint.ink : paint.ground,
    stroke: isUsed ? paint.ink : paint.muted,
    'stroke-width': isUsed ? 0.8 : 1.1,
  };
  if (shape === 'pulse') return element('circle', { cx: x, cy: y, r: half - 1, ...look });
  if (shape === 'cross') {
    const d = `M${coordinate(x - half)} ${coordinate(y - half)}L${coordinate(x + half)} ${coordinate(y + half)}M${coordinate(x - half)} ${coordinate(y + half)}L${coordinate(x + half)} ${coordinate(y - half)}`; // biome-ignore format: one thought
    return element('path', { d, ...look, fill: 'none' });
  }
  // The point of the triangle is the value itself.
  const away = shape === 'systolic' ? -1 : 1;
  const base = y + away * half * 1.7;
  const d = `M${coordinate(x)} ${coordinate(y)}L${coordinate(x - half)} ${coordinate(base)}L${coordinate(x + half)} ${coordinate(base)}Z`; // biome-ignore format: one thought
  return element('path', { d, ...look });
}

/** A line of text. */
export function label(
  text: string,
  x: number,
  y: number,
  paint: Paint,
  more: {
    anchor?: 'start' | 'middle' | 'end';
    size?: number;
    isMuted?: boolean;
    isBold?: boolean;
    turned?: boolean;
  } = {},
): Svg {
  const { anchor = 'start', size = TEXT.usual, isMuted = false, isBold = false, turned = false } = more;
  return element(
    'text',
    {
      x,
      y,
      'font-size': size,
      'text-anchor': anchor,
      'font-weight': isBold ? 'bold' : null,
      fill: isMuted ? paint.muted : paint.ink,
      transform: turned ? `rotate(-90 ${coordinate(x)} ${coordinate(y)})` : null,
      class: 'figure-text',
    },
    [escaped(text)],
  );
}

/** A straight line. `dash` as SVG writes it; null for a whole line. */
export function line(
  [x1, y1, x2, y2]: readonly [number, number, number, number],
  stroke: string,
  width: number,
  dash: string | null,
  name: string,
): Svg {
  return element('line', {
    x1,
    y1,
    x2,
    y2,
    stroke,
    'stroke-width': width,
    'stroke-dasharray': dash,
    class: name,
  });
}

/** Dashes that tell lines apart without colour. */
export const DASH = {
  systolicLimit: '7 3',
  diastolicLimit: '2 3',
  diastolicTrace: '3 2',
  prior: '5 4',
} as const;

/** Text in lines of about a width: letters are taken as wide as they are on the average. */
export function wrapped(text: string, width: number, size: number): string[] {
  const most = Math.max(1, Math.floor(width / (size * LETTER)));
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Width of a letter of its size, a little over the mean of the widest font that figures are drawn with. */
const LETTER = 0.58;

/** Where labels at the right of lines stand, so that none stands on another: those too close are moved apart about their middle. */
export function movedApart(places: readonly number[], least = SMALL_LINE - 1): number[] {
  const order = places.map((_, k) => k).sort((a, b) => (places[a] as number) - (places[b] as number));
  const groups: number[][] = [];
  const middleOf = (group: readonly number[]) =>
    group.reduce((sum, k) => sum + (places[k] as number), 0) / group.length;
  const topOf = (group: readonly number[]) => middleOf(group) - ((group.length - 1) * least) / 2;
  for (const k of order) {
    let group = [k];
    for (let last = groups.at(-1); last !== undefined; last = groups.at(-1)) {
      if (topOf(last) + last.length * least <= topOf(group)) break;
      group = [...last, ...group];
      groups.pop();
    }
    groups.push(group);
  }
  const moved = [...places];
  for (const group of groups)
    group.forEach((k, at) => {
      moved[k] = topOf(group) + at * least;
    });
  return moved;
}

/** Distance of lines of small text. */
export const SMALL_LINE = 11;

/** The key under a figure, from the bottom up. */
export function keyLines(lines: readonly string[], left: number, height: number, paint: Paint): Svg[] {
  return lines.map((text, k) =>
    label(text, left, height - 5 - (lines.length - 1 - k) * SMALL_LINE, paint, {
      size: TEXT.small,
      isMuted: true,
    }),
  );
}
