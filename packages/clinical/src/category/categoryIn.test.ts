import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { categoryIn } from './categoryIn.js';
import { bandOf, type CategoryScheme, isRaised, isSevere, limitsOf } from './scheme.js';
import { ADULT_SCHEMES, type AdultSchemeId, adultScheme, PREGNANCY_SCHEME } from './schemes.js';

const ALL: readonly CategoryScheme[] = [...ADULT_SCHEMES, PREGNANCY_SCHEME];

/** Reads "152/86", or "152/P" for a pressure by feel. */
function measured(text: string) {
  const [systolic, diastolic] = text.split('/');
  return { systolic: Number(systolic), diastolic: diastolic === 'P' ? null : Number(diastolic) };
}

const inAdult = (id: AdultSchemeId, text: string) => categoryIn(adultScheme(id), measured(text));

describe('check values of the bedside handbook, section 8', () => {
  test.each<[string, string, Partial<Record<AdultSchemeId, string>>]>([
    ['C071 (found, 3.16)', '180/100', { 'nice-ng136': 'severe' }],
    ['C071 (found, 3.16)', '178/120', { 'nice-ng136': 'severe' }],
    ['C072 (F2, 6.1)', '180/118', { 'acc-aha-2017': 'stage-2', 'acc-aha-2025': 'stage-2' }],
    ['C073 (F2, 6.1)', '181/90', { 'acc-aha-2017': 'severe', 'acc-aha-2025': 'severe' }],
    [
      'C092 (F/F2, 6.1)',
      '118/84',
      {
        'acc-aha-2017': 'stage-1',
        'esc-2024': 'elevated',
        'esh-2023': 'normal',
        'ish-2020': 'normal',
        'jsh-2019': 'elevated',
      },
    ],
    [
      'C093 (F/F2, 6.1)',
      '118/72',
      { 'acc-aha-2017': 'normal', 'esc-2024': 'elevated', 'esh-2023': 'optimal' },
    ],
    [
      'C094 (F/F2, 6.1)',
      '125/79',
      { 'acc-aha-2017': 'elevated', 'jsh-2019': 'high-normal', 'esh-2023': 'normal' },
    ],
    [
      'C095 (F/F2, 6.1)',
      '125/82',
      { 'acc-aha-2017': 'stage-1', 'jsh-2019': 'elevated', 'esh-2023': 'normal' },
    ],
    [
      'C096 (F/F2, 6.1)',
      '138/88',
      {
        'acc-aha-2017': 'stage-1',
        'esc-2024': 'elevated',
        'esh-2023': 'high-normal',
        'ish-2020': 'high-normal',
        'nice-ng136': 'below-stage-1',
      },
    ],
    [
      'C097 (F/F2, 6.1)',
      '162/96',
      { 'acc-aha-2017': 'stage-2', 'esh-2023': 'grade-2', 'ish-2020': 'grade-2', 'nice-ng136': 'stage-2' },
    ],
    ['C098 (F2, 6.1)', '152/86', { 'esh-2023': 'grade-1' }],
  ])('%s: %s', (_source, text, categories) => {
    for (const [id, category] of Object.entries(categories)) {
      expect([id, inAdult(id as AdultSchemeId, text).category]).toEqual([id, category]);
    }
  });

  test('C059 (practice, 0.2): 139.5/84.5 is below 140 and below 85, and is shown so', () => {
    expect(inAdult('esh-2023', '139.5/84.5')).toMatchObject({
      category: 'high-normal',
      diastolicCategory: 'normal',
      shown: { systolic: '139.5', diastolic: '84.5' },
    });
    expect(inAdult('esh-2023', '139.4/84.4').shown).toEqual({ systolic: '139', diastolic: '84' });
  });

  test('C074 (from memory, 3.16): 160/100 in pregnancy is severe, and the limits are said to be from memory', () => {
    const result = categoryIn(PREGNANCY_SCHEME, measured('160/100'));
    expect(result).toMatchObject({ category: 'severe', diastolicCategory: 'hypertension', level: 'severe' });
    expect(result.flags).toEqual([{ code: 'limits-from-memory', figures: {} }]);
  });

  test('C098 (F2, 6.1): isolated', () => {
    expect(inAdult('esh-2023', '152/86').isolated).toBe('systolic');
    expect(inAdult('esh-2023', '138/92').isolated).toBe('diastolic');
    expect(inAdult('esh-2023', '152/92').isolated).toBeNull();
    expect(inAdult('esh-2023', '138/86').isolated).toBeNull();
    // Both at or over 130/80, each in a stage of this guideline.
    expect(inAdult('acc-aha-2017', '150/85').isolated).toBeNull();
  });
});

/**
 * Each table of bedside handbook 6.1 (3.16 for the severe ones) as it is printed: for one number, the category below
 * the first limit, then each limit and the category from there on. `>` is a category that begins above it.
 */
const PRINTED: Readonly<Record<string, { systolic: readonly unknown[]; diastolic: readonly unknown[] }>> = {
  'acc-aha-2017': {
    systolic: ['normal', 120, 'elevated', 130, 'stage-1', 140, 'stage-2', '>180', 'severe'],
    diastolic: ['normal', 80, 'stage-1', 90, 'stage-2', '>120', 'severe'],
  },
  'acc-aha-2025': {
    systolic: ['normal', 120, 'elevated', 130, 'stage-1', 140, 'stage-2', '>180', 'severe'],
    diastolic: ['normal', 80, 'stage-1', 90, 'stage-2', '>120', 'severe'],
  },
  'esc-2024': {
    systolic: ['non-elevated', 120, 'elevated', 140, 'hypertension'],
    diastolic: ['non-elevated', 70, 'elevated', 90, 'hypertension'],
  },
  'esc-esh-2018': {
    systolic: ['optimal', 120, 'normal', 130, 'high-normal', 140, 'grade-1', 160, 'grade-2', 180, 'grade-3'],
    diastolic: ['optimal', 80, 'normal', 85, 'high-normal', 90, 'grade-1', 100, 'grade-2', 110, 'grade-3'],
  },
  'esh-2023': {
    systolic: ['optimal', 120, 'normal', 130, 'high-normal', 140, 'grade-1', 160, 'grade-2', 180, 'grade-3'],
    diastolic: ['optimal', 80, 'normal', 85, 'high-normal', 90, 'grade-1', 100, 'grade-2', 110, 'grade-3'],
  },
  'nice-ng136': {
    systolic: ['below-stage-1', 140, 'stage-1', 160, 'stage-2', 180, 'severe'],
    diastolic: ['below-stage-1', 90, 'stage-1', 100, 'stage-2', 120, 'severe'],
  },
  'jsh-2019': {
    systolic: ['normal', 120, 'high-normal', 130, 'elevated', 140, 'grade-1', 160, 'grade-2', 180, 'grade-3'],
    diastolic: ['normal', 80, 'elevated', 90, 'grade-1', 100, 'grade-2', 110, 'grade-3'],
  },
  'ish-2020': {
    systolic: ['normal', 130, 'high-normal', 140, 'grade-1', 160, 'grade-2'],
    diastolic: ['normal', 85, 'high-normal', 90, 'grade-1', 100, 'grade-2'],
  },
  'who-2021': {
    systolic: ['below', 130, 'treat-if-high-risk', 140, 'treat'],
    diastolic: ['below', 90, 'treat'],
  },
  pregnancy: {
    systolic: ['below', 140, 'hypertension', 160, 'severe'],
    diastolic: ['below', 90, 'hypertension', 110, 'severe'],
  },
};

test('every scheme is tested', () => {
  expect(Object.keys(PRINTED)).toEqual(ALL.map(({ id }) => id));
});

describe.each(ALL)('$id at and on both sides of each limit', (scheme) => {
  test.each(['systolic', 'diastolic'] as const)('%s', (component) => {
    const cells = PRINTED[scheme.id]?.[component] ?? [];
    const found = (mmHg: number) => bandOf(scheme, component, mmHg).id;
    for (let at = 1; at < cells.length; at += 2) {
      const [below, limit, above] = cells.slice(at - 1, at + 2);
      const isAbove = String(limit).startsWith('>');
      const mmHg = Number(String(limit).replace('>', ''));
      expect([mmHg, found(mmHg - 0.1)]).toEqual([mmHg, below]);
      expect([mmHg, found(mmHg)]).toEqual([mmHg, isAbove ? below : above]);
      expect([mmHg, found(mmHg + 0.1)]).toEqual([mmHg, above]);
    }
    expect(limitsOf(scheme, component)).toHaveLength((cells.length - 1) / 2);
  });
});

describe.each(ALL)('$id', (scheme) => {
  const pressure = fc.record({
    systolic: fc.integer({ min: 200, max: 2800 }).map((tenths) => tenths / 10),
    diastolic: fc.integer({ min: 100, max: 1600 }).map((tenths) => tenths / 10),
  });
  const place = (id: string | null) => scheme.bands.findIndex((one) => one.id === id);

  test('takes the higher of the two, and shows each number on its own side', () => {
    fc.assert(
      fc.property(pressure, (given) => {
        const result = categoryIn(scheme, given);
        const places = [place(result.systolicCategory), place(result.diastolicCategory)];
        expect(place(result.category)).toBe(Math.max(...places));
        expect(result.atLeast).toBe(result.category);
        const asShown = categoryIn(scheme, {
          systolic: Number(result.shown.systolic),
          diastolic: Number(result.shown.diastolic),
        });
        expect([asShown.systolicCategory, asShown.diastolicCategory]).toEqual([
          result.systolicCategory,
          result.diastolicCategory,
        ]);
      }),
    );
  });

  test('a higher pressure is never in a lower category', () => {
    fc.assert(
      fc.property(pressure, fc.nat(400), fc.nat(400), (given, up, down) => {
        const more = { systolic: given.systolic + up / 10, diastolic: given.diastolic + down / 10 };
        const before = place(categoryIn(scheme, given).category);
        expect(place(categoryIn(scheme, more).category)).toBeGreaterThanOrEqual(before);
      }),
    );
  });

  test('levels rise with the bands, so that raised and severe can be asked of any scheme', () => {
    const raised = scheme.bands.map(({ level }) => Number(isRaised(level)) + Number(isSevere(level)));
    expect(raised).toEqual([...raised].sort());
    expect(raised).toContain(1);
  });
});

test('one number not known: no category, but what the other alone comes to is kept', () => {
  const felt = inAdult('esh-2023', '184/P');
  expect(felt).toMatchObject({
    category: null,
    systolicCategory: 'grade-3',
    diastolicCategory: null,
    isolated: null,
    atLeast: 'grade-3',
    level: 'severe',
    shown: { systolic: '184', diastolic: null },
  });
  expect(felt.why).toEqual([{ code: 'no-diastolic', figures: {} }]);
  const only = categoryIn(adultScheme('esh-2023'), { systolic: null, diastolic: 95 });
  expect(only).toMatchObject({ category: null, diastolicCategory: 'grade-1', atLeast: 'grade-1' });
  expect(only.why).toEqual([{ code: 'no-systolic', figures: {} }]);
});

test('nothing known is in no category', () => {
  expect(categoryIn(adultScheme('esc-2024'), { systolic: null, diastolic: null })).toMatchObject({
    category: null,
    atLeast: null,
    level: null,
    flags: [],
    why: [{ code: 'no-systolic' }, { code: 'no-diastolic' }],
  });
});

test('a diastolic of 0 without muffling cannot be classified', () => {
  // docs/conventions.md section 6: it was heard to zero, and is no measured zero.
  expect(inAdult('esc-2024', '118/0')).toMatchObject({
    category: null,
    systolicCategory: 'non-elevated',
    diastolicCategory: null,
    why: [{ code: 'diastolic-zero' }],
  });
});

test('a stage of NICE also needs an average away from the clinic', () => {
  // Bedside handbook 6.1 (second-hand): stage 1 with 135/85, stage 2 with 150/95 by day or at home.
  expect(inAdult('nice-ng136', '144/88').flags).toEqual([
    { code: 'also-needs-average', figures: { systolic: 135, diastolic: 85 } },
  ]);
  expect(inAdult('nice-ng136', '162/96').flags).toEqual([
    { code: 'also-needs-average', figures: { systolic: 150, diastolic: 95 } },
  ]);
  expect(inAdult('nice-ng136', '139/89').flags).toEqual([]);
  expect(inAdult('nice-ng136', '180/100').flags).toEqual([]);
});

test('a limit from memory is said where the category stands on it, and only there', () => {
  // Bedside handbook 6.1: the grades of JSH; 3.16: the severe wording of AHA/ACC 2025.
  const codes = (id: AdultSchemeId, text: string) => inAdult(id, text).flags.map(({ code }) => code);
  expect(codes('jsh-2019', '135/78')).toEqual([]);
  expect(codes('jsh-2019', '142/78')).toEqual(['limits-from-memory']);
  expect(codes('acc-aha-2025', '181/90')).toEqual(['limits-from-memory']);
  expect(codes('acc-aha-2017', '181/90')).toEqual([]);
});
