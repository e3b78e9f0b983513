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
  const read = fastOnce(flags).map((one) => ({ ...one, ...asking(one.flag, phrases, say) }));
  return read.flatMap((one, at): Said[] => {
    const alike = read.filter(({ seconds }) => seconds !== null && seconds === one.seconds);
    if (one.seconds === null || alike.length === 1) return [{ codes: one.codes, text: detail(one.flag) }];
    if (read.indexOf(alike[0] as (typeof read)[number]) !== at) return [];
    const reasons = alike.map(({ reason }) => reason);
    const text = longerCount.all({ seconds: one.seconds }, say, reasons);
    return [{ codes: alike.flatMap(({ codes }) => codes), text }];
  });
}

/** A flag to be said, and the codes that are said with it. */
type ToSay = { readonly flag: Flag; readonly codes: readonly string[] };

/**
 * A fast rate in a window that is too short for it asks for a longer one, and for a full minute as any fast rate does: of the
 * same count that is one thing to say, with what both ask for.
 */
function fastOnce(flags: readonly Flag[]): ToSay[] {
  const barred = flags.find(({ code }) => code === 'fast-for-window');
  const minute = flags.find(
    ({ code, figures }) =>
      code === 'fast-on-short-count' &&
      figures.perMinute === barred?.figures.perMinute &&
      figures.windowSeconds === barred?.figures.windowSeconds,
  );
  const { fullWindowSeconds } = minute?.figures ?? {};
  return flags.flatMap((flag): ToSay[] => {
    if (
      barred === undefined ||
      minute === undefined ||
      fullWindowSeconds === undefined ||
      (flag !== barred && flag !== minute)
    )
      return [{ flag, codes: [flag.code] }];
    if (flag === minute) return [];
    const figures = { ...flag.figures, fullWindowSeconds };
    return [{ flag: { code: flag.code, figures }, codes: [barred.code, minute.code] }];
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
