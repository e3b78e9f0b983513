import { expect, test } from 'vitest';
import { isNightAsked } from './intake.js';

const HOURS = { from: 23 * 60, to: 7 * 60 };
const text = (unknown: string) => (field: string) => (field === 'asleepUnknown' ? unknown : '');

test.each([
  ['a recording of which nobody said it', 'ambulatory', null, null, '', true],
  ['that is not known', 'ambulatory', null, null, 'yes', false],
  ['the times were given', 'ambulatory', HOURS, null, '', false],
  ['the table marks who slept', 'ambulatory', null, true, '', false],
  ['and who was awake', 'ambulatory', null, false, '', false],
  ['readings at home', 'home', null, null, '', false],
] as const)('%s', (_what, of, asleep, mark, unknown, is) => {
  expect(isNightAsked({ of, asleep, readings: [{ asleep: mark }] }, text(unknown))).toBe(is);
});
