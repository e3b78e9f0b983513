import { isReviewed, LANGUAGES, languageOf } from '../languages.js';
import { loadWords } from '../loadWords.js';
import { arabicCard } from './arabicCard.js';
import type { CardText } from './cardText.js';

/** Every language that a preparation card can be printed in, and what it calls itself. */
export const CARD_LANGUAGES = {
  en: LANGUAGES.en.name,
  es: LANGUAGES.es.name,
  ar: arabicCard.name,
} as const;

export type CardLanguage = keyof typeof CARD_LANGUAGES;

/** The card for a locale: of a language of the screens from its catalogue, so that both say the same. */
export async function loadCard(locale: string): Promise<CardText> {
  if (locale.startsWith('ar')) return arabicCard;
  const words = await loadWords(locale);
  const say = words.sentence;
  return {
    name: LANGUAGES[languageOf(words.say.locale) ?? 'en'].name,
    locale: words.say.locale,
    direction: 'ltr',
    heading: say('card.heading'),
    before: (minutes) => say('card.before', { minutes }),
    toilet: say('card.toilet'),
    rest: (minutes) => say('card.rest', { minutes }),
    back: say('card.back'),
    feet: say('card.feet'),
    bare: say('card.bare'),
    arm: say('card.arm'),
    quiet: say('card.quiet'),
    tell: say('card.tell'),
    source: (text) => say('card.source', { text }),
    notReviewed: isReviewed(words) ? null : say('app.notReviewed'),
  };
}
