import { expect, test } from 'vitest';
import { homeParts } from './homeParts.js';
import { homeResult, NOTHING_BY_HAND } from './homeResult.js';
import { DEFAULT_HOME_RULES, type HomeRules } from './homeRules.js';
import type { SeriesReading } from './seriesReading.js';
import { H1 } from './testing.js';

const ALL: HomeRules = { ...DEFAULT_HOME_RULES, droppedDays: 0 };
const of = (readings: readonly SeriesReading[], rules: HomeRules) =>
  homeParts(readings, homeResult(readings, NOTHING_BY_HAND, rules).dropped, rules);

// Source: out-of-office handbook 19, H1, to the printed digits: days 1 to 7, then without the first.
test('H1: mornings and evenings vary by themselves from day to day', () => {
  const all = of(H1, ALL);
  expect(all.morning.days).toBe(7);
  expect(all.morning.sd.systolic).toBeCloseTo(4.3562, 4);
  expect(all.morning.cvPercent.systolic).toBeCloseTo(3.0973, 4);
  expect(all.morning.arv.systolic).toBeCloseTo(3.75, 10);
  expect(all.morning.most.systolic).toBe(150);
  expect(all.evening.sd.systolic).toBeCloseTo(4.1375, 4);
  expect(all.morningMinusEvening.mean.systolic).toBeCloseTo(5.0714, 4);
  expect(all.morningMinusEvening.sd.systolic).toBeCloseTo(0.6075, 4);

  const later = of(H1, DEFAULT_HOME_RULES);
  expect(later.morning.days).toBe(6);
  expect(later.morning.sd.systolic).toBeCloseTo(1.5303, 4);
  expect(later.morning.cvPercent.systolic).toBeCloseTo(1.1002, 4);
  expect(later.morning.arv.systolic).toBeCloseTo(2.4, 10);
  expect(later.morning.most.systolic).toBe(141);
  expect(later.evening.sd.systolic).toBeCloseTo(1.3934, 4);
  expect(later.morningMinusEvening).toMatchObject({ days: 6, mean: { systolic: 5 } });
  expect(later.morningMinusEvening.sd.systolic).toBeCloseTo(0.6325, 4);
  expect(later.flags).toEqual([]);
});

// Out-of-office handbook 12: two morning readings on at least 3 days (Finn-Home).
test('fewer than three mornings of two readings are said', () => {
  const few = (readings: readonly SeriesReading[]) => of(readings, ALL).flags;
  expect(few(H1.slice(0, 12))).toEqual([]);
  expect(few(H1.slice(0, 4))).toEqual([]);
  expect(few(H1.slice(0, 8))).toEqual([{ code: 'few-mornings', figures: { mornings: 2, least: 3 } }]);
  // One morning has a reading less.
  expect(few(H1.slice(0, 12).filter(({ index }) => index !== 10))).toEqual([
    { code: 'few-mornings', figures: { mornings: 2, least: 3 } },
  ]);
  const evenings = of(H1.slice(0, 12).filter((_, k) => k % 4 > 1), ALL); // biome-ignore format: one thought
  expect(evenings.morning).toMatchObject({ days: 0, sd: { systolic: null }, most: { systolic: null } });
  expect(evenings.morningMinusEvening).toMatchObject({
    days: 0,
    mean: { systolic: null },
    sd: { systolic: null },
  });
});
