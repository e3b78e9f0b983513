import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundTo } from '../contract/rounding.js';
import { countOfRate, type HowCounted } from './countOfRate.js';
import { isReachable } from './reachable.js';
import { DEFAULT_COUNT_RULES } from './rules.js';

const how = (windowSeconds: number): HowCounted => ({ of: 'pulse', windowSeconds, clock: 'any', first: 1 });
const of = (perMinute: number, windowSeconds: number) =>
  countOfRate(perMinute, how(windowSeconds), DEFAULT_COUNT_RULES);

test('76 a minute counted for 15 s is 19, for 30 s 38, for 60 s 76', () => {
  // Bedside handbook 1.3 (derived): the rate is 60 n / W.
  for (const [windowSeconds, n] of [
    [15, 19],
    [30, 38],
    [60, 76],
  ] as const) {
    expect(of(76, windowSeconds)).toEqual({ ok: true, value: { ...how(windowSeconds), n } });
  }
});

test('C007: 73 a minute was not counted for 15 s; what the window gives on both sides is said', () => {
  // Bedside handbook 8, C007 (derived, 1.3): not a multiple of 4.
  expect(of(73, 15)).toMatchObject({
    ok: false,
    refusals: [
      {
        field: '/pulse',
        code: 'impossible',
        figures: { windowSeconds: 15, belowPerMinute: 72, abovePerMinute: 76 },
      },
    ],
  });
});

// Over 400 a minute is refused (docs/conventions.md section 5): 401 lies between 400 and 404.
test('what is told to give instead can itself be given', () => {
  const told = (perMinute: number) => {
    const found = of(perMinute, 15);
    return found.ok ? null : found.refusals.map(({ figures }) => figures);
  };
  expect(told(399)).toEqual([{ windowSeconds: 15, belowPerMinute: 396, abovePerMinute: 400 }]);
  expect(told(401)).toEqual([{ windowSeconds: 15, belowPerMinute: 400 }]);
  expect(of(901, 15)).toMatchObject({ ok: false, refusals: [{ field: '/n', code: 'impossible' }] });
});

test('what is over any rate is refused as a count is', () => {
  expect(of(900, 15)).toMatchObject({ ok: false, refusals: [{ field: '/n', code: 'impossible' }] });
});

test('whatever was counted comes back, and whatever cannot be reached is refused', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 250 }),
      fc.constantFrom(6, 10, 15, 30, 45, 60),
      (rate, windowSeconds) => {
        const found = of(rate, windowSeconds);
        expect(found.ok).toBe(isReachable(rate, windowSeconds));
        if (found.ok) expect(roundTo((60 * found.value.n) / windowSeconds, 0)).toBe(rate);
      },
    ),
  );
});
