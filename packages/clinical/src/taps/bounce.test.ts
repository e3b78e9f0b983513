import { expect, test } from 'vitest';
import { placesWithoutBounces } from './bounce.js';

test.each([
  ['just under 150 ms is the same tap, 150 ms is another', [0, 0.149, 0.15, 0.3], [0, 2, 3]],
  ['measured from the last tap kept, so a burst cannot creep on', [0, 0.1, 0.2, 0.29, 0.35], [0, 2, 4]],
  ['wherever the clock has its zero', [1e9, 1e9 + 0.149, 1e9 + 0.15], [0, 2]],
  ['one tap', [4], [0]],
])('%s', (_, seconds, kept) => {
  expect(placesWithoutBounces(seconds)).toEqual(kept);
});
