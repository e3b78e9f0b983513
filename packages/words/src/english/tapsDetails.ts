import type { Detail } from './detail.js';

const INTERVALS = { one: 'interval', other: 'intervals' };
const TAPS = { one: 'tap', other: 'taps' };

/**
 * A sentence for each code that tapping returns: what it means and what to do.
 * Source of the advice: bedside handbook 1.5, 1.12, 7.5, worded anew.
 */
export const tapsDetails = {
  'too-few': (f, say) =>
    `No rate can come from ${say.counted(f.value('taps'), TAPS)}; at least ${say.short(f.value('needs'))} are needed: tap on.`,
  'too-few-for-range': (f, say) =>
    `How far the rate can be trusted cannot be told from ${say.counted(f.value('intervals'), INTERVALS)}: tap until there are ${say.short(f.value('needs'))}.`,
  'too-few-for-jitter': (f, say) =>
    `Your timing cannot be told from the person’s rhythm in ${say.counted(f.value('intervals'), INTERVALS)}: that takes ${say.short(f.value('needs'))}.`,
  'jitter-cannot-be-told': () =>
    'In this rhythm your timing cannot be told from the person’s own changes, so none is given: to learn yours, tap along with a steady beat.',
  'touch-bounces': (f, say) =>
    `${say.counted(f.value('removed'), TAPS)} came within ${say.short(f.value('limitMs'))} ms of the one before and were taken as the same touch: lift the finger clear between beats.`,
  'irregular-not-repaired': (f, say) =>
    `The taps vary too much (${say.percent(f.value('spread'))}, limit ${say.percent(f.value('limit'))}) to tell a slip from the rhythm, so none was put right: if it felt irregular, count a full minute, listen at the apex and report it.`,
  'rate-impossible': (f, say) =>
    `${say.number(f.value('perMinute'))} a minute is more than anybody has (${say.short(f.value('ceilingPerMinute'))}): do not chart it, tap again.`,
} as const satisfies Record<string, Detail>;
