import { parsePlanProtocol, planProtocol } from '@evenfall/practice';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import {
  ALL_FIELDS,
  BEGINNINGS,
  differences,
  FAULT_FIELDS,
  fieldsOf,
  PLAN_FIELDS,
  PLAN_GROUPS,
  planJson,
} from './planFields.js';

const read = (fields: Readonly<Record<string, string>>) =>
  parsePlanProtocol(planJson((path) => fields[path] ?? ''));

test.each(Object.entries(BEGINNINGS))('the %s way goes through the form unchanged', (_, protocol) => {
  expect(read(fieldsOf(protocol))).toEqual({ ok: true, value: protocol });
});

test('days at home go through it too', () => {
  const home = planProtocol({ home: { days: 7, readingsPerDay: 4, droppedDays: 1 } });
  expect(read(fieldsOf(home))).toEqual({ ok: true, value: home });
});

test('what observers do wrong goes through it, and a share over one is named', () => {
  const taught = planProtocol({ faults: { talking: 0.5, 'arm-height': 1 } });
  expect(read(fieldsOf(taught))).toEqual({ ok: true, value: taught });
  const got = read({ ...fieldsOf(taught), 'faults/talking': '1.5' });
  expect(got.ok ? [] : got.refusals.map(({ field }) => field)).toEqual(['/faults/talking']);
  expect(FAULT_FIELDS.map(({ path }) => path)).toContain('faults/talking');
});

// Bedside handbook 1.4: both schools, and both ways of starting the clock.
test('how beats and breaths are counted goes through it, and a window too short is named', () => {
  const counting = planProtocol({
    pulseWindowSeconds: 15,
    breathsWindowSeconds: null,
    countClock: 'beat',
    countFirst: 0,
    gapSeconds: 90,
    mostPerBeatMmHg: 2,
    thresholdDb: 15,
  });
  expect(read(fieldsOf(counting))).toEqual({ ok: true, value: counting });
  const got = read({ ...fieldsOf(counting), breathsWindowSeconds: '4' });
  expect(got.ok ? [] : got.refusals.map(({ field }) => field)).toEqual(['/breathsWindowSeconds']);
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

test('every field stands in one group, in the order of the work', () => {
  expect(PLAN_GROUPS.flatMap(({ fields }) => fields.map(({ path }) => path))).toEqual(
    ALL_FIELDS.map(({ path }) => path),
  );
});

test('in what two ways differ is said in the words of the form, and nothing of what they have alike', () => {
  const words = wordsFor('en');
  const [first, second] = [fieldsOf(BEGINNINGS.first), fieldsOf(BEGINNINGS.second)];
  const of = (fields: Readonly<Record<string, string>>) => (path: string) => fields[path] ?? '';
  expect(differences(of(first), of(second), words)).toEqual([
    'Rest before (min): first 5, second 1',
    'Pulse counted for (s): first 30, second 15',
    'Breaths counted for (s): first 60, second 15',
    'Pulse felt for first: first yes, second left out',
    'Let down (mmHg/s): first 2.5, second 5',
    'Readings rounded to ten (0 to 1): first 0, second 0.3',
    'Readings at a visit: first as the rule asks, second 1',
  ]);
  expect(differences(of(first), of({ ...first, restMinutes: ' 5 ' }), words)).toEqual([]);
});
