export type { Catalogue, FiguresAt, PlainKey, Rule, SentenceKey, TitleOf } from './catalogue.js';
export { gaugeStandingText } from './gaugeStandingText.js';
export type { Place, Problem } from './problem.js';
export { publishedSource } from './publishedSource.js';
export type { Forms, Say } from './say.js';
export type { RefusedStart, Words } from './words.js';
export { wordsFor, wordsIn } from './words.js';
