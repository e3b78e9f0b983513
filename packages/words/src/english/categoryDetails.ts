import { DANGER_SIGNS } from './actNowDetails.js';
import type { Detail } from './detail.js';

/**
 * A sentence for each code of the categories of adults and children: what it means and what to do. A pressure falls
 * in a category; nobody has it.
 * Source of the advice: bedside handbook 0.2, 3.16, 3.17, 6 and 7.5, worded anew.
 */
export const categoryDetails = {
  'severe-reading': () =>
    `A pressure this high can be an emergency: look at the person first, and ask for ${DANGER_SIGNS}. With any of these, or in pregnancy and the six weeks after, call now by your local emergency procedure; without, repeat by hand after a rest and tell the clinician in charge. Confirm this list with your local protocol.`,
  'very-low': (f, say) =>
    `A systolic of ${say.beside(f.value('systolic'), f.value('limitMmHg'))} is very low (${say.limit(f.value('limitMmHg'))} or under), and a category of high pressures says nothing of that: look at the person first, repeat by hand at once, and call by your local protocol.`,
  'limits-from-memory': () =>
    'Confirm the limits of this category with your local protocol, and where a pressure could be dangerous act first.',
  'also-needs-average': (f, say) =>
    `This stage also needs an average at home or by day of ${say.limit(f.value('systolic'))}/${say.limit(f.value('diastolic'))} or more: arrange for it by your local protocol.`,
  'treatment-rule': () =>
    'This is a rule for when to treat a pressure that was confirmed, and no category: leave the decision to the clinician in charge.',
  'adult-assumed': () =>
    'No age is known, so the limits of adults were taken: give the age (the birth date, with the identity), and do not use these limits for anybody under 18.',
  'pregnancy-scheme': () =>
    'In pregnancy and the six weeks after, the limits of pregnancy take the place of those asked for.',
  'no-systolic': () =>
    'No systolic is known, so there is no category: go by what the diastolic alone comes to, and take another reading.',
  'no-diastolic': () =>
    'No diastolic is known, as after a reading by feel, so there is no category: go by what the systolic alone comes to, which is the least it can be, and listen if you can.',
  'diastolic-zero': () =>
    'Sounds were heard down to zero and no muffling was noted, so the diastolic falls in no category: listen again for where the sounds muffle.',
  'centiles-not-included': () =>
    'Under 13 this guideline goes by tables of centiles that are not included here: go by its screening, or by the Fourth Report with sex, age and height.',
  'child-severe': () =>
    'Far above the limits for this age (confirm the limit with your local protocol): look at the child first, call by your local protocol and emergency procedure, and repeat by hand only if that delays no help.',
  'child-low': (f, say) =>
    `A systolic of ${say.beside(f.value('systolic'), f.value('limitMmHg'))} is under ${say.limit(f.value('limitMmHg'))}, low at this age: look at the child first, act by your local protocol and emergency procedure, then check cuff and reading.`,
  'height-far-out': (f, say) =>
    `The height stands ${say.beside(Math.abs(f.value('heightZ')), f.value('limitZ'), 1)} SD from the median of that age and sex: check height, age and sex, and do not lean on these limits.`,
  'printed-table-higher': () =>
    'The printed tables leave the decimals of a limit off, and by them this pressure falls one category higher: say by which of the two you go.',
} as const satisfies Record<string, Detail>;
