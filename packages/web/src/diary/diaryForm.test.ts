import { expect, test } from 'vitest';
import { readDiary } from './diaryForm.js';

const TYPED = {
  days: '7',
  readings: '2',
  language: 'ar',
  from: '2026-07-01',
  dueOn: '2026-07-08',
  note: ' ',
};

test('what was typed is a diary, and a blank note is none', () => {
  expect(readDiary(TYPED)).toEqual({
    content: {
      days: 7,
      readingsInSitting: 2,
      language: 'ar',
      from: '2026-07-01',
      dueOn: '2026-07-08',
      note: null,
    },
    wrong: {},
  });
});

// 1 to 14 days, 1 to 4 readings: the room of the page, a decision of the project.
test.each([
  [{ days: '0' }, { days: 'numberWrong' }],
  [{ days: '1' }, {}],
  [{ days: '14' }, {}],
  [{ days: '15' }, { days: 'numberWrong' }],
  [{ days: '7.5' }, { days: 'numberWrong' }],
  [{ readings: '' }, { readings: 'numberWrong' }],
  [{ readings: '4' }, {}],
  [{ readings: '5' }, { readings: 'numberWrong' }],
  [{ from: '' }, { from: 'dayMissing' }],
  [{ dueOn: '' }, { dueOn: 'dayMissing' }],
  [{ dueOn: '2026-06-30' }, { dueOn: 'dueWrong' }],
  [{ dueOn: '2026-07-01' }, {}],
])('%j is found: %j', (change, wrong) => {
  const read = readDiary({ ...TYPED, ...change });
  expect(read.wrong).toEqual(wrong);
  expect(read.content === null).toBe(Object.keys(wrong).length > 0);
});
