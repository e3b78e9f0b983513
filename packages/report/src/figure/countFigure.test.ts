import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { withClass } from '../../testing/svgParts.js';
import { countErrorsFigure } from './countErrorsFigure.js';
import { countFigure } from './countFigure.js';

const words = wordsFor('en-GB');
/** A beat each second from two before the window, at half past, to two after it. */
const COUNT = {
  of: 'pulse',
  startSeconds: 100,
  windowSeconds: 15,
  events: Array.from({ length: 19 }, (_, k) => 98.5 + k),
  n: 14,
  there: 15,
} as const;

// docs/conventions.md section 5: with the clock started at any moment beats in [s, s + W) count.
test('each beat stands at its second, those of the window numbered from one', () => {
  const { svg, marks, table, description } = countFigure(COUNT, words, { width: 640 });
  const strokes = withClass(svg, 'figure-stroke').map(({ at }) => Number(at.x1));
  const [from, to] = withClass(svg, 'figure-window').map(({ at }) => Number(at.x1));
  expect(strokes).toHaveLength(19);
  const step = strokes[1]! - strokes[0]!;
  expect(strokes.every((x, k) => Math.abs(x - strokes[0]! - k * step) < 0.1)).toBe(true);
  expect(to! - from!).toBeCloseTo(15 * step, 0);
  expect(marks.filter(({ isUsed }) => isUsed)).toHaveLength(15);
  expect(table.rows.map(([number]) => number)).toEqual([
    '-',
    '-',
    ...Array.from({ length: 15 }, (_, k) => String(k + 1)),
    '-',
    '-',
  ]);
  expect(marks[2]?.text).toBe('Beat 1 of the window, at 0.5 s');
  expect(description).toBe('A window of 15 s with 15 in it; 14 were counted.');
});

test('nothing in the window is drawn as an empty one', () => {
  const { svg, table } = countFigure({ ...COUNT, events: [], there: 0 }, words);
  expect(withClass(svg, 'figure-stroke')).toEqual([]);
  expect(table.rows).toEqual([]);
  expect(svg).not.toContain('NaN');
});

test('counts over time: filled where accepted, each in its row, under the number of its exercise', () => {
  const { svg, table, marks } = countErrorsFigure(
    [
      {
        key: 'a',
        number: 2,
        name: 'Tide',
        pulse: null,
        apex: null,
        breaths: { perMinute: 6, isAccepted: false },
      },
      {
        key: 'b',
        number: 4,
        name: 'Quiet morning',
        pulse: { perMinute: -2, isAccepted: true },
        apex: null,
        breaths: { perMinute: 0, isAccepted: true },
      },
    ],
    words,
  );
  const fills = withClass(svg, 'figure-mark').map(({ at }) => at.fill);
  expect(fills).toHaveLength(3);
  expect(fills[0]).not.toBe(fills[1]);
  expect(fills[1]).toBe(fills[2]);
  expect(table.rows).toEqual([
    ['Tide', '-', '-', '+6'],
    ['Quiet morning', '−2', '-', '0'],
  ]);
  expect(marks[0]?.text).toBe('Tide: breaths +6 a minute.');
});
