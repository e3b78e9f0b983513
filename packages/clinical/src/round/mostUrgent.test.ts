import { expect, test } from 'vitest';
import { mostUrgent } from './mostUrgent.js';

// Bedside handbook 3.15 (very low before severe), 1.7 (who does not respond); the order of the rest: common practice, no source.
test.each([
  [[], null],
  [['early-warning-single-part'], 'early-warning-single-part'],
  [['early-warning-total-medium', 'early-warning-single-part', 'very-low-pressure'], 'very-low-pressure'],
  [['severe-in-pregnancy', 'child-hypotension'], 'child-hypotension'],
  [['very-low-pressure', 'unresponsive'], 'unresponsive'],
  [['early-warning-single-part', 'very-fast-pulse'], 'very-fast-pulse'],
  [['severe-away', 'very-fast-pulse'], 'very-fast-pulse'],
])('of %j what is named is %s', (conditions, named) => {
  expect(mostUrgent(conditions)).toBe(named);
});
