import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalsOf } from '../entry/refusals.js';
import { placesOf } from '../testing/work.js';
import { ageInMonths, identifiersOf, identity } from './identity.js';

const PEG: { name: string; birthDate: string | null; number: string | null } = {
  name: 'Peg Amundsen (invented)',
  birthDate: '1950-12-31',
  number: 'INV-9',
};

/** Where an identity is refused. */
function refusedAt(given: unknown): string[] {
  const read = identity.safeParse(given);
  return read.success ? [] : placesOf({ ok: false, refusals: refusalsOf(read.error, given) });
}

// Bedside handbook 3.18: at least two identifiers (name, number, birth date...); Joint Commission NPSG.01.01.01, 2015.
describe('who a person is', () => {
  test.each([
    ['name, birth date and number', PEG, ['name', 'birthDate', 'number']],
    ['name and birth date', { ...PEG, number: null }, ['name', 'birthDate']],
    ['name and number', { ...PEG, birthDate: null }, ['name', 'number']],
  ])('may be said by %s', (_, given, identifiers) => {
    expect(identity.parse(given)).toEqual(given);
    expect(identifiersOf(identity.parse(given))).toEqual(identifiers);
  });

  test('is not said by a name alone: the second identifier is missing', () => {
    const lone = { ...PEG, birthDate: null, number: null };
    const read = identity.safeParse(lone);
    expect(read.success).toBe(false);
    if (!read.success)
      expect(refusalsOf(read.error, lone)).toMatchObject([
        { field: '/number', code: 'missing', expected: 'second-identifier' },
      ]);
  });

  test.each([
    ['no name', { ...PEG, name: null }, ['/name']],
    ['a name of spaces', { ...PEG, name: '  ' }, ['/name']],
    ['a number of spaces', { ...PEG, number: ' ' }, ['/number']],
    ['a day that is not', { ...PEG, birthDate: '1950-02-30' }, ['/birthDate']],
    ['a date in another order', { ...PEG, birthDate: '31.12.1950' }, ['/birthDate']],
    // "Never room or bed number": there is no place for one.
    ['a bed', { ...PEG, bed: '7' }, ['/bed']],
  ])('is refused with %s, beside it', (_, given, places) => {
    expect(refusedAt(given)).toEqual(places);
  });

  test('has no spaces around it', () => {
    expect(identity.parse({ ...PEG, name: ' Peg ', number: '\tINV-9 ' })).toMatchObject({
      name: 'Peg',
      number: 'INV-9',
    });
  });
});

// Held against PostgreSQL where there is one: `ageInMonths.test.ts` of the server's store.
describe('age in completed months', () => {
  test.each([
    ['2020-03-15', '2020-03-15', 0],
    ['2020-03-15', '2020-04-14', 0],
    ['2020-03-15', '2020-04-15', 1],
    ['2020-03-15', '2021-03-14', 11],
    ['2020-03-15', '2021-03-15', 12],
    // Born on a leap day: a year is complete the day after 28 February in a common year.
    ['2020-02-29', '2021-02-28', 11],
    ['2020-02-29', '2021-03-01', 12],
    ['2020-02-29', '2024-02-29', 48],
    // Born at the end of a month that the next one does not have.
    ['2023-01-31', '2023-02-28', 0],
    ['2023-01-31', '2023-03-01', 1],
    ['2023-01-31', '2023-03-31', 2],
    ['1999-12-31', '2000-01-01', 0],
  ])('born %s, on %s: %d', (born, on, months) => {
    expect(ageInMonths(born, on)).toBe(months);
  });

  test.each([
    ['2020-03-15', '2020-03-14'],
    ['2020-03-15', '2019-12-31'],
  ])('born %s, on %s: not born yet', (born, on) => {
    expect(ageInMonths(born, on)).toBeNull();
  });

  test('grows by at most one a day, and never shrinks', () => {
    const day = fc.integer({ min: 0, max: 40_000 }).map((days) => days * 86_400_000);
    const text = (instant: number) => new Date(instant).toISOString().slice(0, 10);
    fc.assert(
      fc.property(day, day, (born, on) => {
        const [today, tomorrow] = [text(on), text(on + 86_400_000)].map((date) =>
          ageInMonths(text(born), date),
        );
        if (on < born) expect(today).toBeNull();
        else expect([today, (today ?? 0) + 1]).toContain(tomorrow);
      }),
    );
  });
});
