import type { Detail } from './detail.js';

const READINGS = { one: 'reading', other: 'readings' };

/** What is left out of a series away from the clinic, why a result is not given, and what must be known of it. */
export const outOfOfficeDetails = {
  'dropped-day': (f, say) =>
    `A reading of day ${say.short(f.value('day'))} of measuring, which this rule set leaves out.`,
  'first-of-sitting': () => 'The first reading of its sitting, which this rule set leaves out.',
  'beyond-two': (f, say) =>
    `Reading ${say.short(f.value('place'))} of its sitting: this rule set uses the first two.`,
  duplicate: () => 'The same time and the same numbers stand there already: counted once.',
  wrist: () =>
    'Taken at the wrist: never averaged with readings of the upper arm, and a wrist held below the heart reads too high, above it too low.',
  rejected: () => 'Taken out by hand.',
  'too-few-readings': (f, say) =>
    `Too few readings for this rule set: ${say.short(f.value('readings'))} after leaving out, and it asks for ${say.short(f.value('least'))}. The mean stands; no category is given.`,
  'too-few-days': (f, say) =>
    `Too few days for this rule set: ${say.short(f.value('days'))} with a reading, and it asks for ${say.short(f.value('least'))}. The mean stands; no category is given.`,
  'no-readings': () => 'No reading is left to average.',
  'refused-file': () => 'This file was refused.',
  'not-valid-series': () => 'Too few readings for the rule set.',
  'no-spread': () => 'It has no spread, or no mean, of systolic or diastolic.',
  'few-mornings': (f, say) =>
    `How systolic varies from day to day asks for two readings on ${say.short(f.value('least'))} mornings or more: here ${say.short(f.value('mornings'))}.`,
  'no-limit': () => 'This rule set gives no limit, so nothing is called high or not high.',
  child: (f, say) =>
    `The person is ${say.short(f.value('ageYears'))}: limits of adults do not apply, and no category is given.`,
  pregnancy: () => 'In pregnancy other limits hold: no category is given here. Act by your local protocol.',
  'sittings-first': (f, say) =>
    `By this rule set each sitting is averaged first: the means are of ${say.counted(f.value('sittings'), { one: 'sitting', other: 'sittings' })}, not of the readings.`,
  'same-time-other-value': (f, say) =>
    `${say.form(f.value('readings'), { one: 'One reading has', other: `${say.short(f.value('readings'))} readings have` })} the same time as another and other numbers: both are kept. Check the paper.`,
  failed: () => 'The recorder gave no pressure: a measurement that failed.',
  'after-24-hours': () => 'Later than 24 hours after the first reading: not used unless you ask for all.',
  'systolic-not-over-diastolic': () => 'Systolic is not over diastolic: taken for an artefact.',
  'systolic-range': () => 'Systolic is outside the range of the editing rule: taken for an artefact.',
  'diastolic-range': () => 'Diastolic is outside the range of the editing rule: taken for an artefact.',
  'pulse-range': () => 'The pulse is outside the range of the editing rule: taken for an artefact.',
  'pulse-pressure-range': () =>
    'Systolic minus diastolic is outside the range of the editing rule: taken for an artefact.',
  'ratio-range': () =>
    'Systolic over diastolic is outside the range of the editing rule: taken for an artefact.',
  'far-from-mean': (f, say) =>
    `Further than ${say.short(f.value('sds'), 2)} SD from the mean of its period: taken for an artefact.`,
  'too-few-percent': (f, say) =>
    `${say.short(f.value('percent'), 1)} % of the scheduled readings are kept, and this rule set asks for ${say.short(f.value('leastPercent'))} %: repeat the recording.`,
  'schedule-not-known': (f, say) =>
    `Every reading was started by hand: how much of the schedule came is not known, and this rule set asks for ${say.short(f.value('leastPercent'))} %. Say how many readings were planned.`,
  'too-few-day': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)} by day, and this rule set asks for ${say.short(f.value('least'))}: repeat the recording.`,
  'too-few-night': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)} by night, and this rule set asks for ${say.short(f.value('least'))}: repeat the recording.`,
  'too-long-empty': (f, say) =>
    `${say.short(f.value('hours'), 1)} hours in a row are without a reading, and this rule set does not use a recording with ${say.short(f.value('longest'), 1)} or more: repeat the recording.`,
  'too-few-asleep-for-class': (f, say) =>
    `Too few readings asleep to classify the fall by night: ${say.short(f.value('readings'))}, and ${say.short(f.value('least'))} are asked for.`,
  'few-for-variability': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)}: indices of variability are weak under ${say.short(f.value('least'))} in 24 hours.`,
  'longest-gap': (f, say) =>
    `The longest gap without a reading is ${say.short(f.value('hours'), 1)} hours: no line is drawn across it, but means over time and the steps from reading to reading go across it.`,
  'night-by-clock': () =>
    'No times of sleep are given and no reading is marked as asleep, so day and night are hours of the clock: of somebody who works nights or slept by day only their own times of sleep tell them.',
  'under-a-day': (f, say) =>
    `From the first reading to the end it lasted ${say.short(f.value('hours'), 1)} hours, and this guideline asks for ${say.short(f.value('least'))} or more.`,
  'far-apart-by-day': (f, say) =>
    `By day a reading comes every ${say.short(f.value('minutes'))} minutes: spread, fall and curve are surer with one every ${say.short(f.value('most'))} or less.`,
  'far-apart-by-night': (f, say) =>
    `By night a reading comes every ${say.short(f.value('minutes'))} minutes: spread, fall and curve are surer with one every ${say.short(f.value('most'))} or less.`,
  'recording-longer': (f, say) =>
    `The recording is longer than ${say.short(f.value('hours'))} hours: ${say.counted(f.value('readings'), READINGS)} after that are not used.`,
  'started-by-hand': (f, say) =>
    `${say.counted(f.value('readings'), READINGS)} started by hand, ${say.short(f.value('used'))} used: counted as readings of day, night and the whole, and in no percent of what was scheduled.`,
  'class-is-weak': (f, say) =>
    `One recording says little of the fall by night: ${say.short(f.value('changesPercent'))} % of people have another class in a second one.`,
} as const satisfies Record<string, Detail>;
