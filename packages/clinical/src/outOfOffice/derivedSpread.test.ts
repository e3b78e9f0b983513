// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { derivedSpreads } from './derivedSpread.js';
import type { DayNight } from './periods.js';
import { A1, readingAt } from './testing.js';

const DIARY: DayNight = { by: 'asleep-range', asleep: { from: 1380, to: 420 } };

// A1 of the out-of-office handbook 19 by Python's `statistics.stdev`, `min` and `max`; its means stand in the handbook.
test.each([
  ['whole', 'pulsePressure', 2.2481, 45, 54],
  ['whole', 'meanArterial', 8.7183, 79, 110],
  ['day', 'pulsePressure', 1.2759, 49, 54],
  ['day', 'meanArterial', 4.0998, 94.3333, 110],
  ['night', 'pulsePressure', 1.0607, 45, 48],
  ['night', 'meanArterial', 4.0097, 79, 90],
] as const)('A1, %s, %s', (period, derived, sd, least, most) => {
  const found = derivedSpreads(A1, [], DIARY)[period][derived];
  expect(found.sd).toBeCloseTo(sd, 4);
  expect(found.least).toBeCloseTo(least, 4);
  expect(found.most).toBeCloseTo(most, 4);
});

test('what is not used is in none of it, nor what has one number alone; SD as a statistics library has it', () => {
  const left = [3, 17, 33];
  const readings = [...A1, readingAt(41, 1, '8:50', '210/40 70'), { ...readingAt(42, 1, '8:55', '141/90 78'), diastolic: null }]; // biome-ignore format: one list
  const found = derivedSpreads(readings, [...left, 41].map((index) => ({ index })), DIARY); // biome-ignore format: one thought
  const kept = A1.filter(({ index }) => !left.includes(index));
  const values = kept.map((one) => (one.systolic as number) - (one.diastolic as number));
  const { stdev } = jstat as { stdev: (values: readonly number[], isSample: boolean) => number };
  expect(found.whole.pulsePressure.sd).toBeCloseTo(stdev(values, true), 9);
  expect(found.whole.pulsePressure.most).toBe(Math.max(...values));
});

test('one reading has no SD, none has nothing', () => {
  const one = derivedSpreads([readingAt(1, 0, '9:00', '142/88 78')], [], DIARY);
  expect(one.day.meanArterial).toEqual({ sd: null, least: 106, most: 106 });
  expect(one.night.pulsePressure).toEqual({ sd: null, least: null, most: null });
});
