import { isCoarserThanThumb, MARK_SCATTER_MS } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** How far the clocks of two devices agree; where that is coarser than a thumb, that it is. */
export function clocksText(withinMs: number, words: Words): string {
  const ms = Math.max(1, Math.ceil(withinMs));
  return isCoarserThanThumb(withinMs)
    ? words.sentence('second.clocksCoarse', { ms, thumb: MARK_SCATTER_MS })
    : words.sentence('second.clocks', { ms });
}
