import { withWords } from '../app/deviceWords.js';
import { type Later, later } from '../app/later.js';

export type GoOnPages = typeof import('../goOnPages.js');

/** Pages with the words that only a guided round says. */
export function ofARound<Pages>(pages: Later<Pages>): Later<Pages> {
  return withWords(['round'], pages);
}

/** A round goes on with these; it begins and is counted without them. */
export const goOnPages = ofARound(later(() => import('../goOnPages.js')));
