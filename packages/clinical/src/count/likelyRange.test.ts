import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Count, CountClock, CountFirst } from './count.js';
import { type LikelyRange, likelyRange } from './likelyRange.js';

function rangeOf(n: number, windowSeconds: number, clock: CountClock, first: CountFirst): LikelyRange {
  return likelyRange({ of: 'pulse', n, windowSeconds, clock, first });
}

function range(low: number, high: number, lowIncluded: boolean): LikelyRange {
  return { lowPerMinute: low, highPerMinute: high, lowIncluded, highIncluded: false };
}

// docs/conventions.md section 5: beat/0 [n, n+1); beat/1 [n-1, n); any/1 (n-1, n+1); any/0 (n, n+2); cut at 0.
test.each<[CountClock, CountFirst, LikelyRange]>([
  ['beat', 0, range(76, 80, true)],
  ['beat', 1, range(72, 76, true)],
  ['any', 1, range(72, 80, false)],
  ['any', 0, range(76, 84, false)],
])('19 in 15 s, clock %s, first %d', (clock, first, expected) => {
  expect(rangeOf(19, 15, clock, first)).toEqual(expected);
});

test('a range is cut at 0, and 0 is then inside', () => {
  expect(rangeOf(0, 30, 'any', 1)).toEqual(range(0, 2, true));
  expect(rangeOf(1, 30, 'any', 1)).toEqual(range(0, 4, false));
  expect(rangeOf(1, 30, 'beat', 1)).toEqual(range(0, 2, true));
});

/**
 * Beats that a perfect counter of a regular rhythm counts, worked out beat by beat: on a beat, those in (0, W]
 * after the first; from a moment s, those in [s, s + W). Times are whole parts of a beat, so nothing is rounded.
 */
function perfectCount(
  { beatTicks, windowTicks, phaseTicks }: { beatTicks: number; windowTicks: number; phaseTicks: number },
  clock: CountClock,
  first: CountFirst,
): number {
  let heard = 0;
  if (clock === 'beat') {
    for (let at = beatTicks; at <= windowTicks; at += beatTicks) heard += 1;
    return heard + first;
  }
  for (let at = phaseTicks; at < windowTicks; at += beatTicks) heard += 1;
  return Math.max(heard - 1 + first, 0);
}

// One tick is 1 / (10 x rate) of a second: a beat lasts 600 ticks and the window 10 x rate x W of them, all whole
// for rates to a tenth of a beat per minute.
const steady = fc.record({
  tenths: fc.integer({ min: 200, max: 2500 }),
  windowSeconds: fc.integer({ min: 6, max: 120 }),
  phaseTicks: fc.integer({ min: 0, max: 599 }),
});

test.each<[CountClock, CountFirst]>([
  ['beat', 0],
  ['beat', 1],
  ['any', 1],
  ['any', 0],
])('always contains a regular true rate: clock %s, first %d', (clock, first) => {
  fc.assert(
    fc.property(steady, ({ tenths, windowSeconds, phaseTicks }) => {
      const rate = tenths / 10;
      const n = perfectCount(
        { beatTicks: 600, windowTicks: tenths * windowSeconds, phaseTicks },
        clock,
        first,
      );
      const count: Count = { of: 'pulse', n, windowSeconds, clock, first };
      const { lowPerMinute, highPerMinute, lowIncluded, highIncluded } = likelyRange(count);
      expect(lowIncluded ? rate >= lowPerMinute : rate > lowPerMinute).toBe(true);
      expect(highIncluded ? rate <= highPerMinute : rate < highPerMinute).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test('no end could be closer: each is reached by some regular rhythm', () => {
  // 60 ticks a beat; a window of 900 ticks holds 15 beats exactly, 901 a little more, 899 a little less.
  const beats = (windowTicks: number, phaseTicks: number, clock: CountClock, first: CountFirst) => {
    const n = perfectCount({ beatTicks: 60, windowTicks, phaseTicks }, clock, first);
    return windowTicks / 60 - n;
  };
  expect(beats(900, 0, 'beat', 0)).toBe(0);
  expect(beats(959, 0, 'beat', 0)).toBeCloseTo(1, 1);
  expect(beats(900, 0, 'beat', 1)).toBe(-1);
  expect(beats(959, 0, 'beat', 1)).toBeCloseTo(0, 1);
  expect(beats(901, 0, 'any', 1)).toBeCloseTo(-1, 1);
  expect(beats(959, 59, 'any', 1)).toBeCloseTo(1, 1);
  expect(beats(901, 0, 'any', 0)).toBeCloseTo(0, 1);
  expect(beats(959, 59, 'any', 0)).toBeCloseTo(2, 1);
});
