import { expect, test } from 'vitest';
import { DIARY_TEXTS, diaryBirth, diaryDate, diaryDay, diaryYear } from './diary.js';

const LIMITS = {
  systolic: 180,
  diastolic: 120,
  pregnantSystolic: 160,
  pregnantDiastolic: 110,
  weeksAfterBirth: 6,
};

// Bedside handbook 3.1 (30 minutes without, 5 at rest) and 3.16 (180/120; in pregnancy 160/110).
test.each(Object.entries(DIARY_TEXTS))('the diary in %s says each number that it is given', (_id, text) => {
  expect(text.before(30)).toContain('30');
  expect(text.rest(5)).toContain('5');
  expect(text.again(5)).toContain('5');
  expect(text.plan(9, 3)).toMatch(/9.*3/s);
  expect(text.severe(LIMITS)).toMatch(/180.*120/s);
  expect(text.pregnant(LIMITS)).toMatch(/6.*160.*110/s);
  expect(text.reading(2)).toContain('2');
  expect(text.whose('Ines (invented)')).toContain('Ines (invented)');
  expect(text.bringBack('8 July')).toContain('8 July');
});

// Bedside handbook 3.16, what to ask at 180 or 120 and more: pregnancy has a line of its own.
test.each([
  [
    'en',
    [
      'chest',
      'back',
      'breathless',
      'weakness',
      'numbness',
      'speaking',
      'seeing',
      'headache',
      'confusion',
      'fit',
      'urine',
    ],
  ],
  [
    'es',
    [
      'pecho',
      'espalda',
      'aire',
      'debilidad',
      'adormecimiento',
      'hablar',
      'ver',
      'cabeza',
      'confusión',
      'convulsión',
      'orina',
    ],
  ],
  ['ar', ['الصدر', 'الظهر', 'التنفس', 'ضعف', 'خدر', 'الكلام', 'الرؤية', 'صداع', 'تشوّش', 'تشنّج', 'البول']],
] as const)('the diary in %s names every sign of danger of the handbook', (id, signs) => {
  for (const sign of signs) expect(DIARY_TEXTS[id].symptoms).toContain(sign);
});

test('every language but English says that nobody has reviewed it, and Arabic runs from right to left', () => {
  const { en, es, ar } = DIARY_TEXTS;
  expect([en.isReviewed, es.isReviewed, ar.isReviewed]).toEqual([true, false, false]);
  expect([en.direction, es.direction, ar.direction]).toEqual(['ltr', 'ltr', 'rtl']);
  const arabic = Object.entries(ar).filter(([key]) => !['locale', 'direction', 'isReviewed'].includes(key));
  for (const [key, text] of arabic)
    if (typeof text === 'string') expect(text, key).toMatch(/^[^A-Za-z]*\p{Script=Arabic}[^A-Za-z]*$/u);
});

// 8 July 2026 is a Wednesday (the calendar); digits stay those that a device shows.
test('days are written as the language writes them, in the digits of the device', () => {
  const { en, es, ar } = DIARY_TEXTS;
  expect(diaryDate('2026-07-08', en)).toBe('Wednesday 8 July');
  expect(diaryDate('2026-07-08', es)).toBe('miércoles, 8 de julio');
  expect(es.bringBack(diaryDate('2026-07-08', es))).toContain('el miércoles 8 de julio o');
  expect(diaryDate('2026-07-08', ar)).toMatch(/^الأربعاء.*8/);
  expect(diaryDay('2026-07-08', en)).toMatch(/^Wed,? 8 Jul$/);
});

test.each([
  ['en', '18 November 1961', '2026'],
  ['es', '18 de noviembre de 1961', '2026'],
  ['ar', '18 نوفمبر 1961', '2026'],
] as const)('a birth date and the year of a day are said in %s', (language, born, year) => {
  const text = DIARY_TEXTS[language];
  expect(diaryBirth('1961-11-18', text)).toBe(born);
  expect(diaryYear('2026-11-18', text)).toBe(year);
});
