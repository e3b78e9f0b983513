import { expect, test } from 'vitest';
import { begunIn, intakeForm } from './begun.js';
import { cellField, noteField, timeField } from './weekGrid.js';

const form = (fields: Readonly<Record<string, string>>) => ({ fields, adds: null, entry: null });
const FIRST = { day: 1, part: 'morning', reading: 1 } as const;

test('a diary is begun once a reading is typed, and counts the readings', () => {
  expect(begunIn(undefined)).toBeNull();
  expect(begunIn(form({ firstDay: '2026-11-18', way: 'typed', [timeField(FIRST)]: '07:20' }))).toBeNull();
  expect(begunIn(form({ [cellField(FIRST, 'systolic')]: ' ' }))).toBeNull();
  const typed = {
    [cellField(FIRST, 'systolic')]: '142',
    [cellField(FIRST, 'diastolic')]: '88',
    [cellField({ ...FIRST, part: 'evening', reading: 2 }, 'systolic')]: '138',
  };
  expect(begunIn(form(typed))).toBe(2);
});

test('so is one with a note beside a day and no reading yet', () => {
  expect(begunIn(form({ [noteField(2)]: 'fell, chest pain' }))).toBe(0);
  expect(begunIn(form({ [noteField(2)]: ' ' }))).toBeNull();
});

test('so is one whose table was pasted and not signed', () => {
  expect(begunIn(form({ pasted: '18.11.2026 07:00 142/88' }))).toBe(0);
  expect(intakeForm('p')).toBe('away p');
});
