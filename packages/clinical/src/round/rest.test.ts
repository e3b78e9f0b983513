import { expect, test } from 'vitest';
import { DEFAULT_PLAN_RULES } from './planRules.js';
import { exceptionsWithRest, isRestKnown, isRestWhole, type RestSkippedReason } from './rest.js';

// Bedside handbook 3.1: sit quietly for 5 minutes.
const neededSeconds = 300;
const rest = (seconds: number, reason: RestSkippedReason | null = null) => ({
  seconds,
  neededSeconds,
  skipped: reason === null ? null : { reason, text: null },
});

test('a rest is whole at five minutes, and not a moment before', () => {
  expect(DEFAULT_PLAN_RULES.restSeconds).toBe(neededSeconds);
  expect([299.9, 300, 300.1].map((seconds) => isRestWhole(rest(seconds)))).toEqual([false, true, true]);
});

test('a whole rest is no exception, a broken one is, whatever was ticked before', () => {
  expect(exceptionsWithRest(['rested', 'calm'], rest(300))).toEqual(['calm']);
  expect(exceptionsWithRest([], rest(299))).toEqual(['rested']);
  expect(exceptionsWithRest(['calm'], rest(60, 'urgent'))).toEqual(['rested', 'calm']);
});

test('who had rested before has rested; nobody looked stays so', () => {
  expect(exceptionsWithRest(['calm'], rest(60, 'already-rested'))).toEqual(['calm']);
  expect(exceptionsWithRest(null, rest(60, 'urgent'))).toBeNull();
  expect(exceptionsWithRest(['rested'], null)).toEqual(['rested']);
});

test('a rest that nobody began nor answered for is not known, however well all else was', () => {
  expect(isRestKnown([], null)).toBe(false);
  expect(isRestKnown(['calm'], null)).toBe(false);
  expect(isRestKnown(['rested'], null)).toBe(true);
  expect(isRestKnown([], rest(300))).toBe(true);
  expect(isRestKnown([], rest(0, 'already-rested'))).toBe(true);
  expect(isRestKnown(null, null)).toBe(true);
});
