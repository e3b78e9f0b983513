import { HOME_OFFSET, type UsualQuestion, usualResult } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { elementsOf, stretchesOf, withClass } from '../../testing/svgParts.js';
import { chanceFigure } from './chanceFigure.js';

const words = wordsFor('en-GB');

function drawnOf(more: Partial<UsualQuestion>, threshold = 135) {
  const result = usualResult({
    component: 'systolic',
    ageYears: null,
    sex: null,
    office: null,
    home: { mean: 136.5833, readings: 24, days: 6, own: null },
    ambulatory: null,
    threshold,
    offset: HOME_OFFSET.systolic,
    ...more,
  });
  if (result === null) throw new Error('nothing is known');
  return { result, ...chanceFigure({ component: 'systolic', result, threshold }, words) };
}

/** The area between a curve and the axis, by trapezoids over the drawn points. */
function areaUnder(points: readonly (readonly [number, number])[], bottom: number): number {
  let area = 0;
  for (let k = 1; k < points.length; k++) {
    const [[x0, y0], [x1, y1]] = [points[k - 1]!, points[k]!];
    area += ((x1 - x0) * (2 * bottom - y0 - y1)) / 2;
  }
  return area;
}

test.each([120, 130, 135, 140, 150])(
  'the part that is marked about %d is as large as the chance that is said',
  (threshold) => {
    const { svg, result } = drawnOf({}, threshold);
    const bottom = Number(withClass(svg, 'figure-axis')[0]!.at.y1);
    const curve = stretchesOf(withClass(svg, 'figure-belief')[0]!.at.d!)[0]!;
    const edge = Number(withClass(svg, 'figure-limit')[0]!.at.x1);
    const over = curve.filter(([x]) => x >= edge);
    const share = areaUnder(over, bottom) / areaUnder(curve, bottom);
    expect(Math.abs(share - result.probability)).toBeLessThan(0.03); // the drawing has a point each hundredth of its width
    for (const { at } of withClass(svg, 'figure-hatch')) {
      expect(Number(at.x1)).toBeGreaterThan(edge);
      expect(Number(at.y2)).toBeLessThan(bottom);
    }
  },
);

test('the prior is dashed where there is one, and the text says all of it', () => {
  const alone = drawnOf({});
  expect(withClass(alone.svg, 'figure-prior')).toEqual([]);
  expect(alone.table.rows.length).toBe(1);
  const withPrior = drawnOf({ ageYears: 55, sex: 'm' });
  expect(withClass(withPrior.svg, 'figure-prior')[0]!.at['stroke-dasharray']).toBeTruthy();
  expect(withClass(withPrior.svg, 'figure-belief')[0]!.at['stroke-dasharray']).toBeUndefined();
  expect(withPrior.description).toContain('at or above 135');
  expect(withPrior.description).toContain('under the stated assumptions');
  expect(withPrior.description).toContain('Dashed');
  expect(withPrior.marks.map(({ key }) => key)).toEqual(['mean', 'threshold', 'prior']);
});

test('the axis says what it is of, and a chance at the end is never 0 or 100', () => {
  const { svg, description } = drawnOf({}, 90);
  expect(elementsOf(svg).map(({ text }) => text)).toContain('Systolic: usual level, mmHg');
  expect(description).toContain('over 99 %');
  expect(drawnOf({}, 200).description).toContain('under 1 %');
  expect(svg).not.toMatch(/NaN|Infinity/);
});
