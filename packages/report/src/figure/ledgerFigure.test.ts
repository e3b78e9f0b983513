import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { elementsOf, withClass } from '../../testing/svgParts.js';
import { errorsFigure } from './errorsFigure.js';
import { ledgerFigure } from './ledgerFigure.js';

const words = wordsFor('en-GB');
const STEPS = [
  { key: 'physiology', label: 'this beat', mmHg: 4 },
  { key: 'talking', label: 'talking', mmHg: 8 },
  { key: 'lag', label: 'late', mmHg: -6 },
];

// Physiology handbook 1.2: the parts sum to entered minus true.
test('each step begins where the one before ends, as long as it is large, and what takes away is hatched', () => {
  const { svg, table, description } = ledgerFigure(
    { component: 'systolic', truth: 116, entered: 122, steps: STEPS },
    words,
  );
  const bars = withClass(svg, 'figure-step').map(({ at }) => ({
    from: Number(at.x),
    to: Number(at.x) + Number(at.width),
    isUp: at.class!.includes('is-up'),
    fill: at.fill,
  }));
  const [truth, entered] = withClass(svg, 'figure-end').map(({ at }) => Number(at.x1));
  const perMmHg = (bars[0]!.to - bars[0]!.from) / 4;
  expect(bars.map(({ isUp }) => isUp)).toEqual([true, true, false]);
  expect(bars[0]!.from).toBeCloseTo(truth!, 1);
  expect(bars[1]!.from).toBeCloseTo(bars[0]!.to, 1);
  expect(bars[2]!.to).toBeCloseTo(bars[1]!.to, 1);
  expect(bars[2]!.from).toBeCloseTo(entered!, 1);
  expect((bars[1]!.to - bars[1]!.from) / perMmHg).toBeCloseTo(8, 1);
  expect(bars[2]!.fill).not.toBe(bars[1]!.fill);
  expect(table.rows.map(([, mmHg]) => mmHg)).toEqual(['116.0', '+4.0', '+8.0', '−6.0', '122.0']);
  expect(description).toContain('difference +6.0 mmHg');
});

test('no error at all still draws', () => {
  const { svg } = ledgerFigure({ component: 'diastolic', truth: 80, entered: 80, steps: [] }, words);
  expect(svg).not.toMatch(/NaN|Infinity/);
});

// The numbers of the scale stand apart whatever its span and width: on a phone 330 wide.
test.each([3, 10, 19, 41, 77])(
  'a difference of %i on a phone: no two numbers of the scale touch',
  (difference) => {
    const steps = [{ key: 'a', label: 'a', mmHg: difference }];
    const drawn = ledgerFigure(
      { component: 'systolic', truth: 110, entered: 110 + difference, steps },
      words,
      { width: 330 },
    );
    const bottom = drawn.height - 26 + 14;
    const places = [...drawn.svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>(\d+)<\/text>/g)]
      .filter(([, , y]) => Math.abs(Number(y) - bottom) < 0.1)
      .map(([, x]) => Number(x));
    expect(places.length).toBeGreaterThan(1);
    for (const [i, x] of places.slice(1).entries()) expect(x - (places[i] ?? 0)).toBeGreaterThan(20);
  },
);

test('an error at the edge of what is accepted is full, one just beyond it open; nothing written is a cross', () => {
  const one = (key: string, systolic: number | null) => ({
    key,
    name: key,
    systolic,
    diastolic: null,
    withinMmHg: 5,
    isAccepted: { systolic: systolic === null ? null : Math.abs(systolic) <= 5, diastolic: null },
  });
  const { svg, marks, table } = errorsFigure(
    [one('at', 5), one('beyond', 5.01), one('under', -5), one('none', null)],
    words,
  );
  const isUsed = (key: string) => withClass(svg, `key-${key}`)[0]!.at.class!.includes('is-used');
  expect([isUsed('at'), isUsed('beyond'), isUsed('under')]).toEqual([true, false, true]);
  expect(withClass(svg, 'is-cross').length).toBe(1);
  expect(marks[3]?.text).toBe('none: nothing written.');
  expect(table.rows[0]).toEqual(['at', '+5.0', '-', 'yes, limit 5 mmHg']);
  expect(table.rows[1]?.[3]).toBe('no, limit 5 mmHg');
  expect(table.rows[3]?.[3]).toBe('nothing written');
  // The list of the page names each by its number under the figure.
  expect(svg).toContain('>4</text>');
});

// By eye on a screen of 390 pixels: letters of less than 11 are guessed at. Source: no source, decision of this project.
test.each([320, 350, 1050, 1280])('%i pixels wide no letter is under 11 pixels, and none is cut', (width) => {
  const longest = 'where the cuff was at the beat';
  const steps = [{ key: 'a', label: longest, mmHg: 12 }];
  const errors = Array.from({ length: 20 }, (_, k) => ({
    ...{ key: `e${k}`, name: `exercise ${k}`, systolic: 3 * k - 20, diastolic: k, withinMmHg: 5 },
    isAccepted: { systolic: true, diastolic: true },
  }));
  const drawings = [
    ledgerFigure({ component: 'systolic', truth: 110, entered: 122, steps }, words, { width }),
    errorsFigure(errors, words, { width, height: 260 }),
  ];
  for (const { svg, height } of drawings) {
    const texts = elementsOf(svg).filter(({ name }) => name === 'text');
    expect(texts.length).toBeGreaterThan(4);
    for (const { at, text } of texts) {
      const size = Number(at['font-size']);
      expect(size).toBeGreaterThanOrEqual(11);
      if (at.transform !== undefined) continue;
      // A letter is no wider than 0.62 of its size on the mean: the page's font is narrower.
      const wide = text.length * size * 0.62;
      const anchor = { start: 0, middle: 0.5, end: 1 }[at['text-anchor'] ?? 'start'] ?? 0;
      const from = Number(at.x) - anchor * wide;
      expect(from).toBeGreaterThan(-1);
      expect(from + wide).toBeLessThan(width + 1);
      expect(Number(at.y)).toBeLessThan(height);
    }
  }
});

test('twenty exercises on a phone: no two of their numbers touch, and the newest has its own', () => {
  const errors = Array.from({ length: 20 }, (_, k) => ({
    ...{ key: `e${k}`, name: `exercise ${k}`, systolic: 1, diastolic: 1, withinMmHg: 5 },
    isAccepted: { systolic: true, diastolic: true },
  }));
  const { svg } = errorsFigure(errors, words, { width: 350, height: 260 });
  const places = elementsOf(svg)
    .filter(({ name, at, text }) => name === 'text' && at['text-anchor'] === 'middle' && /^\d+$/.test(text))
    .map(({ at, text }) => [Number(at.x), text] as const);
  expect(places.at(-1)?.[1]).toBe('20');
  for (const [i, [x]] of places.slice(1).entries()) expect(x - (places[i]?.[0] ?? 0)).toBeGreaterThan(15);
});
