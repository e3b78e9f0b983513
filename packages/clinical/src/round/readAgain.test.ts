import { expect, test } from 'vitest';
import { DEFAULT_DEFLATION_RULES } from '../deflation/rules.js';
import { readAgain } from './readAgain.js';
import { DEFAULT_ROUND_RULES } from './roundRules.js';

const RULES = { actNow: DEFAULT_ROUND_RULES.actNow, deflation: DEFAULT_DEFLATION_RULES };
const ADULT = 600;
const CHILD = 8 * 12;
type Before = { systolic: number; diastolic?: number; minutesAgo: number } | null;
const codes = (systolic: number, diastolic: number | null, before: Before = null, ageMonths = ADULT) =>
  readAgain(
    { systolic, diastolic },
    before === null ? null : { diastolic: null, ...before },
    ageMonths,
    RULES,
  ).map(({ code }) => code);

test('what an adult usually has is not asked about', () => {
  expect(codes(148, 92)).toEqual([]);
  expect(codes(122, null)).toEqual([]);
  expect(codes(91, 60)).toEqual([]);
});

// Bedside handbook 3.17: 90 or under is very low of an adult; of 8 years under 70 + 2 x 8 = 86.
test('a very low one is asked about before it is signed, by the limit of the age', () => {
  expect(codes(84, 50)).toEqual(['read-very-low']);
  expect(codes(84, null)).toEqual(['read-very-low']);
  expect(codes(88, 50, null, CHILD)).toEqual([]);
  expect(codes(85, 50, null, CHILD)).toEqual(['read-very-low']);
});

test('what no arm gives is asked about once, high or low', () => {
  expect(codes(20, 10, null, CHILD)).toEqual(['read-implausible']);
  expect(codes(148, 145)).toEqual(['read-implausible']);
});

// Common practice, no source: a number is looked at beside the one before it; our limits.
test('one far from the reading of minutes ago is asked about, and one of yesterday says nothing', () => {
  expect(codes(84, null, { systolic: 165, minutesAgo: 10 })).toEqual([
    'read-very-low',
    'read-far-from-before',
  ]);
  expect(codes(124, 80, { systolic: 165, minutesAgo: 10 })).toEqual(['read-far-from-before']);
  expect(codes(126, 80, { systolic: 165, minutesAgo: 10 })).toEqual([]);
  expect(codes(124, 80, { systolic: 165, minutesAgo: 61 })).toEqual([]);
});

test('a diastolic far from that of minutes ago is asked about too, where both have one', () => {
  const before = { systolic: 150, diastolic: 92, minutesAgo: 3 };
  expect(codes(148, 62, before)).toEqual(['read-diastolic-far-from-before']);
  expect(codes(148, 63, before)).toEqual([]);
  expect(codes(108, 60, before)).toEqual(['read-far-from-before', 'read-diastolic-far-from-before']);
  expect(codes(148, 62, { ...before, minutesAgo: 61 })).toEqual([]);
  expect(codes(148, null, before)).toEqual([]);
  expect(codes(148, 62, { systolic: 150, minutesAgo: 3 })).toEqual([]);
});

test('a clock that is a little ahead hides nothing; what was taken later is none before', () => {
  expect(codes(124, 80, { systolic: 165, minutesAgo: -2 })).toEqual(['read-far-from-before']);
  expect(codes(124, 80, { systolic: 165, minutesAgo: -2.1 })).toEqual([]);
});

test('the repeat of a very low one is not asked about again', () => {
  expect(codes(82, 50, { systolic: 84, minutesAgo: 2 })).toEqual([]);
});
