import { expect, test } from 'vitest';
import { needsBeside } from './needsBeside.js';

const MORE = { code: 'more-readings', figures: { readings: 1, needs: 2 } };
const NOW = { code: 'again-at-once', figures: {} };
const NONE = { needs: [MORE], actNow: [], standing: null };

// Bedside handbook 3.14, 3.15: whoever is very low or was laid down is told of no rest and no further reading sitting.
test('an average says what it needs, but nothing that the step says, and beside a low pressure only that two differ', () => {
  expect(needsBeside(NONE)).toEqual([MORE]);
  expect(needsBeside({ ...NONE, needs: [NOW] })).toEqual([]);
  expect(needsBeside({ ...NONE, actNow: [{ condition: 'severe-in-pregnancy' }] })).toEqual([MORE]);
  expect(needsBeside({ ...NONE, actNow: [{ condition: 'very-low-pressure' }] })).toEqual([]);
  const APART = { code: 'differ-over', figures: { systolicMmHg: 44, diastolicMmHg: 27, limitMmHg: 10 } };
  // 84/50, then 128/77: what stands between them says how far they are apart.
  const low = { ...NONE, needs: [MORE, APART], actNow: [{ condition: 'very-low-pressure' }] };
  expect(needsBeside(low)).toEqual([APART]);
  const standing = (code: string) => needsBeside({ ...NONE, standing: { flags: [{ code }] } });
  expect([standing('symptoms-on-standing'), standing('standing-systolic-low')]).toEqual([[], []]);
  expect(standing('fall-on-standing')).toEqual([MORE]);
});
