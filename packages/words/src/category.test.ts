import {
  ADULT_SCHEMES,
  categoryOf,
  childResult,
  type Flag,
  FOURTH_REPORT_ID,
  GUIDELINE_IDS,
  type GuidelineId,
  listPresets,
  PREGNANCY_SCHEME,
  parseCategoryQuestion,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { english } from './english/index.js';
import { wordsFor } from './words.js';

const words = wordsFor('en');

/** Each has a sentence that says something and what to do. */
function expectSaid(flags: readonly Flag[], seen: Set<string>): void {
  for (const flag of flags) {
    seen.add(flag.code);
    expect(words.detail(flag), flag.code).toMatch(/^[A-Z].*\.$/);
    expect(words.detail(flag), flag.code).not.toMatch(/no sentence for/);
  }
}

const pressure = fc.record({
  systolic: fc.option(fc.integer({ min: 60, max: 240 })),
  diastolic: fc.option(fc.constantFrom(0, 30, 45, 58)),
});

test('every guideline and every category has a title', () => {
  english.titles.scheme satisfies Record<GuidelineId | typeof FOURTH_REPORT_ID, string>;
  for (const { id, bands } of [...ADULT_SCHEMES, PREGNANCY_SCHEME]) {
    expect(Object.keys(english.titles.scheme)).toContain(id);
    for (const band of bands) expect(Object.keys(english.titles.category)).toContain(band.id);
  }
  expect(Object.keys(english.titles.scheme)).toEqual([...GUIDELINE_IDS, FOURTH_REPORT_ID]);
});

test('every preset of categories has a title', () => {
  const presets = listPresets().filter(({ section }) => section === 'category');
  expect(presets).not.toEqual([]);
  for (const { id } of presets) expect(words.title('preset', id), id).not.toBe(id);
});

test('every code of a category has its sentence', () => {
  const seen = new Set<string>();
  const person = fc.record({
    guideline: fc.constantFrom(...GUIDELINE_IDS),
    ageYears: fc.constantFrom(null, 7, 15, 40),
    sex: fc.constantFrom(null, 'f' as const),
    isPregnant: fc.boolean(),
  });
  fc.assert(
    fc.property(pressure, person, (measured, more) => {
      const parsed = parseCategoryQuestion({ ...measured, ...more });
      if (!parsed.ok) return;
      const { flags, why } = categoryOf(parsed.value);
      expectSaid([...flags, ...why], seen);
    }),
    { numRuns: 2000, seed: 31 },
  );
  expect([...seen].sort()).toEqual([
    'adult-assumed',
    'also-needs-average',
    'centiles-not-included',
    'child-low',
    'child-severe',
    'diastolic-zero',
    'limits-from-memory',
    'no-diastolic',
    'no-systolic',
    'pregnancy-scheme',
    'severe-reading',
    'treatment-rule',
    'very-low',
  ]);
});

test('every code of a child has its sentence', () => {
  const seen = new Set<string>();
  const child = fc.record({
    sex: fc.constantFrom('f' as const, 'm' as const),
    ageMonths: fc.integer({ min: 24, max: 215 }),
    heightCm: fc.integer({ min: 80, max: 190 }),
  });
  fc.assert(
    fc.property(pressure, child, (measured, more) => {
      const { flags, why } = childResult({ ...measured, ...more });
      expectSaid([...flags, ...why], seen);
    }),
    { numRuns: 2000, seed: 32 },
  );
  expect([...seen].sort()).toEqual([
    'child-low',
    'child-severe',
    'diastolic-zero',
    'height-far-out',
    'no-diastolic',
    'no-systolic',
    'printed-table-higher',
  ]);
});

test('a height just over its limit never reads as that limit', () => {
  const detail = words.detail({ code: 'height-far-out', figures: { heightZ: -3.02, limitZ: 3 } });
  expect(detail).toContain('3.02 SD');
});

test('what could be dangerous sends to the child first and to the local protocol', () => {
  // Bedside handbook 3.16, 3.17, 7.5.
  for (const flag of [
    { code: 'child-severe', figures: {} },
    { code: 'child-low', figures: { systolic: 79, limitMmHg: 80 } },
  ]) {
    expect(words.detail(flag)).toMatch(/look at the child first.*local protocol and emergency procedure/);
  }
});
