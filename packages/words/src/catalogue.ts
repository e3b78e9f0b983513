import type { english } from './english/index.js';
import type { Reworded } from './reworded.js';
import type { Say } from './say.js';

/**
 * Everything one language must say. English defines the keys; a second language is `const spanish: Catalogue`
 * and does not compile until it says all of it, with the same figures.
 */
export type Catalogue = Reworded<typeof english>;

type Sections = Catalogue['sections'];

/** Names one text: its section and its key, such as `count.start`. */
export type SentenceKey = {
  [Section in keyof Sections & string]: `${Section}.${keyof Sections[Section] & string}`;
}[keyof Sections & string];

type TextAt<Key extends SentenceKey> = Key extends `${infer Section}.${infer Name}`
  ? Section extends keyof Sections
    ? Name extends keyof Sections[Section]
      ? Sections[Section][Name]
      : never
    : never
  : never;

/** The texts among those of some keys that are made of figures. */
type MadeAt<Key extends SentenceKey> = Extract<TextAt<Key>, (...given: never[]) => string>;

/** The figures a text needs: none, or one object of numbers with units in the keys. Of several keys those of any. */
export type FiguresAt<Key extends SentenceKey> = [MadeAt<Key>] extends [never]
  ? []
  : MadeAt<Key> extends (figures: infer Figures, say: Say) => string
    ? [figures: Figures]
    : [];

/** The keys whose text needs no figures, as in a table of options. */
export type PlainKey = { [Key in SentenceKey]: TextAt<Key> extends string ? Key : never }[SentenceKey];

/** The rules of input that have a phrase of their own, as a refusal's `expected` names them. */
export type Rule = keyof Catalogue['expected'];

/** The choices and presets that have a title, and the ids within each. */
export type TitleOf = keyof Catalogue['titles'];

/** Why a record could not be opened. */
export type StartCode = keyof Catalogue['starting'];
