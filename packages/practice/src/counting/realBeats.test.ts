import { readFileSync } from 'node:fs';
import { countResult, DEFAULT_COUNT_RULES, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { countOf } from './countOf.js';

const sd = (jstat as { stdev: (values: readonly number[], isSample: boolean) => number }).stdev;
const rows = (file: string) =>
  readFileSync(new URL(`../../../clinical/fixtures/${file}`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1);
const BEATS = rows('mitdb-100-beats.csv').map((row) => Number(row.split(',')[0]) / 360);
const ONSETS = rows('tilt-12726-pulse-onsets.csv').map((row) => Number(row) / 1000);

const ratesOf = (seconds: readonly number[], windowSeconds: number, windows: number) =>
  Array.from({ length: windows }, (_, i) => {
    const made = countOf('pulse', seconds, i * windowSeconds, windowSeconds, { clock: 'any', first: 1 });
    if (made === null) throw new Error('nothing to count');
    return countResult(made.count, UNKNOWN_CIRCUMSTANCES, DEFAULT_COUNT_RULES).perMinute;
  });

// Check values of clinical/fixtures/README.md: MIT-BIH 100, beats of half an hour, windows one after another.
test.each([
  [15, 72, 84, 2.9591],
  [30, 72, 80, 2.1978],
  [60, 73, 80, 1.9957],
])(
  'an observer counts half an hour of a real heart in windows of %i s',
  (windowSeconds, lowest, highest, spread) => {
    const rates = ratesOf(BEATS, windowSeconds, 1800 / windowSeconds);
    expect(Math.min(...rates)).toBe(lowest);
    expect(Math.max(...rates)).toBe(highest);
    expect(sd(rates, true)).toBeCloseTo(spread, 4);
  },
);

// The same README: rate 67.81 from the mean interval of the pulse onsets of tilt 12726.
test('and an hour of a real pulse: the mean of its minutes is its rate, but for the two ends', () => {
  const minutes = Math.floor((ONSETS.at(-1) ?? 0) / 60);
  const rates = ratesOf(ONSETS, 60, minutes);
  expect(rates.reduce((sum, one) => sum + one, 0) / minutes).toBeCloseTo(67.81, 0);
});
