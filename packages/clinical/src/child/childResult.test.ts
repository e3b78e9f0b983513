import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ChildQuestion, childResult } from './childResult.js';
import { isChildSevere } from './childSevere.js';
import { heightCurve } from './heightZ.js';
import { parseChildQuestion } from './parseChildQuestion.js';

const girl5: ChildQuestion = { sex: 'f', ageMonths: 60, heightCm: 105, systolic: 104, diastolic: 70 };

test('girl of 5, 105 cm, 104/70: elevated by the diastolic (bedside handbook 6.4, derived)', () => {
  const result = childResult(girl5);
  expect(result).toMatchObject({
    guideline: 'fourth-report-2004',
    category: 'elevated',
    systolicCategory: 'normal',
    diastolicCategory: 'elevated',
    flags: [],
    why: [],
  });
  expect(result.heightZ).toBeCloseTo(-0.628, 3);
  expect(result.limits.systolic.p99).toBeCloseTo(116.2, 1);
});

test('boy of 8, 135 cm, 118/76: elevated by both (bedside handbook 6.4, derived)', () => {
  const result = childResult({ sex: 'm', ageMonths: 96, heightCm: 135, systolic: 118, diastolic: 76 });
  expect([result.category, result.systolicCategory, result.diastolicCategory]).toEqual([
    'elevated',
    'elevated',
    'elevated',
  ]);
});

describe('categories of the Fourth Report (bedside handbook 6.2, found), at and on both sides of each limit', () => {
  const { limits } = childResult(girl5);
  const systolicOf = (systolic: number) =>
    childResult({ ...girl5, systolic, diastolic: 40 }).systolicCategory;
  const diastolicOf = (diastolic: number) =>
    childResult({ ...girl5, systolic: 150, diastolic }).diastolicCategory;

  test.each([
    ['90th', 'p90', 0, 'normal', 'elevated'],
    ['95th', 'p95', 0, 'elevated', 'stage-1'],
  ] as const)('%s: from it', (_title, centile, add, below, from) => {
    for (const [of, values] of [
      [systolicOf, limits.systolic],
      [diastolicOf, limits.diastolic],
    ] as const) {
      const limit = values[centile] + add;
      expect([of(limit - 1e-6), of(limit), of(limit + 1e-6)]).toEqual([below, from, from]);
    }
  });

  test('99th + 5: above it', () => {
    for (const [of, values] of [
      [systolicOf, limits.systolic],
      [diastolicOf, limits.diastolic],
    ] as const) {
      const limit = values.p99 + 5;
      expect([of(limit - 1e-6), of(limit), of(limit + 1e-6)]).toEqual(['stage-1', 'stage-1', 'stage-2']);
    }
  });

  test('elevated from 120/80, even under the 90th centile', () => {
    // A tall boy of 17, whose 90th centiles lie above 120/80.
    const boy17 = { sex: 'm', ageMonths: 209, heightCm: 188 } as const;
    const at = (systolic: number, diastolic: number) =>
      childResult({ ...boy17, systolic, diastolic }).category;
    const { p90 } = childResult({ ...boy17, systolic: 110, diastolic: 60 }).limits.systolic;
    expect(p90).toBeGreaterThan(120);
    expect([at(119.9, 79.9), at(120, 79.9), at(119.9, 80)]).toEqual(['normal', 'elevated', 'elevated']);
  });
});

describe('what must be known', () => {
  const codes = (more: Partial<ChildQuestion>) =>
    childResult({ ...girl5, ...more }).flags.map(({ code }) => code);

  test('the printed table, which leaves decimals off, puts some pressures higher', () => {
    // Limits 105.2/109.0/116.2 (bedside handbook 6.4): printed as 105, so 105 is elevated there and normal by the formula.
    expect(codes({ systolic: 105, diastolic: 60 })).toEqual(['printed-table-higher']);
    expect(codes({ systolic: 104, diastolic: 60 })).toEqual([]);
    expect(codes({ systolic: 106, diastolic: 60 })).toEqual([]);
  });

  test('a low systolic: C075 and W9 (second-hand, 3.17)', () => {
    expect(codes({ systolic: 79, diastolic: 50 })).toEqual(['child-low']);
    expect(codes({ systolic: 80, diastolic: 50 })).toEqual([]);
    expect(childResult(girl5).lowSystolicMmHg).toBe(80);
  });

  test('a height far from the median', () => {
    const { l, m, s } = heightCurve('f', 60);
    const tall = (z: number) => m * (1 + l * s * z) ** (1 / l);
    expect(codes({ heightCm: tall(2.99), diastolic: 60 })).toEqual([]);
    expect(codes({ heightCm: tall(3.01), diastolic: 60 })).toEqual(['height-far-out']);
    expect(codes({ heightCm: tall(-3.01), systolic: 95, diastolic: 50 })).toEqual(['height-far-out']);
  });

  test('care at once further than 30 above the 95th centile (from memory, 3.16)', () => {
    const { p95 } = childResult(girl5).limits.systolic;
    expect(codes({ systolic: p95 + 30 })).toEqual([]);
    expect(codes({ systolic: p95 + 30.001 })).toEqual(['child-severe']);
  });
});

test('care at once over 180/120 (from memory, 3.16); under that it takes a height under 13 years', () => {
  const at = (systolic: number, diastolic: number, months: number) =>
    isChildSevere({ systolic, diastolic }, months, null);
  expect([at(180, 120, 156), at(180.1, 90, 156), at(170, 120.1, 156)]).toEqual([false, true, true]);
  expect([at(180, 120, 155), at(180.1, 90, 155), at(170, 120.1, 72)]).toEqual([null, true, true]);
});

test('by feel only: no category, what the systolic alone comes to, and no standing of the other', () => {
  expect(childResult({ ...girl5, diastolic: null })).toMatchObject({
    category: null,
    systolicCategory: 'normal',
    atLeast: 'normal',
    diastolic: null,
    why: [{ code: 'no-diastolic' }],
  });
  expect(childResult({ ...girl5, diastolic: 0 })).toMatchObject({
    diastolic: null,
    why: [{ code: 'diastolic-zero' }],
  });
});

test('the standing never contradicts the category', () => {
  const child = fc.record({
    sex: fc.constantFrom('f' as const, 'm' as const),
    ageMonths: fc.integer({ min: 24, max: 215 }),
    systolic: fc.integer({ min: 70, max: 160 }),
    diastolic: fc.integer({ min: 30, max: 69 }),
    z: fc.integer({ min: -20, max: 20 }),
  });
  fc.assert(
    fc.property(child, ({ z, ...one }) => {
      const { l, m, s } = heightCurve(one.sex, one.ageMonths);
      const result = childResult({ ...one, heightCm: m * (1 + (l * s * z) / 10) ** (1 / l) });
      expect(result.heightZ).toBeCloseTo(z / 10, 6);
      const isStage = ['stage-1', 'stage-2'].includes(result.systolicCategory ?? '');
      expect(isStage).toBe((result.systolic?.z ?? 0) >= 1.645);
    }),
  );
});

describe('the question from outside', () => {
  const typed = { sex: 'f', ageMonths: '60', heightCm: '105', systolic: '104', diastolic: '70' };
  const refused = (more: object) => {
    const parsed = parseChildQuestion({ ...typed, ...more });
    return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
  };

  test('is read from text', () => {
    expect(parseChildQuestion(typed)).toEqual({ ok: true, value: girl5 });
  });

  test.each<[object, string[]]>([
    [{ ageMonths: 23.9 }, ['/ageMonths out-of-range']],
    [{ ageMonths: 24, heightCm: 86 }, []],
    [{ ageMonths: 215.9, heightCm: 163 }, []],
    [{ ageMonths: 216 }, ['/ageMonths out-of-range']],
    [{ heightCm: 39.9 }, ['/heightCm out-of-range']],
    [{ heightCm: 40 }, ['/heightCm impossible']],
    [{ heightCm: 230 }, ['/heightCm impossible']],
    [{ heightCm: 230.1 }, ['/heightCm out-of-range']],
    [{ sex: 'girl' }, ['/sex unknown-id']],
    [{ diastolic: '' }, []],
    [{ systolic: '' }, []],
    [{ systolic: '', diastolic: '' }, ['/systolic missing']],
    [{ diastolic: 104 }, ['/diastolic not-below-systolic']],
    [{ systolic: 0 }, ['/systolic out-of-range']],
    [{ sex: '', ageMonths: '', heightCm: '' }, ['/sex missing', '/ageMonths missing', '/heightCm missing']],
    [{ arm: 'left' }, ['/arm unknown-field']],
  ])('%j is refused as %j', (more, refusals) => {
    expect(refused(more)).toEqual(refusals);
  });
});
