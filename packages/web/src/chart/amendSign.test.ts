import { UNKNOWN_SIGN_CIRCUMSTANCES } from '@evenfall/clinical';
import type { StoredEntry } from '@evenfall/record';
import { USUAL_MANNER } from '@evenfall/words';
import { expect, test } from 'vitest';
import { typedReading, withReading } from './amendSign.js';

const entryOf = (sign: object) =>
  ({
    kind: 'sign',
    content: { evidence: { sign, circumstances: UNKNOWN_SIGN_CIRCUMSTANCES } },
  }) as unknown as StoredEntry & { kind: 'sign' };
const read = (entry: ReturnType<typeof entryOf>, text: string, unit = '') =>
  withReading(entry, { text, unit }, USUAL_MANNER);
const PAIN = { of: 'pain', score: 4.7, word: null, tool: 'visual-analogue', moving: true, where: 'hip' };

// Bedside handbook 4.3 (from memory): 0 to 100 mm on a line, 0 to 10 in numbers.
test('a mark on a line is put right in mm, and a score in points', () => {
  const line = entryOf(PAIN);
  expect(read(line, '52')).toEqual({ ok: true, value: { ...PAIN, score: 5.2 } });
  expect(read(line, '100')).toMatchObject({ ok: true, value: { score: 10 } });
  expect(read(line, '101')).toMatchObject({
    ok: false,
    refusals: [{ field: '/score', code: 'out-of-range', got: '101', figures: { minimum: 0, maximum: 100 } }],
  });
  expect(read(line, '')).toMatchObject({ ok: false, refusals: [{ code: 'missing' }] });
  const numeric = entryOf({ ...PAIN, tool: 'numeric', score: 4 });
  expect(read(numeric, '6')).toMatchObject({ ok: true, value: { score: 6 } });
  expect(read(numeric, '52')).toMatchObject({
    ok: false,
    refusals: [{ code: 'out-of-range' }],
  });
});

const FAHRENHEIT = { ...USUAL_MANNER, temperature: '[degF]' } as const;

// Definition of the unit (bedside handbook 0.2): 98.6 degF is 37 degC; 150 lb is 68.0389 kg (international pound).
test('a temperature, weight or height is put right in the unit that is chosen beside it, or typed behind it', () => {
  const fever = entryOf({ of: 'temperature', celsius: 39.6, site: 'oral' });
  const at37 = { ok: true, value: { of: 'temperature', celsius: 37, site: 'oral' } };
  expect(read(fever, '98.6', '[degF]')).toEqual(at37);
  expect(read(fever, '98.6 F')).toEqual(at37);
  expect(read(fever, '37')).toEqual(at37);
  expect(withReading(fever, { text: '98.6', unit: '' }, FAHRENHEIT)).toEqual(at37);
  expect(withReading(fever, { text: '37', unit: 'Cel' }, FAHRENHEIT)).toEqual(at37);
  const weight = entryOf({ of: 'weight', kg: 86, how: 'measured' });
  const read150 = read(weight, '150', '[lb_av]');
  expect(read150.ok && read150.value).toMatchObject({ kg: expect.closeTo(68.04, 1) });
});

test('it is kept as it was typed, in the unit in which it was', () => {
  const fever = entryOf({ of: 'temperature', celsius: 39.6, site: 'oral' });
  const typed = (text: string, unit: string) => typedReading(fever, { text, unit }, USUAL_MANNER);
  expect(typed('98.6', '[degF]')).toEqual({ value: 98.6, unit: '[degF]' });
  expect(typed('98.6 F', 'Cel')).toEqual({ value: 98.6, unit: '[degF]' });
  expect(typed('37', '')).toEqual({ value: 37, unit: 'Cel' });
});

test('a number that can only be in the other unit is asked about, and no longer once the unit is chosen', () => {
  const fever = entryOf({ of: 'temperature', celsius: 39.6, site: 'oral' });
  expect(read(fever, '98.6')).toMatchObject({ ok: false, refusals: [{ code: 'ambiguous' }] });
  expect(read(fever, '98.6', 'Cel')).toMatchObject({ ok: false, refusals: [{ code: 'out-of-range' }] });
});
