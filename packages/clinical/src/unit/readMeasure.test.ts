import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { refusal } from '../contract/refusal.js';
import { askedUnit, howToType, limitsIn, readMeasure } from './readMeasure.js';
import { inUnit, keptFrom, type Quantity, type Unit } from './unit.js';

// The library brings no types.
const { UcumLhcUtils } = createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
  readonly UcumLhcUtils: {
    readonly getInstance: () => {
      readonly convertUnitTo: (from: string, value: number, to: string) => { readonly toVal: number | null };
    };
  };
};
const ucum = UcumLhcUtils.getInstance();

const said = (value: number, unit: Unit) => ({ value, unit, isUnitSaid: true });

describe('a number with its unit', () => {
  test.each<[string, Quantity, number, Unit]>([
    ['150 lb', 'mass', 150, '[lb_av]'],
    ['150lbs', 'mass', 150, '[lb_av]'],
    ['150 Pounds', 'mass', 150, '[lb_av]'],
    ['68.04 kg', 'mass', 68.04, 'kg'],
    ['99.1 F', 'temperature', 99.1, '[degF]'],
    ['99.1°F', 'temperature', 99.1, '[degF]'],
    ['37.3 C', 'temperature', 37.3, 'Cel'],
    ['66 in', 'length', 66, '[in_i]'],
    ['66"', 'length', 66, '[in_i]'],
    ['168cm', 'length', 168, 'cm'],
  ])('%s', (text, quantity, value, unit) => {
    for (const usual of ['Cel', '[degF]', 'kg', '[lb_av]', 'cm', '[in_i]'] as const)
      expect(readMeasure(text, quantity, usual)).toEqual(said(value, unit));
  });

  // Feet, stones, metres and grams against the UCUM library.
  test.each<[string, Quantity, number, Unit]>([
    ['5 ft 6 in', 'length', (ucum.convertUnitTo('[ft_i]', 5, '[in_i]').toVal ?? 0) + 6, '[in_i]'],
    ['5\'6"', 'length', 66, '[in_i]'],
    ['5′6″', 'length', 66, '[in_i]'],
    ['5ft6', 'length', 66, '[in_i]'],
    ['5 feet 6.5 inches', 'length', 66.5, '[in_i]'],
    ['5 ft 11', 'length', 71, '[in_i]'],
    ['5\'11"', 'length', 71, '[in_i]'],
    ['5 ft', 'length', 60, '[in_i]'],
    ['5 ft 11.9 in', 'length', 71.9, '[in_i]'],
    ['1.68 m', 'length', ucum.convertUnitTo('m', 1.68, 'cm').toVal ?? 0, 'cm'],
    ['3420 g', 'mass', ucum.convertUnitTo('g', 3420, 'kg').toVal ?? 0, 'kg'],
    ['10 st 10 lb', 'mass', (ucum.convertUnitTo('[stone_av]', 10, '[lb_av]').toVal ?? 0) + 10, '[lb_av]'],
    ['11 stone', 'mass', 154, '[lb_av]'],
    ['11 st 13.9 lb', 'mass', 167.9, '[lb_av]'],
  ])('%s', (text, quantity, value, unit) => {
    const read = readMeasure(text, quantity, 'cm');
    expect(read).toEqual({ ...said(0, unit), value: expect.closeTo(value, 9) });
  });

  test('without one it is in the usual unit', () => {
    expect(readMeasure(' 150 ', 'mass', 'kg')).toEqual({ value: 150, unit: 'kg', isUnitSaid: false });
    expect(readMeasure('-3', 'temperature', '[degF]')).toEqual({
      value: -3,
      unit: '[degF]',
      isUnitSaid: false,
    });
  });

  // A unit of another quantity, inches that make a foot, a part of a foot with inches, two numbers, no number.
  test.each<[string, Quantity]>([
    ['150 lb', 'temperature'],
    ['37 C', 'mass'],
    ['66 kg', 'length'],
    ['5 ft 12 in', 'length'],
    ['11 st 14 lb', 'mass'],
    ['5.5 ft 6 in', 'length'],
    ['5.5 ft', 'length'],
    ['5.11 ft', 'length'],
    ["5.10'", 'length'],
    ['10.10 st', 'mass'],
    ['10.5 stone', 'mass'],
    ['5 ft 6 lb', 'length'],
    ['66 in 2', 'length'],
    ['5 6', 'length'],
    ['1.2.3', 'mass'],
    ['70..1 kg', 'mass'],
    ['1,68 m', 'length'],
    ['kg', 'mass'],
    ['', 'mass'],
    ['twelve', 'length'],
    ['-5 ft 6 in', 'length'],
  ])('%s as %s is not read', (text, quantity) => {
    expect(readMeasure(text, quantity, 'kg')).toBeNull();
  });
});

// `5.11 ft` is written for 5 ft 11 in (71 in) as well as for 61.32 in: common practice, no source.
test.each<[string, Quantity, ReturnType<typeof howToType>]>([
  ['5.11 ft', 'length', 'feet-and-inches'],
  ["5.10'", 'length', 'feet-and-inches'],
  ['5.5 ft 6 in', 'length', 'feet-and-inches'],
  ['5,11 ft', 'length', 'feet-and-inches'],
  ['10.10 st', 'mass', 'stones-and-pounds'],
  ['101,3 F', 'temperature', 'a-decimal-point'],
  ['101,3', 'temperature', 'a-decimal-point'],
  ['1,68 m', 'length', 'a-decimal-point'],
  ['5 ft 12 in', 'length', null],
  ['10.10 st', 'length', null],
  ['1,2,3', 'mass', null],
  ['warm', 'temperature', null],
])('%s as %s is to be typed with %s', (text, quantity, how) => {
  expect(readMeasure(text, quantity, 'kg')).toBeNull();
  expect(howToType(text, quantity)).toBe(how);
});

describe('a number without a unit that is impossible in the usual one', () => {
  const limits = (minimum: number, maximum: number, got: string) =>
    refusal('/celsius', 'out-of-range', 'within-limits', got, { figures: { minimum, maximum } });
  const bare = (value: number, unit: Unit) => ({ value, unit, isUnitSaid: false });

  test('is asked about where the other one makes it possible', () => {
    // 99.1 degrees Fahrenheit are 37.3 degrees Celsius: from 25 to 45 it can be.
    expect(askedUnit(limits(25, 45, '99.1'), bare(99.1, 'Cel'), 'temperature')).toMatchObject({
      code: 'ambiguous',
      expected: 'which-unit',
      got: '99.1',
      choices: ['[degF]', 'Cel'],
      figures: { value: 99.1, minimum: 25, maximum: 45 },
    });
    expect(askedUnit(limits(25, 45, '37.2'), bare(37.2, '[degF]'), 'temperature')).toMatchObject({
      choices: ['Cel', '[degF]'],
      figures: { minimum: 77, maximum: 113 },
    });
  });

  test('at the limits of the other unit it is asked about, past them it is refused', () => {
    const asked = (value: number) =>
      askedUnit(limits(25, 45, ''), bare(value, 'Cel'), 'temperature').code === 'ambiguous';
    expect([76.9, 77, 113, 113.1].map(asked)).toEqual([false, true, true, false]);
  });

  test('is refused where somebody said the unit, and for anything but its limits', () => {
    const refused = limits(25, 45, '99.1 C');
    expect(askedUnit(refused, said(99.1, 'Cel'), 'temperature')).toBe(refused);
    const missing = refusal('/celsius', 'missing', 'a-number', null);
    expect(askedUnit(missing, bare(99.1, 'Cel'), 'temperature')).toBe(missing);
  });
});

// Limits of the record: 0.2 to 700 kg, 20 to 280 cm, 25 to 45 degC.
test.each<[number, number, Unit]>([
  [0.2, 700, '[lb_av]'],
  [20, 280, '[in_i]'],
  [25, 45, '[degF]'],
  [0.2, 700, 'kg'],
])(
  'limits from %d to %d told in %s are themselves within the limits, and not by more than a tenth',
  (least, most, unit) => {
    const { minimum = Number.NaN, maximum = Number.NaN } = limitsIn({ minimum: least, maximum: most }, unit);
    expect(keptFrom(minimum, unit)).toBeGreaterThanOrEqual(least);
    expect(keptFrom(maximum, unit)).toBeLessThanOrEqual(most);
    expect(minimum - inUnit(least, unit)).toBeLessThan(0.1);
    expect(inUnit(most, unit) - maximum).toBeLessThan(0.1);
  },
);
