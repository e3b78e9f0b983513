import { describe, expect, test } from 'vitest';
import { type Category, categoryOf } from './categoryOf.js';
import { GUIDELINE_IDS, parseCategoryQuestion } from './parseCategoryQuestion.js';
import { ADULT_SCHEME_IDS } from './schemes.js';

function answered(input: object): Category {
  const parsed = parseCategoryQuestion(input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  return categoryOf(parsed.value);
}

function refused(input: object): string[] {
  const parsed = parseCategoryQuestion(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

const given = { systolic: '160', diastolic: '100', guideline: 'esc-2024', ageYears: 40 };

test('C074 (from memory, 3.16): in pregnancy the scheme of pregnancy is used, whatever was asked', () => {
  const result = answered({ ...given, isPregnant: true });
  expect(result).toMatchObject({ guideline: 'pregnancy', category: 'severe' });
  expect(result.flags.map(({ code }) => code)).toEqual([
    'severe-reading',
    'pregnancy-scheme',
    'limits-from-memory',
  ]);
  const asked = answered({ ...given, guideline: 'pregnancy' });
  expect(asked).toMatchObject({ guideline: 'pregnancy', category: 'severe' });
  expect(asked.flags.map(({ code }) => code)).toEqual(['severe-reading', 'limits-from-memory']);
  // No other guideline need be named, and no age makes it an adult's.
  expect(answered({ systolic: 160, diastolic: 100, isPregnant: true, ageYears: 16 }).category).toBe('severe');
});

test.each(ADULT_SCHEME_IDS)('%s is for people of 18 and over', (guideline) => {
  expect(refused({ ...given, guideline, ageYears: 17 })).toEqual(['/ageYears out-of-range']);
  expect(answered({ ...given, guideline, ageYears: 18 }).category).not.toBeNull();
});

test('an age that was not given is taken as an adult’s, and that is said', () => {
  const codes = (more: object) => answered({ ...given, ...more }).flags.map(({ code }) => code);
  expect(codes({ ageYears: null })).toEqual(['adult-assumed']);
  expect(codes({})).toEqual([]);
  expect(codes({ guideline: 'who-2021' })).toEqual(['treatment-rule']);
});

test('AAP 2017 takes the age in completed years, and under 13 the sex', () => {
  const child = { systolic: 106, diastolic: 60, guideline: 'aap-2017' };
  expect(answered({ ...child, ageYears: 7, sex: 'm' })).toMatchObject({
    category: null,
    screening: 'at-or-above',
  });
  expect(answered({ ...child, ageYears: 13 })).toMatchObject({ category: 'normal', screening: 'below' });
  expect(refused(child)).toEqual(['/ageYears missing']);
  expect(refused({ ...child, ageYears: 12 })).toEqual(['/sex missing']);
  expect(refused({ ...child, ageYears: 0, sex: 'm' })).toEqual(['/ageYears out-of-range']);
  expect(refused({ ...child, ageYears: 1, sex: 'm' })).toEqual([]);
  expect(refused({ ...child, ageYears: 17 })).toEqual([]);
  expect(refused({ ...child, ageYears: 18 })).toEqual(['/ageYears out-of-range']);
  expect(answered({ ...given }).screening).toBeNull();
});

describe('what comes before any category', () => {
  const codes = (more: object) => answered({ ...given, ...more }).flags.map(({ code }) => code);

  // Bedside handbook 3.16: asked from 180 or 120 on, also where the scheme has no range for it; 160 or 110 in pregnancy.
  test.each(ADULT_SCHEME_IDS)('%s: severe from 180 or 120 on', (guideline) => {
    const isSaid = (systolic: number, diastolic: number | null) =>
      codes({ guideline, systolic, diastolic }).includes('severe-reading');
    expect([isSaid(179, 119), isSaid(180, 90), isSaid(150, 120), isSaid(180, null)]).toEqual([
      false,
      true,
      true,
      true,
    ]);
    const isSaidPregnant = (systolic: number, diastolic: number) =>
      codes({ guideline, systolic, diastolic, isPregnant: true }).includes('severe-reading');
    expect([isSaidPregnant(159, 109), isSaidPregnant(160, 90), isSaidPregnant(140, 110)]).toEqual([
      false,
      true,
      true,
    ]);
  });

  // Bedside handbook 5.2: 3 points at 90 or under; 3.17.
  test('a very low systolic is said, in pregnancy too', () => {
    const at = (systolic: number, isPregnant: boolean) => codes({ systolic, diastolic: 50, isPregnant });
    expect(at(90, false)).toEqual(['very-low']);
    expect(at(91, false)).toEqual([]);
    expect(at(90, true)).toContain('very-low');
  });

  // Bedside handbook 3.16: over 180/120; 3.17: under 70 + 2 x 7 at 7 years, under 90 at 13.
  test('of a child far too high or too low is said by AAP 2017 too', () => {
    const child = (ageYears: number, systolic: number, diastolic: number) =>
      codes({ guideline: 'aap-2017', sex: 'm', ageYears, systolic, diastolic });
    expect([child(7, 180, 120), child(7, 181, 90), child(15, 150, 121)]).toEqual([
      [],
      ['child-severe'],
      ['child-severe'],
    ]);
    expect([child(7, 84, 50), child(7, 83, 50), child(13, 90, 50), child(13, 89, 50)]).toEqual([
      [],
      ['child-low'],
      [],
      ['child-low'],
    ]);
  });
});

describe('the question from outside', () => {
  test.each<[object, string[]]>([
    [{ guideline: '' }, ['/guideline missing']],
    [{ guideline: 'esc' }, ['/guideline unknown-id']],
    [{ systolic: '' }, []],
    [{ diastolic: '' }, []],
    [{ systolic: '', diastolic: '' }, ['/systolic missing']],
    [{ systolic: 'x' }, ['/systolic not-a-number']],
    [{ systolic: 301 }, ['/systolic out-of-range']],
    [{ systolic: 300 }, []],
    [{ diastolic: 160 }, ['/diastolic not-below-systolic']],
    [{ diastolic: 159.9 }, []],
    [{ ageYears: 40.5 }, ['/ageYears not-whole']],
    [{ ageYears: -1 }, ['/ageYears out-of-range']],
    [{ ageYears: 130 }, []],
    [{ ageYears: 131 }, ['/ageYears out-of-range']],
    [{ sex: 'w' }, ['/sex unknown-id']],
    [{ arm: 'left' }, ['/arm unknown-field']],
  ])('%j is refused as %j', (more, refusals) => {
    expect(refused({ ...given, ...more })).toEqual(refusals);
  });

  test('C046 (derived): 80/120 is refused', () => {
    expect(refused({ ...given, systolic: 80, diastolic: 120 })).toEqual(['/diastolic not-below-systolic']);
  });

  test('every guideline is answered', () => {
    for (const guideline of GUIDELINE_IDS) {
      const ageYears = guideline === 'aap-2017' ? 15 : 40;
      expect(answered({ ...given, guideline, ageYears }).category).toEqual(expect.any(String));
    }
  });
});
