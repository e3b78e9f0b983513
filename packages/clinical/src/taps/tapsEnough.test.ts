import { expect, test } from 'vitest';
import { generator, independentIntervals, tapped } from '../../fixtures/people.mjs';
import { tapResult } from './tapResult.js';
import { tapsEnough } from './tapsEnough.js';

test.each([
  // Half-widths 3 and 6 at 4 wanted; 31 taps are 30 intervals, of which (6 / 4) squared as many are needed.
  [
    { lowPerMinute: 72, highPerMinute: 78, beats: 31 },
    { enough: true, more: 0, halfWidthPerMinute: 3 },
  ],
  [
    { lowPerMinute: 71, highPerMinute: 79, beats: 31 },
    { enough: true, more: 0, halfWidthPerMinute: 4 },
  ],
  [
    { lowPerMinute: 69, highPerMinute: 81, beats: 31 },
    { enough: false, more: 38, halfWidthPerMinute: 6 },
  ],
  [
    { lowPerMinute: null, highPerMinute: null, beats: 2 },
    { enough: false, more: 4, halfWidthPerMinute: null },
  ],
])('%j', (result, expected) => {
  expect(tapsEnough(result, 4)).toEqual(expected);
});

test('so many more taps do bring the half-width down to about what was wanted', () => {
  const chance = generator(1);
  let after = 0;
  for (let i = 0; i < 100; i++) {
    const seconds = tapped(chance, independentIntervals(chance, 400, 0.8, 0.15), 0.02);
    const first = tapResult({ of: 'pulse', source: 'key', seconds: seconds.slice(0, 31) }, { repair: true });
    const { more } = tapsEnough(first, 2.5);
    const second = tapResult(
      { of: 'pulse', source: 'key', seconds: seconds.slice(0, 31 + more) },
      { repair: true },
    );
    after += tapsEnough(second, 2.5).halfWidthPerMinute as number;
  }
  expect(after / 100).toBeGreaterThan(1.8);
  expect(after / 100).toBeLessThan(3.2);
});

test('a wanted half-width that is none is a fault of the caller', () => {
  const result = { lowPerMinute: 72, highPerMinute: 78, beats: 31 };
  expect(() => tapsEnough(result, 0)).toThrow(RangeError);
  expect(() => tapsEnough(result, Number.NaN)).toThrow(RangeError);
});
