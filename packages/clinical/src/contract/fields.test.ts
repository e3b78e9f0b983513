import { expect, test } from 'vitest';
import { readFields } from './fields.js';

const whole = (value: number) =>
  Number.isInteger(value) ? null : ({ code: 'not-whole', expected: 'a-whole-number', figures: {} } as const);

test('reads numbers and choices, from text or as they are', () => {
  const reader = readFields({ n: '19', first: 0, clock: 'any' }, ['n', 'first', 'clock']);
  expect(reader.number('n', whole)).toBe(19);
  expect(reader.choice('first', ['0', '1'], null)).toBe('0');
  expect(reader.choice('clock', ['beat', 'any'], null)).toBe('any');
  expect(reader.raw('n')).toBe('19');
  expect(reader.refusals).toEqual([]);
});

test('a blank takes the choice for absent ones, and never a number', () => {
  const reader = readFields({ n: '', clock: null }, ['n', 'clock', 'of']);
  expect(reader.choice('clock', ['beat', 'any'], 'any')).toBe('any');
  expect(reader.number('n', whole)).toBeNull();
  expect(reader.choice('of', ['pulse'], null)).toBeNull();
  expect(reader.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual(['/n missing', '/of missing']);
});

test('gathers what is wrong below the parent pointer', () => {
  const reader = readFields({ n: 1.5, clock: 'x', 'a/b': 1 }, ['n', 'clock'], '/counts/0');
  reader.number('n', whole);
  reader.choice('clock', ['beat', 'any'], 'any');
  expect(reader.refusals.map(({ field, code, choices }) => [field, code, choices])).toEqual([
    ['/counts/0/a~1b', 'unknown-field', ['n', 'clock']],
    ['/counts/0/n', 'not-whole', []],
    ['/counts/0/clock', 'unknown-id', ['beat', 'any']],
  ]);
});

test('what every object inherits is no field', () => {
  const reader = readFields({}, ['toString']);
  expect(reader.raw('toString')).toBeUndefined();
  expect(readFields(JSON.parse('{"__proto__":1}'), ['n']).refusals).toMatchObject([{ field: '/__proto__' }]);
});
