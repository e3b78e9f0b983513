import { expect, test } from 'vitest';
import { isChild } from './isChild.js';

// docs/conventions.md section 7: an adult category is refused under 18.
test.each([
  [17, true],
  [18, false],
  [null, false],
])('%s years: %s', (ageYears, child) => {
  expect(isChild(ageYears)).toBe(child);
});
