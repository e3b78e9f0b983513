import { clock } from '../../clock.js';
import type { Expectation } from './expectation.js';

/** Rules of a protocol read from outside or changed by the place. */
export const protocol = {
  rising: () => 'values that rise',
  'a-time-of-day': () => 'a time of day such as 08:30',
  'within-times-of-day': (f) => `a time from ${clock(f.value('minimum'))} to ${clock(f.value('maximum'))}`,
  'shorter-than-a-window-offered': () =>
    'less than the longest window offered, so that a fast pulse can be counted',
  'window-offered': () => 'a window that is among those offered',
  'below-fast': (f, say) =>
    `below the limit for a fast rate (${say.short(f.value('fastPerMinute'))} a minute)`,
  'not-above-margin': (f, say) =>
    `at most the margin itself (${say.short(f.value('marginMmHg'))} mmHg), so that a margin as asked for is not flagged`,
  'not-above-fastest': (f, say) =>
    `at most the fastest rate (${say.short(f.value('fastestMmHgPerSecond'), 3)} mmHg a second)`,
  'never-facts-kept': () =>
    'a list that keeps fistula, graft, shunt, drip and amputation: no place may free such an arm',
  'local-if-replacing': () => 'the source “local” where a preset’s value is replaced, and only there',
  'a-source': () => 'a source in words',
  'an-id': () => 'an id in lower case with hyphens',
  'known-schema': (f, say) =>
    `a schema number from ${say.short(f.value('minimum'))} to ${say.short(f.value('maximum'))}`,
  'protocol-here': () => 'a protocol version that is kept here',
  'difference-for-close-pair': () =>
    'a difference, because this guideline averages two readings that do not differ by more',
  'at-most-stop': (f, say) =>
    `at most ${say.short(f.value('stopAtReadings'))}, after which no more are asked for`,
  'not-after': (f, say) => `at most ${say.short(f.value('laterSeconds'))} s, which comes after it`,
  'limit-for-names': () => 'given, where the mean is named',
  'below-high-total': (f, say) => `below the high total (${say.short(f.value('highTotal'))})`,
} as const satisfies Record<string, Expectation>;
