import type { Detail } from './detail.js';

/**
 * A sentence for each code of choosing a cuff, an arm and a posture: what it does to the number and what to do.
 * Source of the advice: bedside handbook 3.1 to 3.3 and 3.15, worded anew.
 */
export const cuffDetails = {
  'cuff-too-small': (f, say) =>
    `The cuff at hand is too small for an arm of ${say.length(f.value('armCm'))}, so readings come out too high: fetch a larger one, or chart which cuff was used. Nothing is taken off.`,
  'cuff-too-large': (f, say) =>
    `The cuff at hand is too large for an arm of ${say.length(f.value('armCm'))}, so readings come out too low: fetch a smaller one, or chart which cuff was used. Nothing is added.`,
  'arm-below-scheme': (f, say) =>
    `These cuffs begin with a larger arm than ${say.length(f.value('armCm'))}: take a child’s cuff, by your local protocol.`,
  'arm-above-scheme': (f, say) =>
    `These cuffs end before an arm of ${say.length(f.value('armCm'))}: take a thigh or cone-shaped cuff or another site, by your local protocol, and chart it.`,
  'not-compared': () =>
    'No trial compared these two cuffs, so there is only the span of many studies and no single number to expect.',
  'other-site': () =>
    'Not taken at the upper arm: it is charted with its site, and never averaged, scored or put in a category with readings of the upper arm.',
  'thigh-reads-higher': (f, say) =>
    `At the thigh the systolic is usually ${say.short(f.value('higherByPercentLow'))} to ${say.short(f.value('higherByPercentHigh'))} % higher than at the arm: chart the site and do not compare the two.`,
  'arm-overridden': () =>
    'This arm was better left alone and was taken with a name and a reason, which stay beside the reading.',
  'arm-barred': () => 'One arm must not be used for a cuff: take the other one.',
  'prefer-other-arm': () =>
    'One arm is better left alone: take the other one, or give your name and the reason, by your local protocol.',
  'both-arms-barred': (f, say) =>
    `Neither arm may be used for a cuff: take a thigh, lying face down if that is possible, by your local protocol; its systolic is usually ${say.short(f.value('higherByPercentLow'))} to ${say.short(f.value('higherByPercentHigh'))} % higher than an arm’s.`,
  'child-right-arm': (f, say) =>
    `Under ${say.limit(f.value('childUnderMonths') / 12)} years the right arm is taken, as the tables to compare with were made on it.`,
  'late-pregnancy-not-flat': (f, say) =>
    `From week ${say.limit(f.value('latePregnancyFromWeeks'))} of a pregnancy, or where the week is not known, nobody lies flat on the back: take the left side.`,
  'cannot-stand': () => 'Cannot stand: measured sitting instead, and charted as sitting.',
} as const satisfies Record<string, Detail>;
