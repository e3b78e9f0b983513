import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';
import { scoreTitles } from './scoreTitles.js';

const CALL = 'call for help now by your local emergency procedure, and do not wait for this program';
/** What is asked for wherever a pressure is severe: the same list at every place. */
export const DANGER_SIGNS =
  'pain in the chest or back, breathlessness, new weakness or numbness, a change of speech or sight, severe headache, confusion, a fit, and little urine';
const LOOK = 'look at the person first';

/**
 * A sentence for each condition that somebody must act on at once: what was found and what to do. Those that nobody
 * read in a source also show `cautions.confirmLocally`.
 * Source of the advice: bedside handbook 3.15 to 3.17, 4.2, 4.3, 5.2 and 7.5, worded anew.
 */
export const actNowDetails = {
  unresponsive: () => `The person does not respond: ${CALL}, and stay with the person.`,
  'severe-with-chest-or-back-pain': (f, say) => severe(f, say, 'pain in the chest or back'),
  'severe-with-breathlessness': (f, say) => severe(f, say, 'breathlessness'),
  'severe-with-new-weakness': (f, say) => severe(f, say, 'new weakness'),
  'severe-with-numbness': (f, say) => severe(f, say, 'numbness'),
  'severe-with-speech-or-vision-change': (f, say) => severe(f, say, 'a change of speech or sight'),
  'severe-with-severe-headache': (f, say) => severe(f, say, 'a severe headache'),
  'severe-with-confusion': (f, say) => severe(f, say, 'new confusion'),
  'severe-with-fit': (f, say) => severe(f, say, 'a fit'),
  'severe-with-little-urine': (f, say) => severe(f, say, 'little urine'),
  'severe-in-pregnancy': (f, say) =>
    `${pressure(f, say)} in pregnancy is severe: call obstetrics urgently by your local protocol, and repeat by hand if that delays nothing.`,
  'severe-after-birth': (f, say) =>
    `${pressure(f, say)} in the weeks after a birth is severe: call obstetrics urgently by your local protocol, and repeat by hand if that delays nothing.`,
  'severe-away': (f, say) =>
    `${pressure(f, say)} was measured away from the clinic and is severe: ask the person today for ${DANGER_SIGNS}, and measure by hand. With any of these, or in pregnancy and the six weeks after, ${CALL}. Your local protocol wins.`,
  'child-crisis': (f, say) =>
    `${pressure(f, say)} is far above what a child has: repeat by hand with the right cuff if that delays nothing, and ${CALL}.`,
  'child-high-with-feature': (f, say) =>
    `${pressure(f, say)} in a child, together with what was found in asking, needs care at once: ${CALL}.`,
  'child-hypotension': (f, say) =>
    `A systolic of ${say.beside(f.value('systolic'), f.value('lowSystolic'))} is under the low limit for this child (${say.limit(f.value('lowSystolic'))})${unwell(f)}: ${LOOK}, ${again(f, say)}, and ${CALL}.`,
  'very-low-pressure': (f, say) =>
    `A systolic of ${say.beside(f.value('systolic'), f.value('veryLowSystolic'))} is very low (${say.limit(f.value('veryLowSystolic'))} or under)${unwell(f)}: ${LOOK}, ${again(f, say)}, and call by your local protocol.`,
  'unwell-upright': (f, say) =>
    `The person felt dizzy, faint or unwell on their feet, at ${onFeet(f, say)}: lay the person down and stay, chart what was felt, and report it by your local protocol; for a faint, chest pain or whoever does not come round, ${CALL}.`,
  'early-warning-total-high': (f, say) =>
    `An early-warning score of ${points(f, say)} is high: ${CALL}, and watch the person without a break.`,
  'early-warning-total-medium': (f, say) =>
    `An early-warning score of ${points(f, say)} is medium: have the person assessed urgently by a clinician skilled in acute illness. Your local protocol’s numbers and times win.`,
  'early-warning-single-part': (f, say) =>
    `One part of the early-warning score is as bad as it can be (${say.allOf(singleParts(f))}): have a clinician of the ward review the person urgently, whatever the total.`,
  'consciousness-changed': () =>
    `The person is newly confused, or answers only to voice or pain: ${LOOK}, and call by your local protocol.`,
  'very-slow-pulse': (f, say) =>
    `A pulse of ${say.beside(f.value('pulsePerMinute'), f.value('verySlowPulsePerMinute'))} a minute is very slow (${say.limit(f.value('verySlowPulsePerMinute'))} or under): ${LOOK}, act by your local protocol and emergency procedure, then count again.`,
  'child-slow-pulse': (f, say) =>
    `A pulse of ${say.beside(f.value('pulsePerMinute'), f.value('childSlowPulsePerMinute'))} a minute is under ${say.limit(f.value('childSlowPulsePerMinute'))} in a child: ${LOOK}; if pale, limp or hard to rouse, begin resuscitation as you were taught, and ${CALL}.`,
  'very-fast-pulse': (f, say) =>
    `A pulse of ${say.beside(f.value('pulsePerMinute'), f.value('veryFastPulsePerMinute'))} a minute is very fast (${say.limit(f.value('veryFastPulsePerMinute'))} or over): ${LOOK}, act by your local protocol and emergency procedure, then count again.`,
  'very-slow-breathing': (f, say) =>
    `Breathing ${say.beside(f.value('breathsPerMinute'), f.value('verySlowBreathsPerMinute'))} a minute is very slow (${say.limit(f.value('verySlowBreathsPerMinute'))} or under): ${LOOK}, and ${CALL}.`,
  'very-fast-breathing': (f, say) =>
    `Breathing ${say.beside(f.value('breathsPerMinute'), f.value('veryFastBreathsPerMinute'))} a minute is very fast (${say.limit(f.value('veryFastBreathsPerMinute'))} or over): ${LOOK}, act by your local protocol and emergency procedure, then count again.`,
  'low-oxygen': (f, say) => oxygen(f, say, 'lowOxygenPercent', 'or under'),
  'low-oxygen-scale-2': (f, say) => oxygen(f, say, 'lowOxygenScale2Percent', 'or under on scale 2'),
  'child-low-oxygen': (f, say) =>
    `A saturation of ${say.beside(f.value('percentOxygen'), f.value('childLowOxygenPercent'))} % is under ${say.limit(f.value('childLowOxygenPercent'))} % in a child: ${LOOK} and at the probe, and call by your local protocol.`,
} as const satisfies Record<string, Detail>;

function severe(f: Figures, say: Say, feature: string): string {
  return `${pressure(f, say)} is severe, with ${feature}: ${CALL}; repeat by hand only if that delays nothing.`;
}

/** The pressure, or the one number of it that is known. */
function pressure(f: Figures, say: Say): string {
  if (!f.has('diastolic')) return `A systolic of ${say.number(f.value('systolic'))}`;
  if (!f.has('systolic')) return `A diastolic of ${say.number(f.value('diastolic'))}`;
  return `${say.number(f.value('systolic'))}/${say.number(f.value('diastolic'))}`;
}

/** The pressure on the feet; by feel a systolic alone. */
function onFeet(f: Figures, say: Say): string {
  return f.has('diastolic')
    ? `${say.number(f.value('systolic'))}/${say.number(f.value('diastolic'))}`
    : `a systolic of ${say.number(f.value('systolic'))}`;
}

/** That somebody felt unwell on their feet, where a reading there says so. */
function unwell(f: Figures): string {
  return f.has('unwellUpright') ? ', and the person felt unwell on their feet' : '';
}

/** The repeat by hand: asked for, or what it read where it is in the round. */
function again(f: Figures, say: Say): string {
  return f.has('againSystolic')
    ? `stay with them (it was repeated: ${repeated(f, say)})`
    : 'repeat by hand at once';
}

/** The systolic that asked for a repeat, and that of the repeat. */
export function repeated(f: Figures, say: Say): string {
  return `${say.number(f.value('firstSystolic'))}, then ${say.number(f.value('againSystolic'))}`;
}

/** The total, or what there is of it at least. */
function points(f: Figures, say: Say): string {
  return f.has('total') ? say.number(f.value('total')) : `at least ${say.number(f.value('atLeast'))}`;
}

/** The parts that reach the most points, by their names. */
function singleParts(f: Figures): string[] {
  return Object.entries(scoreTitles.scorePart).flatMap(([part, name]) => (f.has(part) ? [name] : []));
}

function oxygen(f: Figures, say: Say, limit: string, side: string): string {
  return `A saturation of ${say.beside(f.value('percentOxygen'), f.value(limit))} % is low (${say.limit(f.value(limit))} % ${side}): ${LOOK} and at the probe, and call by your local protocol.`;
}
