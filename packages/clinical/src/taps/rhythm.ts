import type { Flag } from '../contract/flag.js';
import type { CountOf } from '../count/count.js';
import type { Series } from '../statistics/series.js';

/** What the taps feel like, in words of the trade; never the name of an arrhythmia. */
export type Rhythm =
  | 'regular'
  | 'regular-with-breathing'
  | 'occasionally-irregular'
  | 'regularly-irregular'
  | 'irregularly-irregular'
  | 'undecided';

export type NamedRhythm = { readonly rhythm: Rhythm; readonly why: readonly Flag[] };

export function rhythm(_of: CountOf, _intervals: Series, _jitter: number | undefined): NamedRhythm {
  return { rhythm: 'undecided', why: [] };
}
