import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import { repeated } from './actNowDetails.js';
import type { Detail } from './detail.js';
import { minutes } from './readingsDetails.js';
import { at, fallen } from './standingAtOnce.js';

/**
 * A sentence for each code that is said beside the result of a round.
 * Source of the advice: bedside handbook 3.2, 3.3, 3.10, 3.12 and 3.14 to 3.16, worded anew.
 */
export const noteDetails = {
  'arms-unlike-methods': () =>
    'One arm was taken by ear and the other read off a display, so the two cannot be held against each other: take both in the same way before you go by either.',
  'arms-unlike-cuffs': () =>
    'The two arms were taken with unlike cuffs, so a difference between them may be one of the cuffs: repeat both arms with one cuff if it fits both, before you go by either.',
  'arms-cuff-unfitting': (f, say) =>
    `A cuff that does not fit its arm was used${expected(f, say)}, so a difference between the arms may be one of the cuff: repeat both arms with cuffs that fit, before you go by either.`,
  'lying-too-short': (f, say) =>
    `Taken after ${say.beside(f.value('minutes'), f.value('neededMinutes'))} min lying; from less than ${say.limit(f.value('neededMinutes'))} min a fall on standing is not surely told: let the person lie on and take it again.`,
  'lying-not-known': (f, say) =>
    `For how long they had lain before it is not known; from less than ${say.limit(f.value('neededMinutes'))} min a fall on standing is not surely told.`,
  'too-soon-by-times': (f, say) =>
    `By the times kept this came ${say.beside(f.value('apartSeconds'), f.value('gapSeconds'))} s after the reading before it on this limb, sooner than ${say.limit(f.value('gapSeconds'))} s. If it did, let the arm rest and repeat; if it was only written down then, put the times right once it is signed.`,
  'no-pulse-in-posture': () =>
    'No pulse was counted in this posture, and one of another posture is not taken for it. One that is counted beside the reading is written after its numbers: 130/80 84.',
  'third-minute-missed': (f, say) =>
    `Nothing was measured at ${say.limit(f.value('minutes'))} minutes on the feet, so whether the pressure fell, or stayed low, until then is not known.`,
  'fall-lasts': (f, say) =>
    `The fall on standing lasts: ${at(f, say)} the pressure was still down${fallen(f, say)}. Let the person lie down if unsteady, chart it and report it.`,
  'diastolic-of-muffling': () =>
    'Sounds were heard down to zero, so the diastolic here is where they muffled, and the category is as doubtful as it is: press more lightly and repeat.',
  'recheck-repeated-at-once': (f, say) =>
    `The person is unwell, or the pressure very low, and it was repeated (${repeated(f, say)}): stay with the person, call by your local protocol, and take it again as that protocol says.`,
  'recheck-abnormal-again': (f, say) =>
    `High by its category, and it was repeated: let the person rest and take it again after ${minutes(f, say, 'fromSeconds')}, within ${minutes(f, say, 'withinSeconds')} (common practice; your local protocol wins).`,
} as const satisfies Record<string, Detail>;

/** What a cuff is expected to add, of each arm where it is known. */
function expected(f: Figures, say: Say): string {
  const parts = (['right', 'left'] as const).flatMap((side) =>
    f.has(`${side}MmHg`) ? [`${signed(f.value(`${side}MmHg`), say)} on the ${side}`] : [],
  );
  return parts.length === 0 ? '' : ` (expected to shift the systolic by ${say.allOf(parts)})`;
}

function signed(mmHg: number, say: Say): string {
  return `${mmHg > 0 ? '+' : '−'}${say.short(Math.abs(mmHg), 1)}`;
}
