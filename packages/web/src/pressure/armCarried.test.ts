import { expect, test } from 'vitest';
import { isArmCarried } from './armCarried.js';
import type { DraftRun } from './pressureDraft.js';

const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: 38,
  override: null,
} as const;
const onRight = [{ place: PLACE } as unknown as DraftRun];

test('38 cm measured on the right arm are carried over on the left one, and are not once they are changed', () => {
  const moved = { place: { ...PLACE, side: 'left' }, values: onRight } as const;
  expect(isArmCarried(moved, 'left', 38)).toBe(true);
  expect(isArmCarried(moved, 'left', 37)).toBe(false);
  expect(isArmCarried(moved, 'left', null)).toBe(false);
  expect(isArmCarried({ place: PLACE, values: onRight }, 'right', 38)).toBe(false);
  // No reading was taken yet, and the other arm is chosen.
  expect(isArmCarried({ place: PLACE, values: [] }, 'left', 38)).toBe(true);
  expect(isArmCarried({ place: PLACE, values: [] }, 'right', 38)).toBe(false);
});
