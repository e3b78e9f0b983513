import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';

export const REST = 'Let the person lie down if unsteady, chart it and report it.';

/**
 * What a reading on the feet asks for at once, at the bedside already.
 * Source of the advice: bedside handbook 3.14 and 7.5, worded anew.
 */
export const standingAtOnce = {
  'fall-on-standing': (f, say) =>
    `The pressure fell${fallen(f, say)} ${at(f, say)}, which meets the limits of a fall on standing${still(f, say)}: ${lower(REST)}`,
  'symptoms-on-standing': (f, say) =>
    `The person felt unwell ${at(f, say)}: stop, lay the person down, chart what was felt and report it; call for help for chest pain or a faint.`,
  'standing-systolic-low': (f, say) =>
    `The systolic on the feet was ${
      f.has('limitMmHg')
        ? `${say.beside(f.value('systolic'), f.value('limitMmHg'))} ${at(f, say)}, under ${say.limit(f.value('limitMmHg'))}`
        : `${say.short(f.value('systolic'))} ${at(f, say)}, which is very low by the limits in force here`
    }: lay the person down, measure again and call by your local protocol.`,
} as const satisfies Record<string, Detail>;

/** How far which number fell, where it is known. */
export function fallen(f: Figures, say: Say): string {
  const systolic = f.has('systolicFall') ? [`${say.short(f.value('systolicFall'))} systolic`] : [];
  const diastolic = f.has('diastolicFall') ? [`${say.short(f.value('diastolicFall'))} diastolic`] : [];
  const both = [...systolic, ...diastolic];
  return both.length === 0 ? '' : ` by ${say.allOf(both)}`;
}

/** What was left of a fall at the third minute, where it lasts. */
function still(f: Figures, say: Say): string {
  if (!f.has('lastMinutes')) return '';
  const systolic = f.has('lastSystolicFall') ? [`${say.short(f.value('lastSystolicFall'))} systolic`] : [];
  const diastolic = f.has('lastDiastolicFall')
    ? [`${say.short(f.value('lastDiastolicFall'))} diastolic`]
    : [];
  const both = [...systolic, ...diastolic];
  const down = both.length === 0 ? '' : ` by ${say.allOf(both)}`;
  return `, and ${say.short(f.value('lastMinutes'))} min up it was still down${down}`;
}

export function at(f: Figures, say: Say): string {
  if (!f.has('minutes')) return 'at a time that nobody noted';
  return f.value('minutes') === 0 ? 'at once' : `at ${say.short(f.value('minutes'))} min`;
}

function lower(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
