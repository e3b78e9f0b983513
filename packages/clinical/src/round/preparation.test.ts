import { expect, test } from 'vitest';
import { isCuffKnown } from './preparation.js';

// Decision of this project: what was not asked is not known.
test('the cuff is known to be as it should be only once it was on', () => {
  expect(isCuffKnown([], false)).toBe(false);
  expect(isCuffKnown(['not-talking'], false)).toBe(false);
  expect(isCuffKnown(['arm-bare'], false)).toBe(true);
  expect(isCuffKnown([], true)).toBe(true);
  expect(isCuffKnown(null, false)).toBe(true);
});
