import { expect, test } from 'vitest';
import { gaugeRead, isOnGraduation } from './graduation.js';

test.each([
  // Bedside handbook 8, C043 (from memory, 3.9): a needle between 126 and 128 is 128 by the next mark above.
  [126.1, 'mark-above', 128],
  [127.9, 'mark-above', 128],
  [128, 'mark-above', 128],
  [128.1, 'mark-above', 130],
  // Bedside handbook 3.9 (found, AAP 2017): to the nearest 2 mmHg.
  [126.9, 'nearest', 126],
  [127, 'nearest', 128],
  [127.1, 'nearest', 128],
  [128.9, 'nearest', 128],
] as const)('a needle at %d, %s: %d', (mmHg, reading, read) => {
  expect(gaugeRead(mmHg, 2, reading)).toBe(read);
});

test.each([
  [118, 2, true],
  [117, 2, false],
  [117, 1, true],
  [115, 5, true],
  [112, 5, false],
  [0, 2, true],
  // 0.3 / 0.1 is not whole in binary; the mark is there.
  [0.3, 0.1, true],
  [147.5, 2, false],
])('%d is on a graduation of %d: %s', (mmHg, stepMmHg, isOn) => {
  expect(isOnGraduation(mmHg, stepMmHg)).toBe(isOn);
});
