import type { Detail } from './detail.js';

const INTERVALS = { one: 'interval', other: 'intervals' };
const BEATS = { one: 'beat', other: 'beats' };
const TAPS = { one: 'tap', other: 'taps' };
const READINGS = { one: 'reading with both numbers', other: 'readings with both numbers' };

/**
 * A sentence for each code that tapping returns: what it means and what to do.
 * Source of the advice: bedside handbook 1.5, 1.12, 7.5, worded anew.
 */
export const tapsDetails = {
  // Taps and readings share the code: too few of either leave no value.
  'too-few': (f, say) =>
    f.has('readings')
      ? `${say.counted(f.value('readings'), READINGS)} ${say.form(f.value('readings'), { one: 'is', other: 'are' })} too few for an average, which takes ${say.short(f.value('needs'))} here.`
      : `No rate can come from ${say.counted(f.value('taps'), TAPS)}; at least ${say.short(f.value('needs'))} are needed: tap on.`,
  'tapping-paused': (f, say) =>
    `There is a gap of ${say.short(f.value('seconds'))} s after tap ${say.short(f.value('afterTap'))}, longer than missed taps explain, so there is no rate. If the tapping paused, tap again; if what you tapped stood still, look at the person first and act by your local protocol, then count a full minute.`,
  'too-few-for-statistics': (f, say) =>
    `How much the gaps vary cannot be told from ${say.counted(f.value('intervals'), INTERVALS)}: that takes ${say.short(f.value('needs'))} in a row.`,
  'too-few-for-range': (f, say) =>
    `How far the rate can be trusted cannot be told from ${say.counted(f.value('intervals'), INTERVALS)}: tap until there are ${say.short(f.value('needs'))}.`,
  'too-few-for-jitter': (f, say) =>
    `Your timing cannot be told from the person’s rhythm in ${say.counted(f.value('intervals'), INTERVALS)}: that takes ${say.short(f.value('needs'))}.`,
  'jitter-cannot-be-told': () =>
    'In this rhythm your timing cannot be told from the person’s own changes, so none is given: to learn yours, tap along with a steady beat.',
  'touch-bounces': (f, say) =>
    `${say.counted(f.value('removed'), TAPS)} came within ${say.short(f.value('limitMs'))} ms of the one before and were taken as the same touch: lift the finger clear between beats.`,
  'irregular-not-repaired': (f, say) =>
    `The taps vary too much (${say.percentBeside(f.value('spread'), f.value('limit'))} %, limit ${say.short(100 * f.value('limit'))} %) to tell a slip from the rhythm, so none was put right: if it felt irregular, count a full minute (a pulse at the apex too) and report it.`,
  'steady-not-sure': (f, say) =>
    `There seems to be a slip, but the other gaps vary by ${say.percentBeside(f.value('variation'), f.value('limit'), 1)} %, and in ${say.counted(f.value('intervals'), INTERVALS)} only ${say.short(100 * f.value('limit'))} % or less is surely a steady rhythm, so none was put right: tap on, or count a full minute.`,
  'too-many-missed': (f, say) =>
    `In ${say.short(f.value('gaps'))} of ${say.counted(f.value('intervals'), INTERVALS)} a beat seems to be missing, too many for slips of tapping, so none was put in: count a full minute (a pulse at the apex too) and report it.`,
  'missed-in-turn': (f, say) =>
    `A beat seems to be missing at about every ${say.counted(Math.round(f.value('everyIntervals')), INTERVALS)} (${say.short(f.value('gaps'))} times): that keeps a measure, so it is taken as the person’s and none was put in: count a full minute (a pulse at the apex too) and report it.`,
  'beats-put-in': (f, say) =>
    `The rate includes ${say.counted(f.value('added'), BEATS)} that nobody tapped, taken as slips; what was tapped comes to ${say.number(f.value('tappedPerMinute'))} a minute. If a beat may have been missing, count a full minute.`,
  'rhythm-irregular': () =>
    'Irregular, as tapped or as felt: count a full minute (a pulse at the apex too) and report it; no rate of a short stretch stands for it.',
  'too-few-for-rhythm': (f, say) =>
    `The rhythm cannot be named from ${say.counted(f.value('intervals'), INTERVALS)}; that takes ${say.short(f.value('needs'))}: tap on if it felt irregular.`,
  'many-missed': (f, say) =>
    `Taps are missing in ${say.short(f.value('gaps'))} of ${say.counted(f.value('intervals'), INTERVALS)}, slips of tapping or beats that could not be felt: count a full minute (a pulse at the apex too) and report it.`,
  'rhythm-not-clear': (f, say) =>
    `The gaps vary by ${say.percent(f.value('nrmssd'))} from one to the next and by ${say.percent(f.value('cv'))} over all, too much to call regular and without a pattern clear enough to name: tap again, or count a full minute.`,
  'rate-impossible': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('ceilingPerMinute'))} a minute is more than anybody has (${say.short(f.value('ceilingPerMinute'))}): do not chart it, tap again.`,
} as const satisfies Record<string, Detail>;
