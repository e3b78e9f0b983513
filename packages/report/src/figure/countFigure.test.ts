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
  there: 15,
  yours: { of: 'number', n: 14 },
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

test('the number that was counted points to where it would have been reached, and stays in the figure', () => {
  const at = (n: number) => {
    const { svg } = countFigure({ ...COUNT, yours: { of: 'number', n } }, words, { width: 320 });
    const [place] = withClass(svg, 'figure-tap').map(({ at: one }) =>
      Number(/^M([\d.]+)/.exec(one.d ?? '')?.[1]),
    );
    return { place, strokes: withClass(svg, 'figure-stroke').map(({ at: one }) => Number(one.x1)), svg };
  };
  const { place, strokes, svg } = at(14);
  // The fourteenth of the window is the sixteenth that is drawn.
  expect(place).toBeCloseTo(strokes[15]!, 1);
  expect(svg).toContain('counted 14');
  expect(at(20).place).toBeGreaterThan(strokes[16]!);
  expect(at(20).place).toBeLessThanOrEqual(320);
});

test('taps stand under what they are of; one without and one too many are told apart, in the readout and as numbers', () => {
  const events = [99, 100, 101, 102, 103];
  const { svg, marks, table, description } = countFigure(
    {
      of: 'pulse',
      startSeconds: 100.1,
      windowSeconds: 2.2,
      events,
      there: 3,
      yours: {
        of: 'taps',
        taps: [
          { atSeconds: 100.1, isExtra: false },
          { atSeconds: 100.4, isExtra: true },
          { atSeconds: 102.3, isExtra: false },
        ],
        wanted: [100, 101, 102],
        missed: [101],
      },
    },
    words,
  );
  expect(withClass(svg, 'figure-tap')).toHaveLength(3);
  expect(withClass(svg, 'figure-missed')).toHaveLength(1);
  expect(marks.map(({ x }) => x)).toEqual(marks.map(({ x }) => x).toSorted((a, b) => a - b));
  expect(marks.map(({ text }) => text)).toContain('Beat 2 of the window, at 0.9 s; no tap');
  expect(marks.map(({ text }) => text)).toContain('Your tap 2, at 0.3 s: one too many');
  expect(table.rows).toEqual([
    ['-', '−1.1', '-'],
    ['1', '−0.1', '-'],
    ['-', '0.0', 'tap 1'],
    ['-', '0.3', 'tap 2, one too many'],
    ['2', '0.9', 'no tap'],
    ['3', '1.9', '-'],
    ['-', '2.2', 'tap 3'],
    ['-', '2.9', '-'],
  ]);
  expect(description).toBe(
    '3 taps; from the first of them to the last there were 3 to tap. 1 had no tap; taps too many: 1.',
  );
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
