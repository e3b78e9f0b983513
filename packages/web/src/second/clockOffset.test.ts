import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestOffset, clockOffset } from './clockOffset.js';

/** An exchange with a clock that is `ahead` of ours, over ways that take so long. */
const exchange = (sentMs: number, ahead: number, there: number, answering: number, back: number) => ({
  sentMs,
  receivedMs: sentMs + there + ahead,
  answeredMs: sentMs + there + answering + ahead,
  backMs: sentMs + there + answering + back,
});

test('offset and delay are those of RFC 5905, section 8', () => {
  // By hand: T1 = 100, T2 = 1110, T3 = 1112, T4 = 132: ((1010) + (980)) / 2 = 995, delay 32 - 2 = 30.
  expect(clockOffset({ sentMs: 100, receivedMs: 1110, answeredMs: 1112, backMs: 132 })).toEqual({
    offsetMs: 995,
    withinMs: 15,
  });
  // Ways that take equally long: exact.
  expect(clockOffset(exchange(5000, -1_700_000, 8, 3, 8)).offsetMs).toBe(-1_700_000);
});

test('whatever the two ways take, the true offset is no further off than said', () => {
  const ms = fc.integer({ min: 0, max: 4000 });
  const ahead = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 });
  fc.assert(
    fc.property(ms, ahead, ms, ms, ms, (sent, truly, there, answering, back) => {
      const { offsetMs, withinMs } = clockOffset(exchange(sent, truly, there, answering, back));
      expect(Math.abs(offsetMs - truly)).toBe(Math.abs(there - back) / 2);
      expect(Math.abs(offsetMs - truly)).toBeLessThanOrEqual(withinMs);
    }),
  );
});

test('of several exchanges the quickest counts', () => {
  const slow = exchange(0, 500, 300, 0, 20);
  const quick = exchange(1000, 500, 6, 0, 4);
  expect(bestOffset([slow, quick, slow])).toEqual({ offsetMs: 501, withinMs: 5 });
  expect(bestOffset([])).toBeNull();
});
