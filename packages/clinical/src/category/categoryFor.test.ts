import { describe, expect, test } from 'vitest';
import { type Categorised, categoryFor } from './categoryFor.js';
import { type CategoryRules, NO_CATEGORIES } from './rules.js';

const RULES: CategoryRules = {
  adultScheme: 'esc-2024',
  childScheme: 'fourth-report-2004',
  pregnancyScheme: 'pregnancy',
};
const ADULT: Categorised = { ageMonths: 480, sex: null, heightCm: null, isPregnant: false };
const GIRL: Categorised = { ageMonths: 60, sex: 'f', heightCm: 105, isPregnant: false };
const PRESSURE = { systolic: 162, diastolic: 96 };

const answered = (person: Partial<Categorised>, rules: Partial<CategoryRules> = {}) => {
  const { result, why } = categoryFor(PRESSURE, { ...ADULT, ...person }, { ...RULES, ...rules });
  return result === null ? why.map(({ code }) => code) : `${result.guideline}: ${result.category}`;
};

test('a place without a protocol shows no category, whoever the person is', () => {
  for (const person of [ADULT, GIRL, { ...ADULT, isPregnant: true }, { ...ADULT, ageMonths: null }]) {
    expect(answered(person, NO_CATEGORIES)).toEqual(['no-scheme']);
  }
});

describe('the scheme goes by the person', () => {
  test('pregnancy before age, and with or without one (bedside handbook 3.16, from memory)', () => {
    expect(answered({ isPregnant: true })).toBe('pregnancy: severe');
    expect(answered({ isPregnant: true, ageMonths: null })).toBe('pregnancy: severe');
    expect(answered({ isPregnant: true, ageMonths: 200 })).toBe('pregnancy: severe');
    // Never an adult's category in its place.
    expect(answered({ isPregnant: true }, { pregnancyScheme: 'none' })).toEqual(['no-scheme']);
  });

  test('18 years and over', () => {
    expect(answered({ ageMonths: 216 })).toBe('esc-2024: hypertension');
    expect(answered({ ...GIRL, ageMonths: 215.9, heightCm: 165 })).toBe('fourth-report-2004: stage-2');
    expect(answered({}, { adultScheme: 'none' })).toEqual(['no-scheme']);
    expect(answered({ ageMonths: null })).toEqual(['age-not-known']);
  });

  test('a child only with sex, age and height (bedside handbook 7.5)', () => {
    expect(answered(GIRL)).toBe('fourth-report-2004: stage-2');
    expect(answered({ ...GIRL, sex: null, heightCm: null })).toEqual(['sex-not-known', 'height-not-known']);
    expect(answered({ ...GIRL, heightCm: null })).toEqual(['height-not-known']);
    expect(answered({ ...GIRL, ageMonths: 24, heightCm: 86 })).toBe('fourth-report-2004: stage-2');
    expect(answered({ ...GIRL, ageMonths: 23.9, heightCm: 86 })).toEqual(['age-outside-scheme']);
    expect(answered(GIRL, { childScheme: 'none' })).toEqual(['no-scheme']);
  });

  test('AAP 2017: screening under 13, its limits from 13', () => {
    const rules = { childScheme: 'aap-2017' } as const;
    expect(categoryFor(PRESSURE, GIRL, { ...RULES, ...rules }).result).toMatchObject({
      category: null,
      screening: 'at-or-above',
    });
    expect(answered({ ...GIRL, sex: null }, rules)).toEqual(['sex-not-known']);
    expect(answered({ ageMonths: 156 }, rules)).toBe('aap-2017: stage-2');
    expect(answered({ ageMonths: 155.9 }, rules)).toEqual(['sex-not-known']);
    expect(answered({ ...GIRL, ageMonths: 12 }, rules)).toBe('aap-2017: null');
    expect(answered({ ...GIRL, ageMonths: 11.9 }, rules)).toEqual(['age-outside-scheme']);
  });
});
