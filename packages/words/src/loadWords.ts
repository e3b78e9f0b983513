import type { Catalogue } from './catalogue.js';
import { english } from './english/index.js';
import { type Language, languageOf } from './languages.js';
import type { Manner } from './manner.js';
import { type Words, wordsIn } from './words.js';

/** English is at hand; another language comes by itself, so that nobody fetches one they do not read. */
const BRING: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: async () => english,
  es: async () => (await import('./spanish/index.js')).spanish,
};

/** The words for a locale, in its language if there is a catalogue of it, else in English. */
export async function loadWords(locale: string, manner?: Manner): Promise<Words> {
  const language = languageOf(locale);
  return language === null
    ? wordsIn(english, 'en', manner)
    : wordsIn(await BRING[language](), locale, manner);
}
