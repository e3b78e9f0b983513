import { expect, test } from 'vitest';
import type { BegunAlarm } from '../round/begunAlarm.js';
import { urgencyOf } from './urgencyOf.js';

const nothing = { actNow: 0, recheck: null };
const begun: BegunAlarm = {
  pressures: ['192/124'],
  condition: null,
  others: 0,
  isUnasked: false,
  recheck: 'recheck-severe',
};

// Common practice, no source: whoever has more to be done is no less urgent.
test('more to do puts nobody further down, signed or not', () => {
  const alone = urgencyOf({ actNow: 1, recheck: null }, undefined);
  const unresponsive = { ...begun, condition: 'unresponsive' };
  expect(urgencyOf(nothing, { ...unresponsive, recheck: null })).toBe(alone);
  expect(urgencyOf(nothing, unresponsive)).toBe(alone);
  expect(urgencyOf(nothing, begun)).toBeGreaterThan(alone);
  expect(urgencyOf({ actNow: 1, recheck: null }, begun)).toBe(alone);
  expect(urgencyOf(nothing, { ...begun, recheck: 'recheck-at-once' })).toBeLessThan(alone);
});
