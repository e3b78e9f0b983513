import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';

/**
 * A sentence for each code that is said beside the result of a round.
 * Source of the advice: bedside handbook 3.2, 3.3 and 3.12, worded anew.
 */
export const noteDetails = {
  'arms-unlike-cuffs': () =>
    'The two arms were taken with unlike cuffs, so a difference between them may be one of the cuffs: repeat both arms with one cuff if it fits both, before you go by either.',
  'arms-cuff-unfitting': (f, say) =>
    `A cuff that does not fit its arm was used${expected(f, say)}, so a difference between the arms may be one of the cuff: repeat both arms with cuffs that fit, before you go by either.`,
} as const satisfies Record<string, Detail>;

/** What a cuff is expected to add, of each arm where it is known. */
function expected(f: Figures, say: Say): string {
  const parts = (['right', 'left'] as const).flatMap((side) =>
    f.has(`${side}MmHg`) ? [`${signed(f.value(`${side}MmHg`), say)} on the ${side}`] : [],
  );
  return parts.length === 0 ? '' : ` (expected to shift the systolic by ${say.allOf(parts)})`;
}

function signed(mmHg: number, say: Say): string {
  return `${mmHg > 0 ? '+' : '-'}${say.short(Math.abs(mmHg), 1)}`;
}
