import type { Detail } from './detail.js';

/** A sentence for each code of checking a gauge: what was found and what to do. Source of the limits: bedside handbook 3.9. */
export const equipmentDetails = {
  'gauge-rest-out': (f, say) =>
    `With no pressure in it the gauge shows ${say.short(f.value('errorMmHg'), 1)} mmHg, and at most ${say.limit(f.value('limitMmHg'))} either way is allowed: take it out of use, by your local protocol.`,
  'gauge-reads-high': (f, say) =>
    `At ${say.short(f.value('atMmHg'))} mmHg the gauge reads ${say.short(f.value('byMmHg'), 1)} too high, and at most ${say.limit(f.value('limitMmHg'))} is allowed: take it out of use. Pressures near there were charted too high by about as much.`,
  'gauge-reads-low': (f, say) =>
    `At ${say.short(f.value('atMmHg'))} mmHg the gauge reads ${say.short(f.value('byMmHg'), 1)} too low, and at most ${say.limit(f.value('limitMmHg'))} is allowed: take it out of use. Pressures near there were charted too low by about as much.`,
  'gauge-few-points': (f, say) =>
    `Held against the other gauge at ${say.counted(f.value('points'), PRESSURES)}: from ${say.limit(f.value('fewest'))} on it can be called good.`,
  'gauge-narrow-points': (f, say) =>
    `Held against the other gauge from ${say.short(f.value('lowMmHg'))} to ${say.short(f.value('highMmHg'))} mmHg: start at ${say.limit(f.value('fromMmHg'))} or below and go to ${say.limit(f.value('toMmHg'))}, so that what is charted lies within.`,
  'gauge-leaks': (f, say) =>
    `It loses ${say.short(f.value('leakMmHgPerMinute'), 1)} mmHg a minute with the valve shut, and at most ${say.limit(f.value('limitMmHgPerMinute'))} is allowed: look at cuff, tubes and valve. The needle falls faster than the hand lets it. Confirm the limit with your local protocol.`,
  'gauge-leak-short': (f, say) =>
    `Watched for ${say.short(f.value('seconds'))} s: a leak is judged over ${say.limit(f.value('shortest'))} s or more.`,
} as const satisfies Record<string, Detail>;

const PRESSURES = { one: 'pressure', other: 'pressures' };
