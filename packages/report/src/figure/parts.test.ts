import fc from 'fast-check';
import { expect, test } from 'vitest';
import { movedApart } from './parts.js';

test('labels that are far enough apart stay, those too close are moved about their middle', () => {
  expect(movedApart([10, 50, 30], 10)).toEqual([10, 50, 30]);
  expect(movedApart([20, 24], 10)).toEqual([17, 27]);
  // The second pushes the first into the third's way: all three about their middle.
  expect(movedApart([20, 21, 31], 10)).toEqual([14, 24, 34]);
  // Where two are one, the first of them stands above.
  expect(movedApart([40, 40], 10)).toEqual([35, 45]);
  expect(movedApart([])).toEqual([]);
});

test('no two labels stand closer than asked, and their order is kept', () => {
  const places = fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 8 });
  fc.assert(
    fc.property(places, (given) => {
      const moved = movedApart(given, 10);
      const order = given.map((_, k) => k).sort((a, b) => (given[a] ?? 0) - (given[b] ?? 0));
      for (let k = 1; k < order.length; k++) {
        const [above, below] = [order[k - 1] as number, order[k] as number];
        expect((moved[below] as number) - (moved[above] as number)).toBeGreaterThan(10 - 1e-6);
      }
    }),
  );
});
