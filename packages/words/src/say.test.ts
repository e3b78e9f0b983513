import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sayIn } from './say.js';

const english = sayIn('en');

describe('numbers as they are shown', () => {
  test.each([
    // docs/conventions.md section 4: one function rounds, half away from zero, on decimal text.
    [38.05, 1, '38.1'],
    // Bedside handbook 0.2 (common practice, no source): 147.5 is 148, 90.67 is 91.
    [147.5, 0, '148'],
    [90.67, 0, '91'],
    // Bedside handbook 1.12, fixture steady: 72.04 per minute, a rate shows whole.
    [72.04, 0, '72'],
    [-2.5, 0, '−3'],
    [-0.4, 0, '0'],
    [0, 0, '0'],
  ])('%d with %d decimals is %s', (value, decimals, shown) => {
    expect(english.number(value, decimals)).toBe(shown);
  });

  test('a short number has no decimals it does not need', () => {
    expect([15, 7.5, 7.25].map((value) => english.short(value))).toEqual(['15', '7.5', '7.3']);
  });

  test('the locale decides the decimal sign', () => {
    expect(sayIn('es').number(38.05, 1)).toBe('38,1');
  });

  test('a share is a whole percent', () => {
    expect(english.percent(0.081)).toBe('8 %');
  });
});

describe('counted things', () => {
  const beats = { one: 'beat', other: 'beats' };

  test.each([
    [0, '0 beats'],
    [1, '1 beat'],
    [2, '2 beats'],
    [19, '19 beats'],
    [1.5, '1.5 beats'],
  ])('%d', (n, said) => {
    expect(english.counted(n, beats)).toBe(said);
  });

  test('a language with more plural forms picks its own', () => {
    // Unicode CLDR plural rules of Polish: 1 one; 2 to 4, 22 to 24 few; 5 to 21 many; fractions other.
    const forms = { one: 'one', few: 'few', many: 'many', other: 'other' };
    const said = [1, 2, 5, 12, 22, 1.5].map((n) => sayIn('pl').form(n, forms));
    expect(said).toEqual(['one', 'few', 'many', 'many', 'few', 'other']);
  });

  test('a form that a language lacks falls back to the general one', () => {
    expect(sayIn('pl').form(5, { other: 'other' })).toBe('other');
  });
});

test('lists are joined as the locale joins them', () => {
  expect(english.anyOf(['beat', 'any'])).toBe('beat or any');
  expect(sayIn('es').anyOf(['a', 'b', 'c'])).toBe('a, b o c');
  expect(english.allOf(['a', 'b'])).toBe('a and b');
});

test('a measured rate never reads as the zero that it is not', () => {
  // docs/conventions.md sections 3 and 4: 0 is a measured zero; rates are whole unless a decimal is needed.
  const { rate, beside } = sayIn('en');
  expect([0, 0.2, 0.04, 0.5, 26.67, 76].map(rate)).toEqual(['0', '0.2', '0.04', '1', '27', '76']);
  expect([beside(0.2, 40), beside(0, 40), beside(-0.2, 40)]).toEqual(['0.2', '0', '−0.2']);
});

test('a number beside a limit stands on its own side of it, in as few decimals as that takes', () => {
  const { beside } = sayIn('en');
  expect([
    beside(139.6, 140),
    beside(140, 140),
    beside(100.0001, 100),
    beside(59.99, 60),
    beside(131, 131),
  ]).toEqual([
    '139.6', // docs/conventions.md section 4
    '140',
    '100.0001',
    '59.99',
    '131',
  ]);
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 20, max: 200 }),
      (n, seconds, limit) => {
        const value = (60 * n) / seconds;
        const shown = Number(beside(value, limit).replaceAll(',', ''));
        if (Math.abs(value - limit) > 1e-6 || value === limit)
          expect(Math.sign(shown - limit)).toBe(Math.sign(value - limit));
      },
    ),
  );
});

test('a range is shown in whole numbers that leave none of it out', () => {
  const say = sayIn('en');
  expect(say.around(163, 166.6)).toEqual(['163', '167']);
  expect(say.around(107.4, 111)).toEqual(['107', '111']);
  // 0.1 + 0.2 - 0.3 is not quite zero, and 1.1 + 2.2 - 0.3 is not quite 3.
  expect(say.around(0.1 + 0.2 - 0.3, 1.1 + 2.2 - 0.3)).toEqual(['0', '3']);
});

test('two values close together are told apart with no more decimals than that takes', () => {
  const say = sayIn('en');
  expect(say.apart(84, 80)).toEqual(['84', '80']);
  // Each alone would round to 148.
  expect(say.apart(148.4999, 147.5)).toEqual(['148.5', '147.5']);
  expect(say.apart(76, 76)).toEqual(['76', '76']);
});
