import { expect, test } from 'vitest';
import { ofSchedule } from './ofSchedule.js';
import { readingAt } from './testing.js';

// Out-of-office handbook 5: valid / (valid + failed + edited out) of the schedule, and by hand is no part of it.
test('what failed or was edited out is counted of the schedule alone, what a hand started beside it', () => {
  const readings = [1, 2, 3, 4, 5, 6].map((index) => ({
    ...readingAt(index, 0, '15:10', '151/94 88'),
    startedByHand: index > 4,
  }));
  const edited = [
    { index: 1, code: 'failed', figures: {} },
    { index: 2, code: 'systolic-range', figures: {} },
    { index: 3, code: 'duplicate', figures: {} },
    { index: 5, code: 'failed', figures: {} },
    { index: 6, code: 'rejected', figures: {} },
  ] as const;
  expect(ofSchedule(readings, edited)).toEqual({ failed: 1, edited: 1, byHand: 2 });
});
