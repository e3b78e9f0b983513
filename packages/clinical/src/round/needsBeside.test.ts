import { expect, test } from 'vitest';
import { needsBeside } from './needsBeside.js';

const MORE = { code: 'more-readings', figures: { readings: 1, needs: 2 } };
const NOW = { code: 'again-at-once', figures: {} };
const NONE = { needs: [MORE], actNow: [], standing: null };

// Bedside handbook 3.14, 3.15: whoever is very low or was laid down is told of no rest and no further reading sitting.
test('an average says what it needs, but nothing that the step says, and nothing beside a low pressure', () => {
  expect(needsBeside(NONE)).toEqual([MORE]);
  expect(needsBeside({ ...NONE, needs: [NOW] })).toEqual([]);
  expect(needsBeside({ ...NONE, actNow: [{ condition: 'severe-in-pregnancy' }] })).toEqual([MORE]);
  expect(needsBeside({ ...NONE, actNow: [{ condition: 'very-low-pressure' }] })).toEqual([]);
  const standing = (code: string) => needsBeside({ ...NONE, standing: { flags: [{ code }] } });
  expect([standing('symptoms-on-standing'), standing('standing-systolic-low')]).toEqual([[], []]);
  expect(standing('fall-on-standing')).toEqual([MORE]);
});
