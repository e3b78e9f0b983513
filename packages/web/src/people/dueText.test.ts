import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { duesText, dueText } from './dueText.js';

const words = wordsFor('en-GB');
const now = (time: string) => ({ at: `2026-11-25T${time}.000+01:00`, zone: 'Europe/Oslo', asEntered: null });
const due = { fromAt: '2026-11-25T10:20:00.000+01:00', byAt: '2026-11-25T10:25:00.000+01:00' };

test('a recheck is due by its time, on the minute too, and late after it', () => {
  expect(dueText(due, now('10:24:59'), words)).toBe('Look at the pressure again by 10:25');
  expect(dueText(due, now('10:25:00'), words)).toBe('Look at the pressure again by 10:25');
  expect(dueText(due, now('10:25:01'), words)).toBe('Late: the pressure was to be looked at again by 10:25');
});

test('one without an end is never late, and one of another day says the day', () => {
  const open = { ...due, byAt: null };
  expect(dueText(open, now('23:00:00'), words)).toBe('Look at the pressure again from 10:20 on');
  const before = { ...due, byAt: '2026-11-24T10:25:00.000+01:00' };
  expect(dueText(before, now('10:00:00'), words)).toMatch(/^Late: .* by 24 Nov$/);
});

test('two of one round come the earlier first, each with what it is for; one alone says when', () => {
  const soon = { ...due, code: 'recheck-abnormal-soon' };
  const later = { code: 'recheck-abnormal-later', fromAt: soon.byAt, byAt: '2026-11-25T10:38:00.000+01:00' };
  expect(duesText([later, soon], now('10:20:00'), words)).toEqual([
    'Look at the pressure again by 10:25 (high by its category, first repeat)',
    'Look at the pressure again by 10:38 (high by its category, second repeat)',
  ]);
  expect(duesText([later], now('10:30:00'), words)).toEqual(['Look at the pressure again by 10:38']);
});
