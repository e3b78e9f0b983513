import { expect, test } from 'vitest';
import { cosinorTimes } from './cosinorTimes.js';

test('of equally spaced times the equations are told apart at once: 1/n for the mesor, 2/n for each wave', () => {
  // Cornelissen 2014, Theor Biol Med Model 11:16: the waves of whole periods stand at right angles to each other.
  const { n, inverseOfOne, inverseOfTwo } = cosinorTimes(Array.from({ length: 24 }, (_, hour) => hour));
  expect(n).toBe(24);
  for (let a = 0; a < 5; a++) {
    for (let b = 0; b < 5; b++) {
      const wanted = a !== b ? 0 : a === 0 ? 1 / 24 : 2 / 24;
      expect(inverseOfTwo?.[a * 5 + b]).toBeCloseTo(wanted, 12);
      // What belongs to the harmonic that is not fitted is 0 itself.
      if (a < 3 && b < 3) expect(inverseOfOne?.[a * 5 + b]).toBeCloseTo(wanted, 12);
      else expect(inverseOfOne?.[a * 5 + b]).toBe(0);
    }
  }
});

test('three times tell one harmonic and not two; fewer, or one time again and again, tell none', () => {
  expect(cosinorTimes([0, 8, 16])).toMatchObject({ inverseOfTwo: null });
  expect(cosinorTimes([0, 8, 16]).inverseOfOne).not.toBeNull();
  expect(cosinorTimes([0, 8])).toMatchObject({ inverseOfOne: null, inverseOfTwo: null });
  expect(cosinorTimes([3, 3, 3, 3, 3, 27])).toMatchObject({ inverseOfOne: null, inverseOfTwo: null });
});
