import { expect, test } from 'vitest';
import { isCategoryHeldBack, isCategoryOfLow } from './categoryBeside.js';

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

test('no category is named of a pressure that is itself low, and one is of a pressure beside a low one', () => {
  const alert = { condition: 'very-low-pressure', figures: { systolic: 84, veryLowSystolic: 90 } };
  const of = (systolic: string | null, flags: { code: string }[] = []) => ({ shown: { systolic }, flags });
  expect(isCategoryOfLow({ category: of('84'), actNow: [alert] })).toBe(true);
  expect(isCategoryOfLow({ category: of('88', [{ code: 'very-low' }]), actNow: [] })).toBe(true);
  expect(isCategoryOfLow({ category: of('70', [{ code: 'child-low' }]), actNow: [] })).toBe(true);
  expect(isCategoryOfLow({ category: of('128'), actNow: [alert] })).toBe(false);
  expect(isCategoryOfLow({ category: of(null), actNow: [alert] })).toBe(false);
  expect(isCategoryOfLow({ category: null, actNow: [alert] })).toBe(false);
});
