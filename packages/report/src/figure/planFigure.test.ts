import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { elementsOf, withClass } from '../../testing/svgParts.js';
import { estimateText, type PlanRow, planFigure } from './planFigure.js';

const words = wordsFor('en-GB');
const ROWS: PlanRow[] = [
  { key: 'bias', label: 'bias', unit: 'mmHg', first: { value: -2, standardError: 0.5 }, second: { value: 1, standardError: 0.25 } },
  { key: 'within5', label: 'within', unit: 'share', first: { value: 0.4, standardError: 0.01 }, second: { value: null, standardError: null } },
]; // biome-ignore format: rows

test('each estimate stands on the scale of its unit, its line 1.96 standard errors to either side', () => {
  const { svg, marks } = planFigure(ROWS, words);
  const errors = withClass(svg, 'figure-error').map(({ at }) => [Number(at.x1), Number(at.x2)] as const);
  const zero = Number(withClass(svg, 'figure-zero')[0]!.at.x1);
  const [first, second] = [Number(withClass(svg, 'key-bias-first')[0]!.at.cx), errors[1]!];
  const perMmHg = (zero - first) / 2;
  // 1.96 standard errors, the two-sided 95 % point of a normal distribution.
  expect((errors[0]![1] - errors[0]![0]) / perMmHg).toBeCloseTo(2 * 1.96 * 0.5, 1);
  expect(((second[0] + second[1]) / 2 - zero) / perMmHg).toBeCloseTo(1, 1);
  expect(marks.map(({ key }) => key)).toEqual(['bias-first', 'bias-second', 'within5-first']);
  expect(withClass(svg, 'is-first')[0]!.at.fill).not.toBe(withClass(svg, 'is-second')[0]!.at.fill);
});

test('numbers are said with their errors, shares in percent, and what is not known as a dash', () => {
  expect(estimateText({ value: -2, standardError: 0.5 }, 'mmHg', words)).toBe('−2.0 mmHg (± 0.50)');
  expect(estimateText({ value: 0.4, standardError: 0.01 }, 'share', words)).toBe('40.0 % (± 1.00)');
  expect(estimateText({ value: null, standardError: null }, 'share', words)).toBe('-');
  const { svg, table } = planFigure([], words);
  expect(svg).not.toMatch(/NaN|Infinity/);
  expect(table.rows).toEqual([]);
});

// By eye on a screen of 390 pixels: letters of less than 11 are guessed at. Source: no source, decision of this project.
test.each([350, 1050])(
  '%i pixels wide each name stands over its row, in letters that can be read',
  (width) => {
    const { svg, marks, height } = planFigure(ROWS, words, { width });
    const texts = elementsOf(svg).filter(({ name }) => name === 'text');
    for (const { at } of texts) expect(Number(at['font-size'])).toBeGreaterThanOrEqual(11);
    const nameY = (text: string) => Number(texts.find((one) => one.text === text)?.at.y);
    const [bias, , within] = marks;
    expect(nameY('bias')).toBeLessThan((bias?.y ?? 0) - 5);
    expect(nameY('within')).toBeLessThan((within?.y ?? 0) - 5);
    expect(nameY('within')).toBeGreaterThan((bias?.y ?? 0) + 5);
    for (const { x, y } of marks) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(width);
      expect(y).toBeLessThan(height);
    }
  },
);
