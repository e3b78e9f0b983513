import { describe, expect, test } from 'vitest';
import { isReviewed, LANGUAGE_IDS, LANGUAGES, languageOf, localeOf, plainLocale } from './languages.js';
import { loadWords } from './loadWords.js';
import { USUAL_MANNER } from './manner.js';
import { wordsFor } from './words.js';

test.each([
  ['es', 'es'],
  ['es-419', 'es'],
  ['en-GB', 'en'],
  ['de', null],
  ['en-US@posix', null],
  ['', null],
])('the language of %j is %s', (tag, language) => {
  expect(languageOf(tag)).toBe(language);
});

describe('the locale', () => {
  test.each([
    // Chosen or not, what the browser prefers, and what is written in.
    [null, ['de-DE', 'es-MX', 'en-GB'], 'es-MX'],
    [null, ['en-GB', 'es-MX'], 'en-GB'],
    [null, ['de-DE'], 'en'],
    [null, [], 'en'],
    ['es', ['en-GB', 'es-MX'], 'es-MX'],
    ['es', ['en-GB'], 'es'],
    ['en', ['es-ES', 'en-AU'], 'en-AU'],
  ] as const)('for %s chosen and %j preferred is %s', (chosen, preferred, locale) => {
    expect(localeOf(chosen, preferred)).toBe(locale);
  });
});

test('every language is loaded with its own words and numbers, and says whether it was reviewed', async () => {
  for (const language of LANGUAGE_IDS) {
    const words = await loadWords(language);
    expect(languageOf(words.say.locale)).toBe(language);
    expect(isReviewed(words)).toBe(LANGUAGES[language].isReviewed);
  }
  const spanish = await loadWords('es-ES');
  expect(spanish.sentence('app.pulse')).toBe('Pulso');
  expect(spanish.say.number(7.5, 1)).toBe('7,5');
  // CLDR: Mexico writes a decimal point.
  expect((await loadWords('es-MX')).say.number(7.5, 1)).toBe('7.5');
  expect((await loadWords('de')).sentence('app.pulse')).toBe(wordsFor('de').sentence('app.pulse'));
});

test('a refusal and a flag are said in Spanish, by whatever manner of units', async () => {
  const words = await loadWords('es-ES', { ...USUAL_MANNER, temperature: '[degF]' });
  // 38.5 degC is 101.3 degF, 38 degC 100.4 degF.
  const fever = { code: 'fever', figures: { celsius: 38.5, limitCelsius: 38 } };
  expect(words.detail(fever)).toMatch(/^101,3 °F está en el intervalo llamado fiebre \(100,4 °F o más\)/);
  expect(words.inManner({ temperature: 'Cel' }).detail(fever)).toMatch(/^38,5 °C .*\(38 °C o más\)/);
  const refusal = { field: '/n', code: 'not-whole', expected: 'a-whole-number', got: '7.5', line: null, choices: [], figures: {} } as const; // biome-ignore format: one thought
  expect(words.problem(refusal).message).toBe(
    '«/n» no es un número entero (“7.5”): indique un número entero.',
  );
});

test('a temperature stands on its own side of its limit in every unit', async () => {
  const { detail } = wordsFor('en', { ...USUAL_MANNER, temperature: '[degF]' });
  // 38.01 degC is 100.418 degF, which one decimal would put onto the limit.
  expect(detail({ code: 'hyperpyrexia', figures: { celsius: 41.01, limitCelsius: 41 } })).toMatch(
    /^105\.82 °F is over 105\.8 °F/,
  );
});

test('a tag is left with its language, script and country alone (RFC 5646, section 2.1)', () => {
  expect(
    ['es-u-nu-deva', 'es-MX-u-ca-buddhist-hc-h12', 'zh-Hant-TW', 'en-US@posix'].map(plainLocale),
  ).toEqual(['es', 'es-MX', 'zh-Hant-TW', 'en-US@posix']);
});
