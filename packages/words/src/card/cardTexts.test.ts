import { expect, test } from 'vitest';
import { CARD_LANGUAGES, type CardLanguage, loadCard } from './cardTexts.js';

test.each(Object.keys(CARD_LANGUAGES) as CardLanguage[])(
  'a card in %s says everything in its own language, with its minutes',
  async (language) => {
    const { notReviewed, before, rest, source, ...texts } = await loadCard(language);
    expect([before(30), rest(5), source('ESH 2023')]).toEqual([
      expect.stringContaining('30'),
      expect.stringContaining('5'),
      expect.stringContaining('ESH 2023'),
    ]);
    for (const text of Object.values(texts)) expect(text).not.toBe('');
    // No clinician has reviewed a translation: it says so itself.
    expect(notReviewed === null).toBe(language === 'en');
    expect(texts.direction).toBe(language === 'ar' ? 'rtl' : 'ltr');
  },
);
