import type { TrendRound } from '@evenfall/record';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  between,
  lengthOf,
  moved,
  nearest,
  roundsIn,
  SHORTEST,
  spanOf,
  wallClock,
  wholeSpan,
  zoomed,
} from './view.js';

const HOUR = 3_600_000;

function round(at: string): TrendRound {
  const value = { of: 'pulse', perMinute: 76 } as const;
  const point = {
    entry: at,
    at,
    value,
    isContested: false,
    isByHand: false,
    isAmended: false,
    failedGauge: null,
    flags: 0,
  };
  return {
    round: at,
    at,
    isPreliminary: false,
    isNotReliedOn: false,
    points: [point],
    average: null,
    elsewhere: null,
  };
}

const ROUNDS = [
  '2026-03-02T09:30:00.000+01:00',
  '2026-03-09T09:30:00.000+01:00',
  '2026-04-30T21:00:00.000+02:00',
].map(round);
const WHOLE = wholeSpan(ROUNDS);

describe('a span of a trend', () => {
  test('goes by the clock on the wall, across a change of offset', () => {
    expect(wallClock('2026-03-02T09:30:00.000+01:00')).toBe(Date.UTC(2026, 2, 2, 9, 30));
    expect(wallClock('2026-07-02T09:30:00.000+02:00')).toBe(Date.UTC(2026, 6, 2, 9, 30));
  });

  test('is none of nothing, and holds everything with room on either side', () => {
    expect(wholeSpan([])).toBeNull();
    expect(WHOLE?.from).toBeLessThan(Date.UTC(2026, 2, 2, 9, 30));
    expect(WHOLE?.to).toBeGreaterThan(Date.UTC(2026, 3, 30, 21));
    const [one] = ROUNDS;
    expect(lengthOf(wholeSpan(one === undefined ? [] : [one]) ?? { from: 0, to: 0 })).toBe(HOUR / 2);
  });

  test('of a week ends with the newest; one longer than everything is everything', () => {
    if (WHOLE === null) throw new Error('no span');
    expect(spanOf('week', WHOLE)).toEqual({ from: WHOLE.to - 7 * 24 * HOUR, to: WHOLE.to });
    expect(spanOf('year', WHOLE)).toBe(WHOLE);
    expect(spanOf('all', WHOLE)).toBe(WHOLE);
  });

  test('stays within the whole whatever is done to it, and what it is about stays where it was', () => {
    const whole = { from: 0, to: 1000 * HOUR };
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        share,
        share,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        (a, b, factor, by) => {
          const span = between(a * whole.to, b * whole.to, whole);
          const about = span.from + a * lengthOf(span);
          for (const next of [span, zoomed(span, factor, about, whole), moved(span, by, whole)]) {
            expect(next.from).toBeGreaterThanOrEqual(whole.from);
            expect(next.to).toBeLessThanOrEqual(whole.to + 1e-3);
            expect(lengthOf(next)).toBeGreaterThanOrEqual(SHORTEST - 1e-3);
          }
          expect(lengthOf(moved(span, by, whole))).toBeCloseTo(lengthOf(span), 3);
        },
      ),
    );
    expect(zoomed({ from: 100 * HOUR, to: 200 * HOUR }, 0.5, 125 * HOUR, whole)).toEqual({
      from: 112.5 * HOUR,
      to: 162.5 * HOUR,
    });
  });

  test('shows the rounds that are in it, and finds the one nearest to a time', () => {
    const march = { from: Date.UTC(2026, 2, 1), to: Date.UTC(2026, 3, 1) };
    expect(roundsIn(ROUNDS, march).map(({ at }) => at.slice(0, 10))).toEqual(['2026-03-02', '2026-03-09']);
    expect(nearest(ROUNDS, Date.UTC(2026, 2, 8))).toBe(1);
    expect(nearest(ROUNDS, 0)).toBe(0);
    expect(nearest([], 0)).toBe(-1);
  });
});
