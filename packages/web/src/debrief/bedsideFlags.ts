import type { Judged } from '@evenfall/practice';

/** Warnings of the bedside that the reading may be of the wrong sound. */
const OF_WRONG_SOUND: ReadonlySet<string> = new Set(['possible-gap']);

type Flags = NonNullable<Judged['reading']>['flags'];

/**
 * What the bedside's own rules say of a run: what may make it the wrong sound stands before everything else, unless it is known that
 * nothing had gone silent (`isNoGap`); then it stands with the rest, and that is said.
 */
export function bedsideFlags({ reading, gap }: Pick<Judged, 'reading' | 'gap'>): {
  readonly first: Flags;
  readonly besides: Flags;
  readonly isNoGap: boolean;
} {
  const flags = reading?.flags ?? [];
  const warnings = flags.filter(({ code }) => OF_WRONG_SOUND.has(code));
  const others = flags.filter(({ code }) => !OF_WRONG_SOUND.has(code));
  return gap === null
    ? { first: [], besides: flags, isNoGap: warnings.length > 0 }
    : { first: warnings, besides: others, isNoGap: false };
}
