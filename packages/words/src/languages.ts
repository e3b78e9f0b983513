import type { Words } from './words.js';

/** A language: what it calls itself, and whether a clinician has reviewed its words. English is what was written first. */
type OneLanguage = { readonly name: string; readonly isReviewed: boolean };

export const LANGUAGES = {
  en: { name: 'English', isReviewed: true },
  es: { name: 'Español', isReviewed: false },
} as const satisfies Readonly<Record<string, OneLanguage>>;

export type Language = keyof typeof LANGUAGES;

export const LANGUAGE_IDS = Object.keys(LANGUAGES) as Language[];

/** The language of a BCP 47 tag; null where it is no tag, or of a language without a catalogue. */
export function languageOf(tag: string): Language | null {
  try {
    const { language } = new Intl.Locale(tag);
    return Object.hasOwn(LANGUAGES, language) ? (language as Language) : null;
  } catch {
    // A browser on a machine without a locale gives `en-US@posix`.
    return null;
  }
}

/**
 * The locale to write in: of those that somebody prefers, the first in the language they chose, so that the numbers of
 * their country stay (`es-MX` has a decimal point); without a choice the first in any language there is; else English.
 */
export function localeOf(chosen: Language | null, preferred: readonly string[]): string {
  const fits = (tag: string) => {
    const language = languageOf(tag);
    return language !== null && (chosen === null || language === chosen);
  };
  return preferred.find(fits) ?? chosen ?? 'en';
}

/** A tag without what it says besides language, script and country, such as other digits; what is no tag stays as it is. */
export function plainLocale(tag: string): string {
  try {
    return new Intl.Locale(tag).baseName;
  } catch {
    return tag;
  }
}

/** Whether a clinician has reviewed the language that these words are in. */
export function isReviewed({ say }: Pick<Words, 'say'>): boolean {
  return LANGUAGES[languageOf(say.locale) ?? 'en'].isReviewed;
}
