import { expect, test } from 'vitest';
import { uniform } from '../chance/uniform.js';
import { cosineOfTurns, sineOfTurns } from './circle.js';

test('sine and cosine of turns', () => {
  let worst = 0;
  for (let i = 0; i < 20_000; i++) {
    const u = -3 + 6 * uniform(1, 'noise', i);
    worst = Math.max(worst, Math.abs(sineOfTurns(u) - Math.sin(2 * Math.PI * u)));
    worst = Math.max(worst, Math.abs(cosineOfTurns(u) - Math.cos(2 * Math.PI * u)));
  }
  // Math is given a rounded 2 pi u: its own argument is off by up to 2e-15 here.
  expect(worst).toBeLessThan(8e-15);
  expect([0, 0.25, 0.5, 0.75, 1, 1e6 + 0.25].map((u) => sineOfTurns(u) + 0)).toEqual([0, 1, 0, -1, 0, 1]);
  expect([0, 0.25, 0.5, 0.75, -1].map((u) => cosineOfTurns(u) + 0)).toEqual([1, 0, -1, 0, 1]);
  expect(sineOfTurns(1 / 12)).toBeCloseTo(0.5, 15);
});
