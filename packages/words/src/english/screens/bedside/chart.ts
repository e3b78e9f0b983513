import type { Say } from '../../../say.js';
import { SECONDS, TAPS } from '../nouns.js';

/** What the bedside says of it; the rest is in `../chart.ts` and comes later. */
export const chart = {
  title: 'Chart',
  voidSays: 'Interrupted: void, no number.',
  voidAfter: (f: { seconds: number }, say: Say) =>
    `Interrupted after ${say.short(f.seconds, 1)} s: void, no number.`,
  byHand: 'set by hand',
  stripCount: (f: { n: number; seconds: number }, say: Say) =>
    `${say.short(f.n)} counted in a window of ${say.counted(f.seconds, SECONDS)}, drawn evenly because the moment of each is not known`,
  stripTaps: (f: { n: number; seconds: number }, say: Say) =>
    `${say.counted(f.n, TAPS)} over ${say.counted(f.seconds, SECONDS)}, each drawn at its moment`,
} as const;
