import { describe, expect, test } from 'vitest';
import { refusalsOf } from '../entry/refusals.js';
import { classAgeInMonths, classIdentity } from './classIdentity.js';
import { identity } from './identity.js';

const HERON = { pseudonym: 'Heron (invented)', ageYears: 31 };

function refusedAt(given: unknown): string[] {
  const read = classIdentity.safeParse(given);
  return read.success ? [] : refusalsOf(read.error, given).map(({ field, code }) => `${field} ${code}`);
}

// The project's design, section 2, principle 6: pseudonymous, and nothing else is asked.
describe('who a person of the class book is', () => {
  test.each([HERON, { ...HERON, ageYears: null }, { ...HERON, ageYears: 0 }, { ...HERON, ageYears: 125 }])(
    'may be said by %j',
    (given) => {
      expect(classIdentity.parse(given)).toEqual(given);
    },
  );

  test.each([
    ['a name', { ...HERON, name: 'Peg Amundsen (invented)' }, '/name unknown-field'],
    ['a birth date', { ...HERON, birthDate: '1950-12-31' }, '/birthDate unknown-field'],
    ['a number', { ...HERON, number: 'INV-9' }, '/number unknown-field'],
    ['a pregnancy', { ...HERON, pregnant: false }, '/pregnant unknown-field'],
    ['no pseudonym', { ageYears: 31 }, '/pseudonym missing'],
    ['a pseudonym of spaces', { ...HERON, pseudonym: '  ' }, '/pseudonym missing'],
    ['a pseudonym of 41 characters', { ...HERON, pseudonym: 'x'.repeat(41) }, '/pseudonym out-of-range'],
    ['an age that was left out', { pseudonym: 'Heron' }, '/ageYears missing'],
    ['half a year', { ...HERON, ageYears: 30.5 }, '/ageYears not-whole'],
    ['an age below nought', { ...HERON, ageYears: -1 }, '/ageYears out-of-range'],
    ['an age above the oldest', { ...HERON, ageYears: 126 }, '/ageYears out-of-range'],
  ])('is refused with %s, beside it', (_, given, place) => {
    expect(refusedAt(given)).toEqual([place]);
  });

  test('is no identity of the other books, nor the other way round', () => {
    expect(identity.safeParse(HERON).success).toBe(false);
    expect(refusedAt({ name: 'Peg', birthDate: '1950-12-31', number: null })).not.toEqual([]);
  });

  test('a pseudonym of 40 characters has no spaces around it', () => {
    expect(classIdentity.parse({ ...HERON, pseudonym: ` ${'x'.repeat(40)}\t` }).pseudonym).toHaveLength(40);
  });
});

test('completed years tell completed months from below, and the same years', () => {
  expect(classAgeInMonths(HERON)).toBe(31 * 12);
  expect(classAgeInMonths({ ...HERON, ageYears: 0 })).toBe(0);
  expect(classAgeInMonths({ ...HERON, ageYears: null })).toBeNull();
});
