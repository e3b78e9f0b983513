import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';

const LOCAL = 'Your local protocol’s own numbers and times win.';
const CONFIRM = 'Confirm this limit with your local protocol.';

/** What a measured zero of breath or pulse asks for, before any points. */
const NO_LIFE =
  'look at the person first; without a response or normal breathing call for help now by your local emergency procedure and begin resuscitation as you were taught, else count again at once.';
/** What one part of three points asks for, whatever the total. */
const THREE = `that is the most one part can give: have a clinician of the ward review the person urgently and check at least hourly, whatever the total. ${LOCAL}`;

/**
 * A sentence for each code that a score returns: what it means and what to do. The numbers of the early-warning score
 * are those of the Royal College of Physicians (London, 2017); the sentences are this project's.
 * Source of the advice: bedside handbook 5.1, 5.2 and 7.5, worded anew.
 */
export const scoreDetails = {
  'no-breath-counted': () => `No breath was counted: ${NO_LIFE}`,
  'no-pulse-counted': () => `No pulse was counted: ${NO_LIFE}`,
  'three-points-respirations': (f, say) =>
    `Breathing ${say.number(f.value('value'))} a minute scores 3; ${THREE}`,
  'three-points-oxygen-saturation': (f, say) =>
    `A saturation of ${say.number(f.value('value'))} % scores 3; ${THREE}`,
  'three-points-systolic': (f, say) =>
    `A systolic pressure of ${say.number(f.value('value'))} scores 3; ${THREE}`,
  'three-points-pulse': (f, say) => `A pulse of ${say.number(f.value('value'))} a minute scores 3; ${THREE}`,
  'three-points-consciousness': () => `Not alert, or newly confused, scores 3; ${THREE}`,
  'three-points-temperature': (f, say) =>
    `A temperature of ${say.temperature(f.value('value'))} scores 3; ${THREE}`,
  'early-warning-medium': (f, say) =>
    `At least ${say.number(f.value('atLeast'))} points, and ${say.limit(f.value('limit'))} or more is medium: have the person assessed urgently by a clinician skilled in acute illness. ${LOCAL}`,
  'early-warning-high': (f, say) =>
    `At least ${say.number(f.value('atLeast'))} points, and ${say.limit(f.value('limit'))} or more is high: call the emergency team now, by your local procedure, and stay with the person.`,
  'score-age-not-known': (f, say) =>
    `The age is not known: this score holds from ${say.limit(f.value('fromYears'))} years, not in pregnancy and not with a spinal injury; check that it is for this person.`,
  'air-assumed': () =>
    'Scored as breathing air, because --on-oxygen was not given: with oxygen the score is higher.',
  'saturation-doubtful': (f, say) =>
    `This score holds a saturation that is not to be relied on (${say.counted(f.value('points'), { one: 'point', other: 'points' })} of it): read the saturation again and score again, and act on what stands meanwhile.`,
  'scale-two': () =>
    'Scored on scale 2: only where a prescriber, named in the record, decided so for this person; else score on scale 1.',
  'parts-missing': (f, say) =>
    `${say.counted(f.value('missing'), { one: 'part is', other: 'parts are' })} missing, so there is no total: what is known gives at least ${say.number(f.value('atLeast'))}. Take what is missing; do not read it as normal.`,
  'response-routine': () => 'Go on with the usual checks.',
  'response-nurse-decides': () =>
    'A registered nurse looks at the person and decides whether to check more often or to call.',
  'response-ward-review': () =>
    `One part of 3: a clinician of the ward reviews the person urgently and decides whether to call. ${LOCAL}`,
  'response-urgent-assessment': () =>
    `A clinician skilled in acute illness assesses the person urgently. ${LOCAL}`,
  'response-emergency-team': () =>
    `A team with critical-care skills assesses the person as an emergency: call now. ${LOCAL}`,
  'check-every-hours': (f, say) =>
    f.value('hours') === 1
      ? `Check at least every hour. ${LOCAL}`
      : `Check at least every ${say.short(f.value('hours'))} hours. ${LOCAL}`,
  'check-between-hours': (f, say) =>
    `Check at least every ${say.short(f.value('fromHours'))} to ${say.short(f.value('toHours'))} hours. ${LOCAL}`,
  'check-continuously': () => `Watch all signs without a break. ${LOCAL}`,
  'sepsis-screen-positive': (f, say) =>
    `At least ${say.number(f.value('atLeast'))} of 3 points, and ${say.limit(f.value('limit'))} or more is positive: get the person assessed at once for a failing organ, and for infection, by your local protocol. ${CONFIRM}`,
  'negative-does-not-reassure': () =>
    'Under two points does not reassure: this screen misses many, and must not be the only one for sepsis. Go by the person and your local protocol.',
  'mean-pressure-low': (f, say) =>
    `A mean pressure of ${besideOf(f, say)} is under ${limitOf(f, say)}: look at the person first, measure again by hand without delay and call by your local protocol. ${CONFIRM}`,
  'pulse-pressure-narrow': (f, say) =>
    `A pulse pressure of ${besideOf(f, say)} is under a quarter of the systolic (${limitOf(f, say)}): check the last sound, measure again and look at the person. ${CONFIRM}`,
  'pulse-pressure-wide': (f, say) =>
    `A pulse pressure of ${besideOf(f, say)} is ${limitOf(f, say)} or more, which is called wide in older adults: check the last sound and measure again. ${CONFIRM}`,
  'shock-index-raised': (f, say) =>
    `A shock index of ${besideOf(f, say, 2)} is over ${limitOf(f, say)}, where people with injuries did worse: look at the person first and call by your local protocol.`,
  'shock-index-high': (f, say) =>
    `A shock index of ${besideOf(f, say, 2)} is ${limitOf(f, say)} or more, the pulse as high as the systolic: look at the person first and call for help now by your local procedure.`,
  'modified-shock-index-low': (f, say) =>
    `A modified shock index of ${besideOf(f, say, 2)} is under ${limitOf(f, say)}: look at the person and tell the clinician in charge. ${CONFIRM}`,
  'modified-shock-index-high': (f, say) =>
    `A modified shock index of ${besideOf(f, say, 2)} is over ${limitOf(f, say)}: look at the person first and call by your local protocol.`,
  'age-shock-index-high': (f, say) =>
    `An age shock index of ${besideOf(f, say, 1)} is over ${limitOf(f, say)}: look at the person first and call by your local protocol. ${CONFIRM}`,
  'paediatric-shock-index-high': (f, say) =>
    `A shock index of ${besideOf(f, say, 2)} at ${say.number(f.value('age'))} years is over ${limitOf(f, say)}: look at the child first and call by your local protocol.`,
  'value-needs-diastolic': () =>
    'There is no diastolic that can be used, as after a palpated pressure or one heard to zero, so this has no value: listen for both sounds, and for the muffling, when you can.',
  'inputs-missing': (f, say) =>
    `${say.counted(f.value('missing'), { one: 'number is', other: 'numbers are' })} missing, so this has no value: take what is missing.`,
  'no-limit-for-age': (f, say) =>
    `There is no limit for ${say.number(f.value('age'))} years, only from ${say.limit(f.value('fromYears'))} to ${say.limit(f.value('toYears'))}: the value stands without a word.`,
  'adult-bands-only': (f, say) =>
    `The words for this value are for adults from ${say.limit(f.value('fromYears'))} years (here ${say.number(f.value('age'))}): the value stands without a word.`,
  'glasgow-severe': (f, say) =>
    `A Glasgow total of ${say.number(f.value('total'))} is ${say.limit(f.value('limit'))} or less: call for help now, keep the airway open and stay with the person. ${CONFIRM}`,
  'glasgow-part-missing': (f, say) =>
    `${say.counted(f.value('missing'), { one: 'part', other: 'parts' })} of the Glasgow scale missing, so there is no total: test what is missing.`,
} as const satisfies Record<string, Detail>;

/** A value on its own side of the limit that it is told beside. */
function besideOf(f: Figures, say: Say, decimals = 0): string {
  return say.beside(f.value('value'), f.value('limit'), decimals);
}

function limitOf(f: Figures, say: Say): string {
  return say.limit(f.value('limit'));
}
