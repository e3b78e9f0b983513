import { expect, test } from 'vitest';
import { typedPressure } from '../pressure/typedPressure.js';
import { typedText } from '../round/measuring.js';
import { keptText } from './keptText.js';

test.each([
  ['148/927', typedPressure, '148/92'],
  ['14892', typedPressure, '148/92'],
  ['148/92', typedPressure, '148/92'],
  ['072', typedText, '72'],
])('%s is kept and shown as what is taken of it', (typed, keep, kept) => {
  const field = { value: typed };
  expect(keptText(field, keep)).toBe(kept);
  expect(field.value).toBe(kept);
});
