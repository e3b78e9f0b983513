import { roundTo, type SidedLimit, shownPressure } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/**
 * Two means beside their limits and the second minus the first, all three to as many decimals: whole, unless one of them
 * would stand on the other side of its limit or the whole numbers would hide how far they lie apart. mmHg.
 */
export function besideText(
  first: number | null,
  second: number | null,
  limits: readonly [first: SidedLimit | null, second: SidedLimit | null],
  words: Words,
): { readonly first: string; readonly second: string; readonly moved: string } {
  const needed = [first, second].map((mmHg, k) => {
    const limit = limits[k] ?? null;
    return mmHg === null ? 0 : decimalsIn(shownPressure(mmHg, limit === null ? [] : [limit]));
  });
  const difference = first === null || second === null ? null : second - first;
  const isHidden =
    difference !== null && roundTo(second ?? 0, 0) - roundTo(first ?? 0, 0) !== roundTo(difference, 0);
  const decimals = Math.max(...needed, isHidden ? 1 : 0);
  const shown = (mmHg: number | null) => (mmHg === null ? '–' : words.say.number(mmHg, decimals));
  return { first: shown(first), second: shown(second), moved: signedText(difference, words, decimals) };
}

function decimalsIn(text: string): number {
  return text.split('.')[1]?.length ?? 0;
}

/** A difference with its sign, to one decimal or as many as asked. */
export function signedText(difference: number | null, words: Words, decimals = 1): string {
  if (difference === null) return '–';
  const text = words.say.number(Math.abs(difference), decimals);
  if (roundTo(difference, decimals) === 0) return text;
  return difference > 0 ? `+${text}` : `−${text}`;
}
