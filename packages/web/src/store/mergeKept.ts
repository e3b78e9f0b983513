import type { Kept } from './kept.js';

/**
 * What a page holds that could not put it on the shelf, together with what the shelf has by now (another tab may have
 * written): no round of either is lost. A round that waits in one of them is no draft in the other; where both have a draft
 * of one person, that of the page stands, for somebody looks at it.
 */
export function mergeKept(shelf: Kept, page: Kept): Kept {
  const rounds = new Set(page.waiting.map(({ round }) => round));
  const waiting = [...shelf.waiting.filter(({ round }) => !rounds.has(round)), ...page.waiting];
  for (const { round } of waiting) rounds.add(round);
  const drafts = Object.entries({ ...shelf.drafts, ...page.drafts }).filter(
    ([, draft]) => !rounds.has(draft.round),
  );
  return {
    ...page,
    sequence: Math.max(shelf.sequence, page.sequence),
    forms: { ...shelf.forms, ...page.forms },
    drafts: Object.fromEntries(drafts),
    waiting,
  };
}
