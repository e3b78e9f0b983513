import { describe, expect, test } from 'vitest';
import { aap2017 } from './aap2017.js';
import { screeningLimits, screeningOf } from './screening.js';
import { SCREENING } from './screeningTable.js';

describe('from 13 years on (bedside handbook 6.2, found)', () => {
  test.each([
    ['C099', 128, 78, 'elevated'],
    ['C099', 132, 78, 'stage-1'],
    // Each limit of 6.2, at it and on both sides.
    ['6.2', 119.9, 79.9, 'normal'],
    ['6.2', 120, 79.9, 'elevated'],
    ['6.2', 129.9, 79.9, 'elevated'],
    ['6.2', 130, 79.9, 'stage-1'],
    ['6.2', 139.9, 79.9, 'stage-1'],
    ['6.2', 140, 79.9, 'stage-2'],
    ['6.2', 119, 80, 'stage-1'],
    ['6.2', 119, 89.9, 'stage-1'],
    ['6.2', 119, 90, 'stage-2'],
  ])('%s: %d/%d is %s', (_c, systolic, diastolic, category) => {
    expect(aap2017({ systolic, diastolic }, 13, null).category).toBe(category);
    expect(aap2017({ systolic, diastolic }, 17, 'm').category).toBe(category);
    expect(aap2017({ systolic, diastolic }, 12, 'm')).toMatchObject({
      category: null,
      systolicCategory: null,
      diastolicCategory: null,
      why: [{ code: 'centiles-not-included' }],
    });
  });

  test('the screening table says 120/80 for all of them', () => {
    expect(aap2017({ systolic: 119, diastolic: 79 }, 13, null).screening).toBe('below');
    expect(aap2017({ systolic: 120, diastolic: 79 }, 16, null).screening).toBe('at-or-above');
    expect(aap2017({ systolic: 119, diastolic: 80 }, 13, 'f').screening).toBe('at-or-above');
  });
});

describe('the screening table (bedside handbook 6.3, second-hand)', () => {
  test('C100: boy of 7, 106/60 is to be assessed fully, 105/60 is below', () => {
    expect(aap2017({ systolic: 106, diastolic: 60 }, 7, 'm').screening).toBe('at-or-above');
    expect(aap2017({ systolic: 105, diastolic: 60 }, 7, 'm').screening).toBe('below');
  });

  // As it is printed: age, boys, girls.
  const PRINTED = `1 98/52 98/54, 2 100/55 101/58, 3 101/58 102/60, 4 102/60 103/62, 5 103/63 104/64, 6 105/66 105/67,
    7 106/68 106/68, 8 107/69 107/69, 9 107/70 108/71, 10 108/72 109/72, 11 110/74 111/74, 12 113/75 114/75,
    13 120/80 120/80`;
  const rows = PRINTED.split(',').map((row) => row.trim().split(' '));

  test.each(rows)('age %s: boys %s, girls %s', (age, boys, girls) => {
    for (const [sex, text] of [
      ['m', boys],
      ['f', girls],
    ] as const) {
      const [systolic = 0, diastolic = 0] = String(text).split('/').map(Number);
      const at = (s: number, d: number) => aap2017({ systolic: s, diastolic: d }, Number(age), sex).screening;
      expect([at(systolic - 0.1, diastolic - 0.1), at(systolic, diastolic - 0.1)]).toEqual([
        'below',
        'at-or-above',
      ]);
      expect([at(systolic - 0.1, diastolic), at(systolic + 0.1, diastolic + 0.1)]).toEqual([
        'at-or-above',
        'at-or-above',
      ]);
    }
  });

  test('goes by completed years, the last row for all older, none under 1', () => {
    expect(SCREENING.rows).toHaveLength(rows.length);
    expect(screeningLimits('m', 7.99)).toEqual(screeningLimits('m', 7));
    expect(screeningLimits('f', 17)).toEqual({ systolic: 120, diastolic: 80 });
    expect(screeningLimits('f', 1)).toEqual({ systolic: 98, diastolic: 54 });
    expect(screeningLimits('f', 0.99)).toBeNull();
  });

  test('with one number not known it never says "below"', () => {
    const limits = { systolic: 106, diastolic: 68 };
    expect(screeningOf({ systolic: 106, diastolic: null }, limits)).toBe('at-or-above');
    expect(screeningOf({ systolic: 105, diastolic: null }, limits)).toBeNull();
    expect(screeningOf({ systolic: 105, diastolic: 0 }, limits)).toBeNull();
    expect(screeningOf({ systolic: null, diastolic: 68 }, limits)).toBe('at-or-above');
  });

  test('a number just under the table is shown on its own side', () => {
    expect(aap2017({ systolic: 105.6, diastolic: 60 }, 7, 'm')).toMatchObject({
      screening: 'below',
      shown: { systolic: '105.6', diastolic: '60' },
    });
  });

  test('under 13 without the sex there is no screening', () => {
    expect(aap2017({ systolic: 130, diastolic: 60 }, 7, null).screening).toBeNull();
  });
});
