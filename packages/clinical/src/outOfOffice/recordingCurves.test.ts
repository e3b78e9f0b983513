import { expect, test } from 'vitest';
import { cosinor } from './cosinor.js';
import { periodColumns } from './periodColumns.js';
import { recordingCurves } from './recordingCurves.js';
import type { SeriesReading } from './seriesReading.js';
import { A1 } from './testing.js';

const curves = (readings: readonly SeriesReading[]) =>
  recordingCurves(readings, periodColumns(readings, readings.map(() => 'day' as const)).whole); // biome-ignore format: one thought
const inOrder = [...A1].sort((a, b) => a.atMs - b.atMs);

test('each measure at its own times: one with blanks is fitted as if the others were not there', () => {
  const blanks = inOrder.map((one, k) => (k % 7 === 3 || k === 0 ? { ...one, pulse: null } : one));
  const found = curves(blanks);
  for (const measure of ['systolic', 'pulse'] as const) {
    const having = blanks.filter((one) => one[measure] !== null);
    // Local hours from the midnight of the first day; the fit itself has its own check values (cosinor.test).
    const hours = having.map((one) => one.localDay * 24 + one.minuteOfDay / 60);
    const alone = cosinor(hours, having.map((one) => one[measure] as number), 2); // biome-ignore format: one thought
    expect(found[measure].two?.mesor).toBeCloseTo(alone?.mesor ?? Number.NaN, 9);
    expect(found[measure].two?.sse).toBeCloseTo(alone?.sse ?? Number.NaN, 6);
    expect(found[measure].one?.harmonics).toHaveLength(1);
  }
});

// Out-of-office handbook 15: at least 12 readings, no gap over 4 h, 20 h covered.
test('no curve under 12 readings, over a gap of more than 4 hours, or of less than 20 hours', () => {
  const every = (hours: readonly number[]) =>
    hours.map((hour, k): SeriesReading => ({ ...(A1[k % A1.length] as SeriesReading), index: k + 1, atMs: hour * 3_600_000, localDay: Math.floor(hour / 24), minuteOfDay: (hour % 24) * 60 })); // biome-ignore format: one thought
  const isFitted = (hours: readonly number[]) => curves(every(hours)).systolic.one !== null;
  const steps = (n: number, step: number) => Array.from({ length: n }, (_, k) => k * step);
  expect(isFitted(steps(12, 2))).toBe(true);
  expect(isFitted(steps(11, 2))).toBe(false);
  expect(isFitted(steps(21, 1))).toBe(true);
  expect(isFitted(steps(20, 1))).toBe(false);
  expect(isFitted([...steps(17, 1), 20])).toBe(true);
  expect(isFitted([...steps(17, 1), 20.25])).toBe(false);
});
