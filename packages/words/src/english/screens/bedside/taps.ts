import type { Say } from '../../../say.js';
import { TAPS } from '../nouns.js';

/** What a round says of beats or breaths that were tapped; the screen that takes them has the rest, in `../taps.ts`. */
export const taps = {
  rangeSays:
    'If the pulse or breathing went on just as it did while you tapped, the long-run rate would lie in its range in 95 of 100 such series. A change from one minute to the next is not in it.',
  recorded: 'the moment of each tap is known',
  tapsInSeconds: (f: { n: number; seconds: number }, say: Say) =>
    `${say.counted(f.n, TAPS)} in ${say.short(f.seconds, 1)} s`,
} as const;
