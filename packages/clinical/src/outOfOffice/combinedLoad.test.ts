import { expect, test } from 'vitest';
import { combinedLoad } from './combinedLoad.js';
import type { DayNight } from './periods.js';
import { A1 } from './testing.js';

const DIARY: DayNight = { by: 'asleep-range', asleep: { from: 1380, to: 420 } };
const from = (limit: number) => ({ comparison: '>=', limit }) as const;
const LIMITS = { daySystolic: from(135), dayDiastolic: from(85), nightSystolic: from(120), nightDiastolic: from(70) }; // biome-ignore format: one list

// Out-of-office handbook 19, A1: combined 24-h load (>=) 60.0000 of both numbers.
test('A1 by 135/85 awake and 120/70 asleep', () => {
  expect(combinedLoad(A1, [], DIARY, LIMITS)).toEqual({ systolic: 60, diastolic: 60 });
});

test('of the readings that are used alone, on the side that the limit says', () => {
  // By hand: 22 of 32 by day and 2 of 8 by night are 135 and 120 or more; reading 1, of 142/88, is one of them.
  expect(combinedLoad(A1, [{ index: 1 }], DIARY, LIMITS).systolic).toBeCloseTo((100 * 23) / 39, 9);
  const over = { ...LIMITS, daySystolic: { comparison: '>', limit: 135 } as const };
  // 65.625 % of 32 awake are over 135 (handbook 19), which is 21, and 2 of 8 asleep.
  expect(combinedLoad(A1, [], DIARY, over).systolic).toBeCloseTo((100 * 23) / 40, 9);
});

test('without a limit of one period, or without readings, there is none', () => {
  expect(combinedLoad(A1, [], DIARY, { ...LIMITS, nightSystolic: null })).toEqual({ systolic: null, diastolic: 60 }); // biome-ignore format: one thought
  expect(combinedLoad([], [], DIARY, LIMITS)).toEqual({ systolic: null, diastolic: null });
});
