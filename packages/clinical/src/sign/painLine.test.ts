import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineOfScore, scoreOfLine } from './painLine.js';

// Bedside handbook 4.3 (from memory): a line of 0 to 100 mm, a score of 0 to 10.
test.each([
  [0, 0],
  [7, 0.7],
  [47, 4.7],
  [69.5, 6.95],
  [100, 10],
])('%d mm is a score of %d, and back', (mm, score) => {
  expect(scoreOfLine(mm)).toBe(score);
  expect(lineOfScore(score)).toBe(mm);
});

test('every whole mm comes back as it was', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100 }), (mm) => {
      expect(lineOfScore(scoreOfLine(mm))).toBe(mm);
    }),
  );
});
