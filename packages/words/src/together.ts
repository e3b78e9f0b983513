import type { Flag } from '@evenfall/clinical';
import type { Catalogue } from './catalogue.js';
import type { Detail } from './english/detail.js';
import { figuresOf, MissingFigure } from './figures.js';
import type { Say } from './say.js';

/** One sentence, and the codes of the flags and reasons that it says. */
export type Said = { readonly codes: readonly string[]; readonly text: string };

/**
 * Flags and reasons in sentences, in their order; where several ask for a count of the same length, each reason is said and
 * what to do once, at the place of the first.
 *
 * @param detail what a flag says by itself
 */
export function together(
  flags: readonly Flag[],
  { longerCount }: Catalogue,
  say: Say,
  detail: (flag: Flag) => string,
): Said[] {
  const phrases: Readonly<Record<string, Detail>> = longerCount.reasons;
  const read = flags.map((flag) => ({ flag, ...asking(flag, phrases, say) }));
  return read.flatMap((one, at): Said[] => {
    const alike = read.filter(({ seconds }) => seconds !== null && seconds === one.seconds);
    if (one.seconds === null || alike.length === 1)
      return [{ codes: [one.flag.code], text: detail(one.flag) }];
    if (read.indexOf(alike[0] as (typeof read)[number]) !== at) return [];
    const reasons = alike.map(({ reason }) => reason);
    const text = longerCount.all({ seconds: one.seconds }, say, reasons);
    return [{ codes: alike.map(({ flag }) => flag.code), text }];
  });
}

/** How long a count a reason asks for and why, in a few words; `seconds` null where it is no such reason. */
function asking(
  { code, figures }: Flag,
  reasons: Readonly<Record<string, Detail>>,
  say: Say,
): { readonly seconds: number | null; readonly reason: string } {
  const seconds = figures.fullWindowSeconds;
  const reason = Object.hasOwn(reasons, code) ? reasons[code] : undefined;
  if (seconds === undefined || reason === undefined) return { seconds: null, reason: '' };
  try {
    return { seconds, reason: reason(figuresOf(code, figures), say) };
  } catch (fault) {
    // An older program's flag, with other figures, is said by itself.
    if (fault instanceof MissingFigure) return { seconds: null, reason: '' };
    throw fault;
  }
}
