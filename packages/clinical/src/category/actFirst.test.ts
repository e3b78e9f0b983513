import { expect, test } from 'vitest';
import { actFirst } from './actFirst.js';

// Bedside handbook 3.16 (180 or 120; 160 or 110 in pregnancy) and 5.2 (3 points at 90 or under), both sides of each.
test.each<[number | null, number | null, boolean, string[]]>([
  [179, 119, false, []],
  [180, 119, false, ['severe-reading']],
  [179, 120, false, ['severe-reading']],
  [180, null, false, ['severe-reading']],
  [null, 120, false, ['severe-reading']],
  [159, 109, true, []],
  [160, 109, true, ['severe-reading']],
  [159, 110, true, ['severe-reading']],
  [90, 50, false, ['very-low']],
  [90, null, true, ['very-low']],
  [91, 50, false, []],
  [null, null, false, []],
])('%j/%j, pregnant %j: %j', (systolic, diastolic, isPregnant, codes) => {
  expect(actFirst({ systolic, diastolic }, isPregnant).map(({ code }) => code)).toEqual(codes);
});
