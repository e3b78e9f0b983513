import { expect, test } from 'vitest';
import { doOverlap } from './clock.js';

const at = (from: string, to: string) => {
  const minutes = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
  return { from: minutes(from), to: minutes(to) };
};

// Out-of-office handbook 7: a start is included, an end is not; a night wraps past midnight (section 20).
test.each([
  ['23:00', '07:00', '13:00', '14:30', false],
  ['23:00', '07:00', '07:00', '08:00', false],
  ['23:00', '07:00', '06:59', '08:00', true],
  ['23:00', '07:00', '22:00', '23:00', false],
  ['23:00', '07:00', '22:00', '23:01', true],
  ['23:00', '07:00', '02:00', '03:00', true],
  ['23:00', '07:00', '23:00', '07:00', true],
  ['23:00', '07:00', '22:00', '08:00', true],
  ['09:00', '13:00', '20:00', '21:00', false],
])('%s-%s and %s-%s have a minute in common: %s', (a, b, c, d, common) => {
  expect(doOverlap(at(a, b), at(c, d))).toBe(common);
  expect(doOverlap(at(c, d), at(a, b))).toBe(common);
});
