import { expect, test } from 'vitest';
import { gaugeScale, mmHgUnder } from './gaugeGeometry.js';

const gauge = gaugeScale(300, 2);

test('the face runs from 0 at the lower left over 150 at the top to 300 at the lower right', () => {
  expect([0, 75, 150, 225, 300].map(gauge.degrees)).toEqual([-150, -75, 0, 75, 150]);
  expect([-1, 301].map(gauge.degrees)).toEqual([-150, 150]);
  expect(gauge.at(150, 80)).toEqual({ x: 100, y: 20 });
  // Sine and cosine of 30 degrees, from any table: 0.5 and 0.8660.
  expect(gauge.at(0, 100)).toEqual({ x: 50, y: 186.6 });
  expect(gauge.at(300, 100)).toEqual({ x: 150, y: 186.6 });
});

test('it is graduated every 2 mmHg, both ends included (bedside handbook 3.9)', () => {
  expect(gauge.marks.length).toBe(151);
  expect([gauge.marks[0], gauge.marks[1], gauge.marks.at(-1)]).toEqual([0, 2, 300]);
});

test('a finger on a mark reads that mark, and between two the nearer one', () => {
  for (const mmHg of gauge.marks) expect(mmHgUnder(gauge.at(mmHg, 90), mmHg, 300, 2)).toBe(mmHg);
  expect(mmHgUnder(gauge.at(146.9, 90), 0, 300, 2)).toBe(146);
  expect(mmHgUnder(gauge.at(147.1, 90), 0, 300, 2)).toBe(148);
});

test('below, where the face is open, the needle stays at the end it is nearer to', () => {
  for (const x of [80, 100, 120]) {
    expect(mmHgUnder({ x, y: 195 }, 150, 300, 2)).toBe(0);
    expect(mmHgUnder({ x, y: 195 }, 151, 300, 2)).toBe(300);
  }
});
