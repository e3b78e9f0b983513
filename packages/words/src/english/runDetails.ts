import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';

const REPEAT = 'empty the cuff, let the arm rest and repeat';

/**
 * A sentence for each code that a run of the cuff returns: what it does to the number and what to do.
 * Source of the advice: bedside handbook 3.4 to 3.7, 3.9, 7.5, worded anew.
 */
export const runDetails = {
  'palpated-only': (f, say) =>
    `Felt and not heard: ${say.short(f.value('systolic'))} is usually at or a little under what the ear would give, and there is no diastolic. Write it as ${say.short(f.value('systolic'))}/P and fill nothing in.`,
  'started-inside-sounds': (f, say) =>
    `Sounds were there almost as soon as the cuff was let down from ${say.short(f.value('peakMmHg'))} (first at ${say.short(f.value('firstMmHg'))}), so the true systolic may be higher: ${REPEAT}, pumping higher.`,
  'pulse-not-stopped': (f, say) =>
    `The pulse was felt almost as soon as the cuff was let down from ${say.short(f.value('peakMmHg'))} (at ${say.short(f.value('firstMmHg'))}) and may never have stopped, so the true systolic may be higher: ${REPEAT}, pumping higher.`,
  'margin-small': (f, say) =>
    `The cuff was pumped ${marginSaid(f, say)}; under ${say.limit(f.value('smallMarginMmHg'))} mmHg above it a silent gap can hide the true systolic, which may be higher: ${REPEAT}, pumping ${say.limit(f.value('wantedMmHg'))} above it.`,
  'possible-gap': (f, say) =>
    `The pulse was felt up to ${say.short(f.value('palpatedMmHg'))}, which is ${say.short(f.value('aboveMmHg'))} above the first sound (${say.short(f.value('systolic'))}): sounds may have begun higher and gone silent, so the true systolic may be higher. Let the arm rest, pump well above ${say.short(f.value('palpatedMmHg'))} and listen from there.`,
  'gap-heard': (f, say) =>
    `Sounds were silent from ${say.short(f.value('fromMmHg'))} to ${say.short(f.value('toMmHg'))} and came back; the systolic and the diastolic are those outside the gap. Chart the gap beside them and next time pump above it.`,
  're-inflated': (f, say) =>
    `The cuff was pumped up again part-way${f.has('fromMmHg') ? ` (from ${say.short(f.value('fromMmHg'))} to ${say.short(f.value('toMmHg'))})` : ''}, which changes the sounds: no rate and no range can be told. Do not rely on these numbers: ${REPEAT}.`,
  'early-too-fast': (f, say) =>
    `Before the first beat was caught the cuff fell by ${fall(f, say, 'fastestMmHgPerSecond')} mmHg a second, faster than ${say.limit(f.value('fastestMmHgPerSecond'))}, so the systolic may be read too low: ${REPEAT} more slowly.`,
  'early-too-slow': (f, say) =>
    `Before the first beat was caught the cuff fell by ${fall(f, say, 'slowestMmHgPerSecond')} mmHg a second, slower than ${say.limit(f.value('slowestMmHgPerSecond'))}: a long squeeze is unpleasant and may itself shift the numbers. Let down a little faster next time.`,
  'too-fast': (f, say) =>
    `On the whole the cuff fell by ${fall(f, say, 'fastestMmHgPerSecond')} mmHg a second, faster than ${say.limit(f.value('fastestMmHgPerSecond'))}, so the systolic may be read too low and the diastolic too high: ${REPEAT} more slowly.`,
  'too-slow': (f, say) =>
    `On the whole the cuff fell by ${fall(f, say, 'slowestMmHgPerSecond')} mmHg a second, slower than ${say.limit(f.value('slowestMmHgPerSecond'))}: a long squeeze is unpleasant and may itself shift the numbers. Let down a little faster next time.`,
  'too-fast-per-beat': (f, say) =>
    `The cuff fell by ${onItsSide(f.value('dropPerBeatMmHg'), f.value('fastestPerBeatMmHg'), say)} mmHg in each beat, more than ${say.limit(f.value('fastestPerBeatMmHg'))}, so the systolic may be read that much too low and the diastolic that much too high: ${REPEAT} more slowly.`,
  'too-soon': (f, say) =>
    `The cuff was pumped up ${say.beside(f.value('waitedSeconds'), f.value('neededSeconds'))} s after it was last emptied, sooner than ${say.limit(f.value('neededSeconds'))} s, and the numbers may be off: let the arm rest and repeat.`,
  'off-graduation': (f, say) =>
    `A gauge marked every ${say.limit(f.value('gaugeStepMmHg'))} mmHg cannot show ${say.allOf(offMarks(f, say))}: rounded, averaged or read off a display? Check, and chart the mark that was read.`,
  'to-zero': (f, say) =>
    f.has('muffled')
      ? `Sounds were heard down to ${say.short(f.value('diastolic'))}, so ${say.short(f.value('muffled'))}, where they muffled, is used for the diastolic. Write all three numbers, press the stethoscope more lightly and repeat.`
      : `Sounds were heard down to ${say.short(f.value('diastolic'))} and nobody noted where they muffled, so this diastolic is doubtful: press the stethoscope more lightly, listen for the muffling and repeat.`,
  'zero-without-muffled': () =>
    'A diastolic of 0 without the place where sounds muffled cannot be averaged, scored or put in a category, so none is used: repeat, pressing lightly, and note where they muffle.',
  'implausible-systolic': (f, say) =>
    `A systolic of ${outside(f, say, 'systolic', 'lowestSystolic', 'highestSystolic')}: look at the person first and act by your local protocol, check for a slip of the pen, and measure again.`,
  'implausible-diastolic': (f, say) =>
    `A diastolic of ${outside(f, say, 'diastolicUsed', 'lowestDiastolic', 'highestDiastolic')}: look at the person first and act by your local protocol, check for a slip of the pen, and measure again.`,
  'implausible-pulse-pressure': (f, say) =>
    `The two numbers are apart by ${outside(f, say, 'pulsePressureMmHg', 'smallestPulsePressureMmHg', 'largestPulsePressureMmHg')}: one of them may be a slip, so check what was read and measure again.`,
  'range-too-narrow': () =>
    'The rhythm was felt irregular and the ranges hold for a regular pulse, so they are too narrow here: let down slowly and take more readings.',
  'device-with-irregular': () =>
    'The rhythm was felt irregular and this was read off a display, which may be far out then: measure by ear; where that cannot be, take three in a row.',
  'no-diastolic-by-palpation': () => 'By feel there is a systolic only: no diastolic can be felt.',
  'read-from-display': () =>
    'Read off a display: how it came to its numbers is not known, so there is no rate and no range.',
  'no-peak': () =>
    'How high the cuff was pumped was not noted, so the first rate, the range of the systolic and the margin cannot be told.',
  'not-palpated': () =>
    'Where the pulse was lost was not noted, so the margin cannot be told: feel for it before you listen.',
  'not-timed': () =>
    'The moments have no times, so rates and ranges cannot be told: have them marked with a key, a pedal or by a second person.',
  'moments-too-close': () => 'Two moments came within a second of each other, too close to tell a rate.',
  'no-pulse': () =>
    'The pulse is not known, so the drop in one beat and the ranges cannot be told: count it before the cuff goes up.',
  'silence-not-heard': () =>
    'No silent beat surely came before the first one that was caught, so how high the systolic may be cannot be told.',
} as const satisfies Record<string, Detail>;

/** A rate on its own side of the limit that it broke. */
function fall(f: Figures, say: Say, limit: string): string {
  return onItsSide(f.value('mmHgPerSecond'), f.value(limit), say);
}

/** As fine as anybody measures a rate. */
const RATE_DECIMALS = 2;

/** A rate with one decimal, with two where it takes them to stand on its side of the limit, and no more. */
function onItsSide(value: number, limit: number, say: Say): string {
  return (
    say.onItsSide(value, limit, RATE_DECIMALS) ??
    `just ${value > limit ? 'over' : 'under'} ${say.limit(limit)}`
  );
}

function marginSaid(f: Figures, say: Say): string {
  const margin = f.value('marginMmHg');
  if (margin === 0) return 'just to where the pulse was lost';
  const by = `${say.beside(Math.abs(margin), f.value('smallMarginMmHg'))} mmHg`;
  return margin > 0 ? `${by} above where the pulse was lost` : `to ${by} below where the pulse was lost`;
}

/** The numbers that the gauge has no mark for. */
function offMarks(f: Figures, say: Say): string[] {
  return ['systolic', 'muffled', 'diastolic'].filter(f.has).map((key) => say.short(f.value(key), 3));
}

/** A number with the end of the plausible span that it lies beyond. */
function outside(f: Figures, say: Say, key: string, lowest: string, highest: string): string {
  const value = f.value(key);
  const isLow = value < f.value(lowest);
  const limit = f.value(isLow ? lowest : highest);
  return `${say.beside(value, limit)} mmHg is ${isLow ? 'under' : 'over'} ${say.limit(limit)}`;
}
