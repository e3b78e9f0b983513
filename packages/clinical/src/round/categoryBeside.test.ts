import { expect, test } from 'vitest';
import { isCategoryHeldBack } from './categoryBeside.js';

const NOTHING = { category: { level: 'usual' }, actNow: [], standing: null } as const;
const STOOD = { positive: false, delayed: null, flags: [] } as const;
const LOW = [{ condition: 'very-low-pressure' }];

// Common practice, no source.
test.each([
  ['nothing else', NOTHING, false],
  ['a low alert', { ...NOTHING, actNow: LOW }, true],
  ['another alert', { ...NOTHING, actNow: [{ condition: 'very-fast-pulse' }] }, false],
  ['a fall', { ...NOTHING, standing: { ...STOOD, positive: true } }, true],
  ['a late fall', { ...NOTHING, standing: { ...STOOD, delayed: true } }, true],
  [
    'low on the feet',
    { ...NOTHING, standing: { ...STOOD, flags: [{ code: 'standing-systolic-low' }] } },
    true,
  ],
  ['no fall', { ...NOTHING, standing: STOOD }, false],
  [
    'a raised one with a fall',
    { ...NOTHING, category: { level: 'raised' }, standing: { ...STOOD, positive: true } },
    false,
  ],
  ['no category', { ...NOTHING, category: null, actNow: LOW }, false],
] as const)('a category beside %s', (_name, made, isHeld) => {
  expect(isCategoryHeldBack(made)).toBe(isHeld);
});
