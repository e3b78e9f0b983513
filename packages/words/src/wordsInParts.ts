import type { Catalogue } from './catalogue.js';
import type { aside } from './english/aside.js';
import { bedside as english } from './english/bedside.js';
import type { later } from './english/later.js';
import type { practice } from './english/practice.js';
import type { round } from './english/round.js';
import { joined } from './joined.js';
import { type Language, languageOf } from './languages.js';
import type { Manner } from './manner.js';
import type { Reworded } from './reworded.js';
import { isEnglish, type Words, wordsIn } from './words.js';

type Bedside = Reworded<typeof english>;

/**
 * The parts of a catalogue beside that of the bedside: what the screens of a guided round say, what those say
 * that not every round comes to, those of practice, and all other pages.
 */
export type LaterPart = 'round' | 'aside' | 'later' | 'practice';

type Brought = {
  readonly bedside: () => Promise<Bedside>;
  readonly round: () => Promise<Reworded<typeof round>>;
  readonly aside: () => Promise<Reworded<typeof aside>>;
  readonly later: () => Promise<Reworded<typeof later>>;
  readonly practice: () => Promise<Reworded<typeof practice>>;
};

/** The parts of each language; English has the bedside at hand, so that a device can always say something. */
const PARTS: Readonly<Record<Language, Brought>> = {
  en: {
    bedside: async () => english,
    round: async () => (await import('./english/round.js')).round,
    aside: async () => (await import('./english/aside.js')).aside,
    later: async () => (await import('./english/later.js')).later,
    practice: async () => (await import('./english/practice.js')).practice,
  },
  es: {
    bedside: async () => (await import('./spanish/spanishBedside.js')).bedside,
    round: async () => (await import('./spanish/spanishRound.js')).round,
    aside: async () => (await import('./spanish/spanishAside.js')).aside,
    later: async () => (await import('./spanish/spanishLater.js')).later,
    practice: async () => (await import('./spanish/spanishPractice.js')).practice,
  },
};

/** The words of a device, which come in parts: those of the bedside first, others with the pages that say them. */
export type WordsInParts = {
  /**
   * The words for a locale, in its language if there is a catalogue of it, else in English; with every part that `bring`
   * was asked for.
   */
  readonly load: (locale: string, manner?: Manner) => Promise<Words>;
  /** The words of the bedside in English, at once (see `wordsFor`). */
  readonly english: (locale: string, manner?: Manner) => Words;
  /**
   * Brings a part; from then on all words that were loaded say it, in whatever manner, so that nothing on the screen is
   * drawn anew for it. A page that says it is shown after it.
   */
  readonly bring: (part: LaterPart) => Promise<void>;
};

/** What a language has so far: one object for all words of it, which grows by each part once. */
type Shelf = { readonly catalogue: Catalogue; readonly parts: Set<LaterPart> };

export function wordsInParts(): WordsInParts {
  const shelves = new Map<Language, Shelf>();
  const asked = new Set<LaterPart>();
  let chosen: Language = 'en';

  function shelfOf(language: Language, bedside: Bedside): Shelf {
    const found = shelves.get(language);
    if (found !== undefined) return found;
    // Until a part is there, nothing that is shown asks for it.
    const shelf = { catalogue: { ...bedside } as unknown as Catalogue, parts: new Set<LaterPart>() };
    shelves.set(language, shelf);
    return shelf;
  }

  async function bring(language: Language): Promise<Catalogue> {
    const shelf = shelves.get(language) ?? shelfOf(language, await PARTS[language].bedside());
    for (const part of asked) {
      const added = await PARTS[language][part]();
      if (!shelf.parts.has(part)) Object.assign(shelf.catalogue, joined(shelf.catalogue, added));
      shelf.parts.add(part);
    }
    return shelf.catalogue;
  }

  return {
    load: async (locale, manner) => {
      const language = languageOf(locale);
      const before = chosen;
      const wanted = language ?? 'en';
      // At once, so that a part that is asked for meanwhile is of this language too.
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
    bring: async (part) => {
      asked.add(part);
      await bring(chosen);
    },
  };
}
