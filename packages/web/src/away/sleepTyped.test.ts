import { expect, test } from 'vitest';
import { sleepFields, sleepTyped } from './sleepTyped.js';

const typed = (fields: Readonly<Record<string, string>>) => sleepTyped((field) => fields[field] ?? '');

// How hours of sleep are read is a decision of this project (out-of-office handbook 7: a nap is a third state).
test('hours are read from midnight, may pass it, and are blank where one of the two is', () => {
  expect(typed({ asleepFrom: '23:00', asleepTo: '07:15' })).toEqual({
    asleep: { from: 1380, to: 435 },
    nap: null,
    wrong: null,
  });
  expect(typed({ asleepFrom: '23:00' })).toEqual({ asleep: null, nap: null, wrong: null });
  expect(typed({ asleepFrom: '07:00', asleepTo: '07:00' }).asleep).toBeNull();
});

test('a nap alone is not taken for the night, and one within the night is wrong', () => {
  const nap = { napFrom: '14:00', napTo: '15:00' };
  expect(typed(nap)).toEqual({ asleep: null, nap: null, wrong: 'napAlone' });
  expect(typed({ asleepFrom: '23:00', asleepTo: '07:00', ...nap })).toMatchObject({
    nap: { from: 840, to: 900 },
    wrong: null,
  });
  expect(typed({ asleepFrom: '13:00', asleepTo: '20:00', ...nap }).wrong).toBe('napWithin');
});

test('hours that were said stand in the fields again', () => {
  const said = { asleep: { from: 1380, to: 0 }, nap: { from: 840, to: 905 } };
  expect(sleepFields(said)).toEqual({
    asleepFrom: '23:00',
    asleepTo: '00:00',
    napFrom: '14:00',
    napTo: '15:05',
  });
  expect(typed(sleepFields(said))).toEqual({ ...said, wrong: null });
  expect(Object.values(sleepFields({ asleep: null, nap: null })).join('')).toBe('');
});
