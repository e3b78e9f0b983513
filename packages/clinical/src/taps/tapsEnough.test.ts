import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { generator, independentIntervals, tapped, timesOf } from '../../fixtures/people.mjs';
import { type Circumstances, UNKNOWN_CIRCUMSTANCES } from '../count/circumstances.js';
import { DEFAULT_COUNT_RULES } from '../count/rules.js';
import { tapAdvice } from './tapAdvice.js';
import { tapResult } from './tapResult.js';
import { tapsEnough } from './tapsEnough.js';

const NO_ADVICE = { nextWindowSeconds: null };

test.each([
  // Half-widths 3 and 6 at 4 wanted; 31 taps are 30 intervals, of which (6 / 4) squared as many are needed.
  [
    { perMinute: 75, lowPerMinute: 72, highPerMinute: 78, beats: 31 },
    { enough: true, more: 0, halfWidthPerMinute: 3, untilSeconds: null },
  ],
  [
    { perMinute: 75, lowPerMinute: 71, highPerMinute: 79, beats: 31 },
    { enough: true, more: 0, halfWidthPerMinute: 4, untilSeconds: null },
  ],
  [
    { perMinute: 75, lowPerMinute: 69, highPerMinute: 81, beats: 31 },
    { enough: false, more: 38, halfWidthPerMinute: 6, untilSeconds: null },
  ],
  [
    { perMinute: 75, lowPerMinute: null, highPerMinute: null, beats: 2 },
    { enough: false, more: 4, halfWidthPerMinute: null, untilSeconds: null },
  ],
])('%j', (result, expected) => {
  expect(tapsEnough(result, NO_ADVICE, 4)).toEqual(expected);
});

test('so many more taps do bring the half-width down to about what was wanted', () => {
  const chance = generator(1);
  let after = 0;
  for (let i = 0; i < 100; i++) {
    const seconds = tapped(chance, independentIntervals(chance, 400, 0.8, 0.15), 0.02);
    const first = tapResult({ of: 'pulse', source: 'key', seconds: seconds.slice(0, 31) }, { repair: true });
    const { more } = tapsEnough(first, NO_ADVICE, 2.5);
    const second = tapResult(
      { of: 'pulse', source: 'key', seconds: seconds.slice(0, 31 + more) },
      { repair: true },
    );
    after += tapsEnough(second, NO_ADVICE, 2.5).halfWidthPerMinute as number;
  }
  expect(after / 100).toBeGreaterThan(1.8);
  expect(after / 100).toBeLessThan(3.2);
});

test('a wanted half-width that is none is a fault of the caller', () => {
  const result = { perMinute: 75, lowPerMinute: 72, highPerMinute: 78, beats: 31 };
  expect(() => tapsEnough(result, NO_ADVICE, 0)).toThrow(RangeError);
  expect(() => tapsEnough(result, NO_ADVICE, Number.NaN)).toThrow(RangeError);
});

/** Taps with the advice on them, and whether they are enough. */
function judged(of: 'pulse' | 'breaths', seconds: readonly number[], known: Partial<Circumstances> = {}) {
  const result = tapResult({ of, source: 'key', seconds }, { repair: true });
  const advice = tapAdvice(of, result, { ...UNKNOWN_CIRCUMSTANCES, ...known }, DEFAULT_COUNT_RULES);
  return { result, advice, ...tapsEnough(result, advice) };
}

/** So many even taps at a rate. */
function even(perMinute: number, taps: number): number[] {
  return Array.from({ length: taps }, (_, beat) => (beat * 60) / perMinute);
}

// Bedside handbook 1.5 and 2.1: when the full minute is asked for.
describe('taps are not enough while a longer count would be asked for after them', () => {
  test('breaths go on to the full minute: 15 a minute are 16 taps from the first to the last', () => {
    expect(judged('breaths', even(15, 15))).toMatchObject({ enough: false, more: 1, untilSeconds: 60 });
    expect(judged('breaths', even(15, 16))).toMatchObject({ enough: true, more: 0, untilSeconds: null });
    expect(judged('breaths', even(15, 17))).toMatchObject({ enough: true, more: 0, untilSeconds: null });
    expect(judged('breaths', even(15, 8))).toMatchObject({ enough: false, more: 8, untilSeconds: 60 });
  });

  test('a pulse that differs from the one before goes on to the full minute; at a difference of 10 it stands', () => {
    expect(judged('pulse', even(75, 40), { previousPerMinute: 86 })).toMatchObject({
      enough: false,
      more: 36,
      untilSeconds: 60,
    });
    expect(judged('pulse', even(75, 40), { previousPerMinute: 85 })).toMatchObject({ enough: true, more: 0 });
    expect(judged('pulse', even(75, 76), { previousPerMinute: 86 })).toMatchObject({ enough: true, more: 0 });
  });

  test('whatever the taps and the circumstances, and so many more do reach what is asked for', () => {
    const whether = fc.constantFrom(true, false, null);
    const known = fc.record({
      rhythmFelt: fc.constantFrom('regular', 'irregular', null),
      strength: fc.constantFrom('weak', 'normal', null),
      firstOnPerson: whether,
      heartRateDrug: whether,
      ageMonths: fc.option(fc.integer({ min: 0, max: 1200 })),
      previousPerMinute: fc.option(fc.integer({ min: 5, max: 200 })),
    });
    const gaps = fc.array(fc.double({ min: 0.2, max: 2, noNaN: true }), { maxLength: 90 });
    const steady = fc
      .record({ perMinute: fc.integer({ min: 6, max: 200 }), taps: fc.integer({ min: 1, max: 130 }) })
      .map(({ perMinute, taps }) => even(perMinute, taps));
    const uneven = gaps.map(timesOf);
    fc.assert(
      fc.property(
        fc.constantFrom('pulse', 'breaths'),
        fc.oneof(steady, uneven),
        known,
        (of, seconds, circumstances) => {
          const { enough, more, advice, result, untilSeconds } = judged(of, seconds, circumstances);
          expect(untilSeconds).toBe(advice.nextWindowSeconds);
          expect(enough).toBe(more === 0);
          if (advice.nextWindowSeconds !== null) {
            expect(enough).toBe(false);
            const tappedFor = (60 * (result.beats - 1 + more)) / (result.perMinute as number);
            expect(tappedFor).toBeGreaterThan(advice.nextWindowSeconds - 1e-6);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});
