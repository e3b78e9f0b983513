import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';

const READINGS = { one: 'reading', other: 'readings' };
const AGAIN = 'let the arm rest and take another';

/**
 * A sentence for each code of the readings of a round: which are averaged, when another is needed, which arm, when to
 * look again. Source of the advice: bedside handbook 3.10 to 3.16, worded anew.
 */
export const readingsDetails = {
  'again-at-once': () =>
    'The person is unwell, or the pressure very low: look at the person first, and take it again by hand now, without a wait, if that delays no help.',
  'more-readings': (f, say) =>
    `${taken(f, say)} and this guideline goes by ${say.short(f.value('needs'))}: ${AGAIN}.`,
  'more-readings-general': (f, say) =>
    `${taken(f, say)} and with no protocol chosen here the general rule goes by ${say.short(f.value('needs'))}: ${AGAIN}.`,
  'raised-not-known': () =>
    'Whether the first reading is raised for this child cannot be told without its limits, so it is not taken for enough: find them by age and height, or take the others.',
  'irregular-more-readings': (f, say) =>
    `${taken(f, say)} and an irregular pulse needs ${say.short(f.value('needs'))}, because the pressure changes from beat to beat: ${AGAIN}, letting down slowly.`,
  'differ-over': (f, say) =>
    `The last two readings differ by ${apart(f, say)}, more than ${say.limit(f.value('limitMmHg'))}: ${AGAIN}.`,
  'differ-from': (f, say) =>
    `The last two readings differ by ${apart(f, say)}, and from ${say.limit(f.value('limitMmHg'))} on they are not close: ${AGAIN}.`,
  'severe-again': (f, say) =>
    `${say.short(f.value('systolic'))}/${say.short(f.value('diastolic'))} is severe: check the cuff and the arm and take it again by hand, if that does not delay help.`,
  'not-stable': (f, say) =>
    `After ${say.counted(f.value('readings'), READINGS)} the pressure is not stable: take no more now, chart them all as they are and tell the clinician in charge.`,
  'no-diastolic-left-out': (f, say) =>
    `${say.counted(f.value('leftOut'), READINGS)} without a diastolic that can be used left out of the average: a systolic by feel is not one by ear. ${form(f.value('leftOut'), 'It stands', 'They stand')} in the chart.`,
  'irregular-takes-all': (f, say) =>
    `The pulse is irregular, so all ${say.counted(f.value('readings'), READINGS)} were averaged, whatever the guideline takes of a regular one.`,
  'no-two-close': (f, say) =>
    `No two of ${say.counted(f.value('readings'), READINGS)} in a row are close enough for this guideline, so there is no average: take another, or chart them one by one.`,
  'arms-repeat': (f, say) =>
    `The ${arm(f)} arm reads ${difference(f, say)} higher, more than ${say.limit(f.value('limitMmHg'))}: repeat both arms before anything is made of it.`,
  'arms-higher': (f, say) =>
    `The ${arm(f)} arm reads ${difference(f, say)} higher, more than ${say.limit(f.value('limitMmHg'))}: use that arm from now on and chart that it is the higher one.`,
  'arms-either': (f, say) =>
    f.value('systolicMmHg') === 0
      ? 'Both arms read the same: either will do.'
      : `The ${arm(f)} arm reads ${difference(f, say)} higher, not beyond ${say.limit(f.value('limitMmHg'))}: either arm will do; chart the difference.`,
  'arms-not-compared': (f, say) =>
    f.value('systolicMmHg') === 0
      ? 'The last reading of each arm was the same; which arm reads higher is not known so: chart both.'
      : `By the last reading of each, the ${arm(f)} arm read ${difference(f, say)} higher; which arm reads higher is not known so: chart both.`,
  'arms-look-further': (f, say) =>
    `The arms differ by ${say.beside(Math.abs(f.value('systolicMmHg')), f.value('lookFurtherMmHg'))}, more than ${say.limit(f.value('lookFurtherMmHg'))}: measure them together if you can (in turn the difference comes out too large), and tell the clinician in charge, who looks for the reason.`,
  'recheck-at-once': () =>
    'The person is unwell, or the pressure very low: look at the person first, repeat by hand at once and do not wait for anything.',
  'recheck-pregnancy': (f, say) =>
    `Severe in pregnancy or the weeks after: repeat within ${minutes(f, say, 'withinSeconds')} and have it seen urgently by obstetrics. Confirm with your local protocol.`,
  'recheck-severe': (f, say) =>
    `Severe: if no emergency feature is there, let the person rest ${minutes(f, say, 'fromSeconds')}, repeat by hand with the right cuff, on the other arm too, and tell the clinician in charge at this visit. Confirm with your local protocol.`,
  'recheck-abnormal-soon': (f, say) =>
    `High by its category: check how it was measured and repeat after ${minutes(f, say, 'fromSeconds')}, within ${minutes(f, say, 'withinSeconds')}.`,
  'recheck-abnormal-later': (f, say) =>
    `If it is still high when it is repeated: let the person rest and repeat again after ${minutes(f, say, 'fromSeconds')}, within ${minutes(f, say, 'withinSeconds')} (common practice; your local protocol wins).`,
} as const satisfies Record<string, Detail>;

function taken(f: Figures, say: Say): string {
  const readings = f.value('readings');
  if (readings === 0) return 'No reading with both numbers was taken yet,';
  return `${say.counted(readings, READINGS)} with both numbers ${form(readings, 'was', 'were')} taken,`;
}

function form(count: number, one: string, other: string): string {
  return count === 1 ? one : other;
}

/** How far two readings are apart; each number on its own side of the limit. */
function apart(f: Figures, say: Say): string {
  const [systolic, diastolic] = [f.value('systolicMmHg'), f.value('diastolicMmHg')].map((mmHg) =>
    say.beside(mmHg, f.value('limitMmHg')),
  );
  return `${systolic} in the systolic and ${diastolic} in the diastolic`;
}

/** Which arm reads higher: the difference is right minus left. */
function arm(f: Figures): string {
  return f.value('systolicMmHg') > 0 ? 'right' : 'left';
}

function difference(f: Figures, say: Say): string {
  return say.beside(Math.abs(f.value('systolicMmHg')), f.value('limitMmHg'));
}

export function minutes(f: Figures, say: Say, key: string): string {
  return say.counted(f.value(key) / 60, { one: 'minute', other: 'minutes' });
}
