import { useEffect, useState } from 'react';
import { withWords } from '../app/deviceWords.js';
import { type Later, later } from '../app/later.js';
import type { RoundDraft } from './draft.js';
import { SIGNS_IN_ORDER } from './measuring.js';

/** Fetched with the pages of a round, on which alone somebody taps; with what is said of taps. */
export const laterTapRules = withWords(
  ['aside'],
  later(() => import('./tapRules.js')),
);

/** Pages together with what they make of taps. */
export function withTapRules<Pages>(pages: Later<Pages>): Later<Pages> {
  return later(async () => {
    const [brought] = await Promise.all([pages.fetch(), laterTapRules.fetch()]);
    return brought;
  });
}

/** What is made of taps, where there are any: on pages that came with it, or that waited for it (`useTapRules`). */
export function tapRules() {
  const rules = laterTapRules.here();
  if (rules === null) throw new Error('Taps were read before their rules were here');
  return rules;
}

/**
 * Whether a round can be shown on a page that comes without the rules of taps: at once where nothing was tapped in it;
 * else, as after a reload, they are fetched first.
 *
 * @throws where they cannot be fetched, as a page does whose part cannot
 */
export function useTapRules(draft: RoundDraft | undefined): boolean {
  const isNeeded = SIGNS_IN_ORDER.some((sign) => draft?.[sign].values.some(({ kind }) => kind === 'taps'));
  const isMissing = isNeeded && laterTapRules.here() === null;
  const [fault, setFault] = useState<unknown>(null);
  const [, setBrought] = useState(false);
  useEffect(() => {
    if (isMissing) laterTapRules.fetch().then(() => setBrought(true), setFault);
  }, [isMissing]);
  if (fault !== null) throw fault;
  return !isMissing;
}
