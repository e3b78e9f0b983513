import { countResult, DEFAULT_COUNT_RULES, likelyRange, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { BLANK, beats, breaths, makePerson, PROPER } from '@evenfall/physiology';
import fc from 'fast-check';
// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { countOf } from './countOf.js';

const CONVENTIONS = [
  { clock: 'beat', first: 0 },
  { clock: 'beat', first: 1 },
  { clock: 'any', first: 0 },
  { clock: 'any', first: 1 },
] as const;

// docs/conventions.md section 5: certain for a regular rhythm counted without a slip.
test.each(CONVENTIONS)('a perfect counter of a regular rhythm, %j: the range holds the rate', (how) => {
  fc.assert(
    fc.property(
      fc.double({ min: 25, max: 200, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.constantFrom(15, 30, 60),
      (rate, phase, windowSeconds) => {
        const every = 60 / rate;
        const events = Array.from({ length: Math.ceil(70 / every) + 3 }, (_, i) => (i + phase) * every);
        const counted = countOf('pulse', events, every * 2 * phase, windowSeconds, how);
        if (counted === null || counted.count.n < 1) return;
        const { lowPerMinute, highPerMinute } = likelyRange(counted.count);
        expect(rate).toBeGreaterThanOrEqual(lowPerMinute - 1e-9);
        expect(rate).toBeLessThanOrEqual(highPerMinute + 1e-9);
      },
    ),
  );
});

// By hand: events at 0, 1, 2, ... s, window of 5 s.
test.each([
  ['beat', 0, 0, 5],
  ['beat', 1, 0, 6],
  ['beat', 0, 0.5, 5],
  ['any', 1, 0, 5],
  ['any', 1, 0.5, 5],
  ['any', 0, 0.5, 4],
] as const)('clock on %s, first called %i, from %f s: %i', (clock, first, start, n) => {
  const seconds = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  expect(countOf('pulse', seconds, start, 5, { clock, first })?.count.n).toBe(n);
});

/** Of a mean interval of .571 s with SD .06: 60/.737 - 60/.797 a minute, however long the window. */
const SLOW = 6.2;

describe('scatter of counts by window over many starts', () => {
  const scatter = (seconds: readonly number[], windowSeconds: number) => {
    const rates = Array.from({ length: 1500 }, (_, i) => {
      const counted = countOf('breaths', seconds, 20 + i * 3.7, windowSeconds, { clock: 'any', first: 1 });
      if (counted === null) throw new Error('nothing to count');
      return countResult(counted.count, UNKNOWN_CIRCUMSTANCES, DEFAULT_COUNT_RULES).perMinute;
    });
    return (jstat as { stdev: (values: readonly number[], isSample: boolean) => number }).stdev(rates, true);
  };

  // Physiology handbook 5, computed table: 16 breaths, CV .208: SD 2.26, 1.40, .92 for windows of 15, 30 and 60 s.
  test.each([
    [15, 2.26],
    [30, 1.4],
    [60, 0.92],
  ])('16 breaths a minute in %i s', (windowSeconds, sd) => {
    const person = makePerson({ ...BLANK, breathing: { ...BLANK.breathing, ratePerMinute: 16 } }, 3);
    const starts = breaths(person, PROPER, 0, 5700).map(({ startSeconds }) => startSeconds);
    expect(scatter(starts, windowSeconds)).toBeGreaterThan(sd * 0.75);
    expect(scatter(starts, windowSeconds)).toBeLessThan(sd * 1.25);
  });

  // The same table: atrial fibrillation of mean 81: 4.60, 3.14, 2.17, which is that of intervals independent of each other;
  // the slow course of the mean interval (2.3) comes on top.
  test.each([
    [15, 4.6],
    [30, 3.14],
    [60, 2.17],
  ])('atrial fibrillation in %i s', (windowSeconds, sd) => {
    const rhythm = { ...BLANK.rhythm, kind: 'atrial-fibrillation', ratePerMinute: 81 } as const;
    const feet = beats(makePerson({ ...BLANK, rhythm }, 3), PROPER, 0, 5700).map(
      ({ footSeconds }) => footSeconds,
    );
    expect(scatter(feet, windowSeconds)).toBeGreaterThan(sd * 0.75);
    expect(scatter(feet, windowSeconds)).toBeLessThan(sd + SLOW);
  });
});
