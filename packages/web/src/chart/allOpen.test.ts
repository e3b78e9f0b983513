import { expect, test } from 'vitest';
import { type ActNowSaid, isAllOpen } from './allOpen.js';

const alert = (condition: string, figures: Record<string, number>): ActNowSaid => ({
  condition,
  figures,
  confirmLocally: true,
  source: 'local',
});
const WORST = alert('severe-away', { systolic: 212, diastolic: 124 });
const LOW = alert('very-low', { systolic: 84 });

test('what is open need not be named again where it is all that stands above', () => {
  expect(isAllOpen([WORST], [{ ...WORST }])).toBe(true);
  expect(isAllOpen([WORST, LOW], [LOW, WORST])).toBe(true);
});

// Somebody was told of the worst; days that were added since raised the same alert with figures of their own.
test('what is open is named where others stand above, or the same with other figures', () => {
  expect(isAllOpen([WORST], [alert('severe-away', { systolic: 200, diastolic: 124 })])).toBe(false);
  expect(isAllOpen([WORST], [alert('severe-away', { systolic: 212 })])).toBe(false);
  expect(isAllOpen([alert('severe-away', { systolic: 212 })], [WORST])).toBe(false);
  expect(isAllOpen([WORST, LOW], [LOW])).toBe(false);
  expect(isAllOpen([], [WORST])).toBe(false);
});
