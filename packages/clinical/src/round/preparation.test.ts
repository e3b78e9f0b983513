import { expect, test } from 'vitest';
import { areCuffPointsKnown } from './preparation.js';

// Decision of this project: what was not asked is not known.
test('the cuff is known to be as it should be only once it was on', () => {
  expect(areCuffPointsKnown([], false)).toBe(false);
  expect(areCuffPointsKnown(['not-talking'], false)).toBe(false);
  expect(areCuffPointsKnown(['arm-bare'], false)).toBe(true);
  expect(areCuffPointsKnown([], true)).toBe(true);
  expect(areCuffPointsKnown(null, false)).toBe(true);
});
