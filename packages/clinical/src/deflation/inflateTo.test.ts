import { expect, test } from 'vitest';
import { inflateTo } from './inflateTo.js';
import { DEFAULT_INFLATION_RULES } from './rules.js';

test('C037: pulse lost at 124, margin 30 or 10', () => {
  // Bedside handbook 8, C037 (second-hand; 10 is common practice, 3.5).
  expect(inflateTo(124, DEFAULT_INFLATION_RULES)).toBe(154);
  expect(inflateTo(124, { marginMmHg: 10 })).toBe(134);
});
