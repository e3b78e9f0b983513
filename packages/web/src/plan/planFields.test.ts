import { parsePlanProtocol, planProtocol } from '@evenfall/practice';
import { expect, test } from 'vitest';
import { BEGINNINGS, fieldsOf, PLAN_FIELDS, planJson } from './planFields.js';

const read = (fields: Readonly<Record<string, string>>) =>
  parsePlanProtocol(planJson((path) => fields[path] ?? ''));

test.each(Object.entries(BEGINNINGS))('the %s way goes through the form unchanged', (_, protocol) => {
  expect(read(fieldsOf(protocol))).toEqual({ ok: true, value: protocol });
});

test('days at home go through it too', () => {
  const home = planProtocol({ home: { days: 7, readingsPerDay: 4, droppedDays: 1 } });
  expect(read(fieldsOf(home))).toEqual({ ok: true, value: home });
});

test('what is wrong is named by the field where it was typed', () => {
  const wrong = (more: Record<string, string>) => {
    const got = read({ ...fieldsOf(BEGINNINGS.first), ...more });
    return got.ok ? [] : got.refusals.map(({ field }) => field.slice(1));
  };
  expect(wrong({ rateMmHgPerSecond: '20' })).toEqual([]);
  expect(wrong({ rateMmHgPerSecond: '20.1' })).toEqual(['rateMmHgPerSecond']);
  expect(wrong({ rateMmHgPerSecond: 'fast' })).toEqual(['rateMmHgPerSecond']);
  expect(wrong({ readings: '1,5' })).toEqual(['readings']);
  expect(wrong({ 'home/days': '3', 'home/readingsPerDay': '2', 'home/droppedDays': '3' })).toEqual([
    'home/droppedDays',
  ]);
  const paths = PLAN_FIELDS.map(({ path }) => path);
  expect(wrong({ 'home/days': '3' }).every((field) => paths.includes(field))).toBe(true);
});
