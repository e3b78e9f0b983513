import type { Detail } from './detail.js';

/** A sentence for each reason that a round gives for its next step, or for having no category. */
export const roundDetails = {
  'longer-count': (f, say) =>
    `The rate taken so far asks for a longer one: count ${say.short(f.value('nextWindowSeconds'))} s.`,
  'first-time-both-arms': () =>
    'This is the first pressure of this person here: take the other arm too, to know which one reads higher.',
  'both-arms-ahead': () =>
    'This is the first pressure of this person here: both arms are taken, one after the other. Keep the cuff at hand.',
  'asked-for': () => 'You asked for it in this round.',
  'third-minute-not-measured': (f, say) =>
    `There is no reading at ${say.limit(f.value('minutes'))} minutes on the feet, so a fall is not excluded: that takes a reading then, if the person can stand.`,
  'low-before-standing': (f, say) =>
    `The systolic is ${say.short(f.value('systolic'))} mmHg, ${f.has('limitMmHg') ? `below ${say.limit(f.value('limitMmHg'))}` : 'which is very low by the limits in force here'}: do not stand this person up before your local protocol or somebody with more experience says so; leave the standing reading, or keep the round as it is and report.`,
  'child-sex-missing': () =>
    'A child’s pressure cannot be classified without its sex, and is not taken for normal: add “Sex for reference tables” among the facts about this person.',
  'child-height-missing': () =>
    'A child’s pressure cannot be classified without its height, and is not taken for normal: measure the height in this round, under “Other signs”.',
  'child-height-impossible': (f, say) =>
    `A height of ${say.length(f.value('heightCm'))} cannot be at this age and sex, so the pressure is not classified and is not taken for normal: measure the height again, and check the birth date.`,
  'under-age-of-scheme': () =>
    'The child is younger than this scheme goes, so nothing is said of the pressure: compare it with your local tables.',
} as const satisfies Record<string, Detail>;
