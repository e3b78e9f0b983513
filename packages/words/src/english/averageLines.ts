import type { Say } from '../say.js';

/** What is said of the readings of a round and their average. */
export const averageLines = {
  average: 'Average',
  rule: 'By',
  none: 'none yet',
  of: (f: { pressure: string; readings: string; count: number }, say: Say) =>
    `${f.pressure}, from ${say.form(f.count, { one: 'reading', other: 'readings' })} ${f.readings}`,
} as const;

/** What each option of `evenfall average` means: one line, shown by `--help`. */
export const averageOptions = {
  averageRule: 'the guideline by which the readings are averaged',
  irregular: 'the pulse was felt irregular: at least three readings, all of them averaged',
  raisedFrom: 'for a child by aap-2017: its 90th centiles, from which a first reading is raised',
} as const;
