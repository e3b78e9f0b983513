import { CHECK_LEVELS_DB } from '@evenfall/physiology/audio';
import { expect, test } from 'vitest';
import { FRESH_EARS, keepEars, noiseHeard, readEars, thresholdOf } from './ears.js';

// Physiology handbook 13: three taps at 20, 10 and 5 dB, which were heard; the threshold is stored.
test.each([
  [3, 5],
  [2, 10],
  [1, 20],
])('with %i taps heard the quietest was %i dB', (heard, dB) => {
  expect(thresholdOf(heard, CHECK_LEVELS_DB)).toBe(dB);
});

test('with none heard it is over the loudest', () => {
  expect(thresholdOf(0, CHECK_LEVELS_DB)).toBeGreaterThan(20);
});

test('what was said of the ears is there the next time; a broken note is asked again', () => {
  const kept = new Map<string, string>();
  const shelf = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
  expect(readEars(shelf)).toBeNull();
  keepEars(shelf, { ...FRESH_EARS, thresholdDb: 10 });
  expect(readEars(shelf)).toEqual({ ...FRESH_EARS, thresholdDb: 10 });
  for (const key of kept.keys()) kept.set(key, '{');
  expect(readEars(shelf)).toBeNull();
});

test('a quiet room is not played, a noisy one is as loud as it is', () => {
  expect(noiseHeard(38)).toBeNull();
  expect(noiseHeard(45)).toBeNull();
  expect(noiseHeard(68)).toBe(68);
});
