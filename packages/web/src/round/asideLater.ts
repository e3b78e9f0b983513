import { withWords } from '../app/deviceWords.js';
import { later } from '../app/later.js';
import { withTapRules } from './tapRulesLater.js';

/** What only some rounds come to: a round is taken and signed without them. */
export const asidePages = withWords(
  ['round', 'aside'],
  later(() => import('../asidePages.js')),
);
export const tapPages = withTapRules(asidePages);
