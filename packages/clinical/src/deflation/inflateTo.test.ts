import { expect, test } from 'vitest';
import { inflateTo, isFeltOn } from './inflateTo.js';
import { DEFAULT_INFLATION_RULES } from './rules.js';

test('C037: pulse lost at 124, margin 30 or 10', () => {
  // Bedside handbook 8, C037 (second-hand; 10 is common practice, 3.5).
  const felt = { lostMmHg: 124, readMmHg: [] };
  expect(inflateTo(felt, DEFAULT_INFLATION_RULES)).toEqual({ mmHg: 154, by: 'felt' });
  expect(inflateTo(felt, { marginMmHg: 10 })).toEqual({ mmHg: 134, by: 'felt' });
});

test('a systolic read above the estimate moves the target up, in tens; one below does not', () => {
  const target = (lostMmHg: number | null, ...readMmHg: number[]) =>
    inflateTo({ lostMmHg, readMmHg }, DEFAULT_INFLATION_RULES);
  expect(target(130, 149)).toEqual({ mmHg: 180, by: 'read' });
  expect(target(130, 150)).toEqual({ mmHg: 180, by: 'read' });
  expect(target(130, 151)).toEqual({ mmHg: 190, by: 'read' });
  expect(target(130, 120, 130)).toEqual({ mmHg: 160, by: 'felt' });
  expect(target(null, 149)).toEqual({ mmHg: 180, by: 'read' });
});

test('nothing known is no target', () => {
  expect(inflateTo({ lostMmHg: null, readMmHg: [] }, DEFAULT_INFLATION_RULES)).toEqual({
    mmHg: null,
    by: null,
  });
});

// Bedside handbook 3.5: stopping inside a gap gives a falsely low systolic. When to feel on: common practice, no source.
test.each([
  ['sitting, read there', { isReadHere: true }, false],
  ['lying, read sitting alone', {}, true],
  ['lying, felt there', { isFeltHere: true }, false],
  ['on the feet, read lying', { isUpright: true }, false],
  ['again after a low one that was not felt for', { isReadHere: true, isLowHere: true }, true],
  ['again after a low one that was', { isFeltHere: true, isReadHere: true, isLowHere: true }, false],
])('%s: the pulse is felt while the cuff goes up, or not', (_, more, isAsked) => {
  const nothing = { isFeltHere: false, isReadHere: false, isLowHere: false, isUpright: false };
  expect(isFeltOn({ ...nothing, ...more })).toBe(isAsked);
});
