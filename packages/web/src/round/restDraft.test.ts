import { expect, test } from 'vitest';
import {
  begunRest,
  endedRest,
  isWaitedFor,
  keptRest,
  restedBefore,
  restedSeconds,
  restOf,
  skippedRest,
  tickedBeside,
  withoutRestBefore,
} from './restDraft.js';

// Bedside handbook 3.1: 5 minutes.
const at = (seconds: number, session = 'a') => ({ session, atMs: seconds * 1000 });
const begun = begunRest(300, at(100));

test('it goes on by one clock and stops at what is needed', () => {
  expect([100, 340, 399.9, 400, 9999].map((second) => restedSeconds(begun, at(second)))).toEqual([
    0, 240, 299.9, 300, 300,
  ]);
  expect(isWaitedFor(begun, at(399.9))).toBe(true);
  expect(isWaitedFor(begun, at(400))).toBe(false);
  expect(isWaitedFor(null, at(100))).toBe(false);
});

test('a reload goes on from what was kept, and gains nothing', () => {
  const kept = keptRest(begun, at(220));
  expect(restedSeconds(kept, at(7, 'b'))).toBe(120);
  const again = keptRest(kept, at(7, 'b'));
  expect(restedSeconds(again, at(67, 'b'))).toBe(180);
  expect(isWaitedFor(again, at(186.9, 'b'))).toBe(true);
  expect(isWaitedFor(again, at(187, 'b'))).toBe(false);
});

test('it is charted when it is over: whole, broken off by the cuff, or not waited for', () => {
  expect(restOf(begun)).toBeNull();
  expect(restOf(keptRest(begun, at(399)))).toBeNull();
  expect(restOf(keptRest(begun, at(400)))).toEqual({ seconds: 300, neededSeconds: 300, skipped: null });
  expect(restOf(endedRest(begun, at(220.7)))).toEqual({ seconds: 120, neededSeconds: 300, skipped: null });
  const urgent = { reason: 'urgent', text: null } as const;
  expect(restOf(skippedRest(begun, at(130), urgent))).toEqual({
    seconds: 30,
    neededSeconds: 300,
    skipped: urgent,
  });
});

test('what is over stays as it was', () => {
  const over = endedRest(begun, at(220));
  expect(endedRest(over, at(900))).toBe(over);
  expect(keptRest(over, at(900))).toBe(over);
});

test('that they had rested before is kept as such, and taken back once it is said that they did not', () => {
  const before = restedBefore(300);
  expect(restOf(before)).toEqual({
    seconds: 0,
    neededSeconds: 300,
    skipped: { reason: 'already-rested', text: null },
  });
  expect(withoutRestBefore({ rest: before })).toEqual({ rest: null });
  const ran = { ...before, keptSeconds: 40 };
  expect(withoutRestBefore({ rest: ran })).toEqual({ rest: ran });
});

test('that they did not rest is unticked by what is said of the rest after it, and stays beside a rest on the clock', () => {
  expect(tickedBeside(['rested', 'calm'], restedBefore(300))).toEqual(['calm']);
  expect(tickedBeside(['rested', 'calm'], null)).toEqual(['rested', 'calm']);
  expect(tickedBeside(['rested'], skippedRest(begun, at(130), { reason: 'urgent', text: null }))).toEqual([
    'rested',
  ]);
});
