import { refusal } from '@evenfall/clinical';
import { USUAL_MANNER } from '@evenfall/words';
import { expect, test } from 'vitest';
import {
  asTyped,
  fieldIn,
  isMeasured,
  keptOf,
  numberBesideUnit,
  toType,
  typedIn,
  unitRead,
} from './typedMeasure.js';

const OTHER = { ...USUAL_MANNER, temperature: '[degF]', length: '[in_i]', mass: '[lb_av]' } as const;

// 1 in is 2.54 cm, 1 lb is 0.45359237 kg, exact (UCUM 2.1).
test('what is typed in another unit is kept in that of the record, in a field of its own', () => {
  expect(keptOf({ text: '12' }, 'armCm', OTHER)).toBe(30.48);
  expect(keptOf({ text: '100.4' }, 'celsius', OTHER)).toBe(38);
  expect(keptOf({ text: '10' }, 'kg', OTHER)).toBe(4.5359237);
  expect(keptOf({ text: '30.5' }, 'armCm', USUAL_MANNER)).toBe(30.5);
  expect(fieldIn('armCm', 'armCm', OTHER)).toBe('armCm.[in_i]');
  expect(fieldIn('n', 'celsius', USUAL_MANNER)).toBe('n');
});

test('a unit that was typed wins over one that was chosen, and that over the usual one', () => {
  for (const manner of [USUAL_MANNER, OTHER]) {
    expect(keptOf({ text: '10 lb' }, 'kg', manner)).toBe(4.5359237);
    expect(typedIn({ text: '10 lb' }, 'kg', manner)).toEqual({ value: 10, unit: '[lb_av]' });
    expect(keptOf({ text: '5 ft 6 in' }, 'cm', manner)).toBe(167.64);
    expect(keptOf({ text: '10', chosen: '[lb_av]' }, 'kg', manner)).toBe(4.5359237);
    expect(keptOf({ text: '10 kg', chosen: '[lb_av]' }, 'kg', manner)).toBe(10);
  }
});

test('the unit beside a text is the one in which it is read', () => {
  const shown = (text: string, chosen: '[in_i]' | 'cm' | null = null, manner = USUAL_MANNER) =>
    unitRead({ text, chosen }, 'armCm', manner);
  expect(['15', '15 i', '15 in', '1 ft 3 in', '38 cm'].map((text) => shown(text))).toEqual([
    'cm',
    'cm',
    '[in_i]',
    '[in_i]',
    'cm',
  ]);
  expect([shown('15', '[in_i]'), shown('', '[in_i]'), shown('38 cm', '[in_i]')]).toEqual([
    '[in_i]',
    '[in_i]',
    'cm',
  ]);
  expect([shown('15', null, OTHER), shown('38 cm', null, OTHER)]).toEqual(['[in_i]', 'cm']);
});

test('a text that names its unit has a number that stands without it', () => {
  const number = (text: string) => numberBesideUnit(text, 'armCm', USUAL_MANNER);
  expect(['15 in', '1 ft 3 in', '38.5 cm'].map(number)).toEqual([15, 15, 38.5]);
  expect(['15', '', 'in', '15 kg'].map(number)).toEqual([null, null, null, null]);
});

test('what is no measure stays as typed, to be refused with what could be one', () => {
  expect(keptOf({ text: 'twelve' }, 'armCm', OTHER)).toBe('twelve');
  expect(keptOf({ text: null }, 'kg', OTHER)).toBeNull();
  const refused = refusal('/celsius', 'not-a-number', 'a-number', 'warm');
  expect(asTyped(refused, { text: 'warm' }, 'celsius', OTHER).expected).toBe('a-temperature');
});

test('a sign that is opened again shows the number and the unit that were typed', () => {
  const typed = { value: 150, unit: '[lb_av]' } as const;
  expect(toType(68.0388555, typed, 'kg', USUAL_MANNER)).toEqual({ value: 150, chosen: '[lb_av]' });
  expect(toType(68.0388555, typed, 'kg', OTHER)).toEqual({ value: 150, chosen: null });
  expect(toType(68.0388555, null, 'kg', OTHER)).toEqual({ value: 150, chosen: null });
});

test('a refusal speaks of the unit in which it was typed, and asks for it where nobody said it', () => {
  const range = { figures: { minimum: 25.4, maximum: 127 } };
  const refused = refusal('/armCm', 'out-of-range', 'within-limits', 254, range);
  // 60 in are 152 cm: neither it nor 60 cm in inches ... 60 cm would do, so it is asked.
  expect(asTyped(refused, { text: '60' }, 'armCm', OTHER)).toMatchObject({
    code: 'ambiguous',
    got: '60',
    choices: ['cm', '[in_i]'],
    figures: { minimum: 10, maximum: 50 },
  });
  expect(asTyped(refused, { text: '60 in' }, 'armCm', USUAL_MANNER)).toMatchObject({
    code: 'out-of-range',
    got: '60 in',
    figures: { minimum: 10, maximum: 50 },
  });
  expect(asTyped(refused, { text: '60', chosen: '[in_i]' }, 'armCm', OTHER).code).toBe('out-of-range');
  expect(asTyped(refused, { text: '200' }, 'armCm', USUAL_MANNER)).toMatchObject({
    code: 'out-of-range',
    figures: { minimum: 25.4, maximum: 127 },
  });
  expect([isMeasured('cm'), isMeasured('percent')]).toEqual([true, false]);
});
