import type { Catalogue } from './catalogue.js';
import { bedside as english } from './english/bedside.js';
import type { later } from './english/later.js';
import { joined } from './joined.js';
import { type Language, languageOf } from './languages.js';
import type { Manner } from './manner.js';
import type { Reworded } from './reworded.js';
import { isEnglish, type Words, wordsIn } from './words.js';

type Bedside = Reworded<typeof english>;
type Later = Reworded<typeof later>;

/** The parts of each language; English has the bedside at hand, so that a device can always say something. */
const PARTS: Readonly<
  Record<Language, { readonly bedside: () => Promise<Bedside>; readonly later: () => Promise<Later> }>
> = {
  en: { bedside: async () => english, later: async () => (await import('./english/later.js')).later },
  es: {
    bedside: async () => (await import('./spanish/spanishBedside.js')).bedside,
    later: async () => (await import('./spanish/spanishLater.js')).later,
  },
};

/** The words of a device, which come in two parts: those of the bedside, and those of all other pages. */
export type WordsInParts = {
  /**
   * The words for a locale, in its language if there is a catalogue of it, else in English; of later pages too once
   * `bringLater` was asked for.
   */
  readonly load: (locale: string, manner?: Manner) => Promise<Words>;
  /** The words of the bedside in English, at once (see `wordsFor`). */
  readonly english: (locale: string, manner?: Manner) => Words;
  /**
   * Brings the words of later pages; from then on all words that were loaded say them, in whatever manner, so that
   * nothing on the screen is drawn anew for it. A page that says them is shown after it.
   */
  readonly bringLater: () => Promise<void>;
};

export function wordsInParts(): WordsInParts {
  /** What each language has so far; one object for all words of it, which grows by its later part once. */
  const shelves = new Map<Language, { catalogue: Catalogue; isWhole: boolean }>();
  let chosen: Language = 'en';
  let isLaterAsked = false;

  function shelfOf(language: Language, bedside: Bedside) {
    const found = shelves.get(language);
    if (found !== undefined) return found;
    // Until its later part is there, nothing that is shown asks for it.
    const shelf = { catalogue: { ...bedside } as unknown as Catalogue, isWhole: false };
    shelves.set(language, shelf);
    return shelf;
  }

  async function bring(language: Language): Promise<Catalogue> {
    const shelf = shelves.get(language) ?? shelfOf(language, await PARTS[language].bedside());
    if (isLaterAsked && !shelf.isWhole) {
      const added = await PARTS[language].later();
      if (!shelf.isWhole) Object.assign(shelf.catalogue, joined(shelf.catalogue, added));
      shelf.isWhole = true;
    }
    return shelf.catalogue;
  }

  return {
    load: async (locale, manner) => {
      const language = languageOf(locale);
      const before = chosen;
      const wanted = language ?? 'en';
      // At once, so that a later part that is asked for meanwhile is of this language too.
      chosen = wanted;
      try {
        return wordsIn(await bring(wanted), language === null ? 'en' : locale, manner);
      } catch (fault) {
        if (chosen === wanted) chosen = before;
        throw fault;
      }
    },
    english: (locale, manner) =>
      wordsIn(shelfOf('en', english).catalogue, isEnglish(locale) ? locale : 'en', manner),
    bringLater: async () => {
      isLaterAsked = true;
      await bring(chosen);
    },
  };
}
