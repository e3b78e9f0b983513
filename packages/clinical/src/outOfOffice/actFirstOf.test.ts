import { expect, test } from 'vitest';
import { actFirstIn } from './actFirstOf.js';

// Limits at and on both sides: bedside handbook 3.16 (180 or 120; 160 or 110 in pregnancy) and 5.2 (systolic 90 or less).
test.each([
  [179, 119, false, false, []],
  [180, 80, false, false, ['severe-reading']],
  [140, 120, false, false, ['severe-reading']],
  [120, 181, false, false, ['severe-reading']],
  [159, 109, true, false, []],
  [160, 80, true, false, ['severe-reading']],
  [91, 50, false, false, []],
  [90, 50, false, false, ['very-low']],
  [90, 50, false, true, []],
  [180, null, false, true, ['severe-reading']],
  [null, null, false, false, []],
])('%s/%s, pregnant %s, child %s: %j', (systolic, diastolic, isPregnant, isChild, codes) => {
  const found = actFirstIn([{ systolic, diastolic, line: 7 }], isPregnant, isChild);
  expect(found.map(({ flag }) => flag.code)).toEqual(codes);
  expect(found.every(({ row }) => row.line === 7)).toBe(true);
});
