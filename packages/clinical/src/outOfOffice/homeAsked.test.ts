import { expect, test } from 'vitest';
import { homeAsked } from './homeAsked.js';
import { DEFAULT_HOME_RULES } from './homeRules.js';
import { H1, readingAt } from './testing.js';

// Source: out-of-office handbook 2 (seven days, morning and evening, two readings each: 28) and 19 (the invented week H1).
const WEEK = { readingsInSitting: 2, days: 7, from: null };
const of = (readings: typeof H1, asked: Parameters<typeof homeAsked>[1] = WEEK) =>
  homeAsked(readings, asked, DEFAULT_HOME_RULES);

test('a whole week is all that was asked for', () => {
  expect(of(H1)).toEqual({ asked: 28, came: 28, gaps: [] });
});

test('a blank evening is none of 2, and the others stand as they are', () => {
  const blank = H1.filter(({ index }) => index !== 11 && index !== 12);
  expect(of(blank)).toEqual({
    asked: 28,
    came: 26,
    gaps: [{ part: 'evening', from: 2, until: 2, came: 0, asked: 2 }],
  });
});

test('a sitting of one reading is short, days without any are one gap, also at the end', () => {
  const left = H1.filter(({ index }) => index !== 2 && (index <= 4 || (index > 12 && index <= 20)));
  expect(of(left)).toEqual({
    asked: 28,
    came: 11,
    gaps: [
      { part: 'morning', from: 0, until: 0, came: 1, asked: 2 },
      { part: 'day', from: 1, until: 2, came: 0, asked: 2 },
      { part: 'day', from: 5, until: 6, came: 0, asked: 2 },
    ],
  });
});

test('a diary says from which day it was asked: what is blank before the first reading is missing too', () => {
  const later = H1.filter(({ index }) => index > 4);
  expect(of(later, { ...WEEK, from: 0 })?.gaps).toEqual([
    { part: 'day', from: 0, until: 0, came: 0, asked: 2 },
  ]);
  // With no first day said it is counted from the first that came.
  expect(of(later)?.gaps).toEqual([{ part: 'day', from: 7, until: 7, came: 0, asked: 2 }]);
});

test('more of one sitting does not make up for another, the same row twice is one, noon is neither part', () => {
  const more = [
    ...H1.filter(({ index }) => index !== 28),
    readingAt(40, 0, '07:33', '140/90 70'),
    { ...(H1[0] as (typeof H1)[number]), index: 41 },
    readingAt(42, 6, '13:00', '140/90 70'),
  ];
  expect(of(more, { ...WEEK, from: 0 })).toEqual({
    asked: 28,
    came: 27,
    gaps: [{ part: 'evening', from: 6, until: 6, came: 1, asked: 2 }],
  });
});

test('where nobody said which days, as many as were asked for are enough', () => {
  const after = readingAt(50, 7, '07:30', '140/90 70');
  const blank = H1.filter(({ index }) => index !== 11);
  expect(of(blank)?.gaps).toHaveLength(1);
  expect(of([...blank, after])).toEqual({ asked: 28, came: 28, gaps: [] });
  expect(of([...blank, after], { ...WEEK, from: 0 })?.gaps).toHaveLength(1);
});

test('of nothing nothing is said, and a row without a pressure is no reading', () => {
  expect(of([])).toBeNull();
  const noPressure = { ...readingAt(1, 0, '07:30', '140/90 70'), systolic: null, diastolic: null };
  expect(of([noPressure])).toBeNull();
  expect(
    of(H1.map((one) => (one.index === 1 ? { ...one, systolic: null, diastolic: null } : one)))?.came,
  ).toBe(27);
});
