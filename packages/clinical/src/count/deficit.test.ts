import { expect, test } from 'vitest';
import { pulseDeficit } from './deficit.js';

test('C012: apical 92, radial 78 is a deficit of 14, to be reported', () => {
  // Bedside handbook 8, C012 (from memory, 1.10).
  const { deficitPerMinute, flags } = pulseDeficit(92, 78, true);
  expect(deficitPerMinute).toBe(14);
  expect(flags.map(({ code }) => code)).toEqual(['deficit-to-report']);
});

test('C013: apical 80, radial 84 cannot be: count again', () => {
  // Bedside handbook 8, C013 (derived, 1.10).
  const { deficitPerMinute, why } = pulseDeficit(80, 84, true);
  expect(deficitPerMinute).toBeNull();
  expect(why.map(({ code }) => code)).toEqual(['negative-deficit']);
});

test.each([
  // Bedside handbook 1.10: normal is 0; any repeatable deficit; over 10.
  [80, 80, []],
  [81, 80, ['deficit']],
  [90, 80, ['deficit']],
  [91, 80, ['deficit-to-report']],
])('apical %d, radial %d', (apical, radial, codes) => {
  const { deficitPerMinute, flags, why } = pulseDeficit(apical, radial, true);
  expect([deficitPerMinute, why]).toEqual([apical - radial, []]);
  expect(flags.map(({ code }) => code)).toEqual(codes);
});

test('one observer, one minute after the other', () => {
  expect(pulseDeficit(80, 80, false).flags.map(({ code }) => code)).toEqual(['not-simultaneous']);
});
