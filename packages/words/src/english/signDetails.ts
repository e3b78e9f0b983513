import type { Detail } from './detail.js';

const CONFIRM = 'Confirm this limit with your local protocol.';

/**
 * A sentence for each code that the signs without count or cuff return: what it means and what to do.
 * Source of the advice: bedside handbook 4.1 to 4.4 and 7.5, worded anew.
 */
export const signDetails = {
  'implausible-temperature': (f, say) =>
    `${say.temperature(f.value('celsius'), f.value(f.value('celsius') < f.value('lowCelsius') ? 'lowCelsius' : 'highCelsius'))} is outside ${say.temperatureLimit(f.value('lowCelsius'))} to ${say.temperatureLimit(f.value('highCelsius'))}: look at the person, check number, unit and site, then measure again before you rely on it.`,
  'mouth-too-soon': (f, say) =>
    `Only ${say.beside(f.value('minutes'), f.value('waitMinutes'))} min since a hot or cold drink or a smoke: wait ${say.limit(f.value('waitMinutes'))} min or use another site. ${CONFIRM}`,
  hyperpyrexia: (f, say) =>
    `${hotter(f, say)} is over ${say.temperatureLimit(f.value('limitCelsius'))}, a very high fever: tell the clinician in charge at once. ${CONFIRM}`,
  'fever-young-infant': (f, say) =>
    `${hotter(f, say)} in an infant under 3 months is a fever of high risk: get the clinician in charge to see the child at once. ${CONFIRM}`,
  'fever-infant': (f, say) =>
    `${hotter(f, say)} in an infant under 6 months is a fever that needs a clinician’s look today. ${CONFIRM}`,
  fever: (f, say) =>
    `${hotter(f, say)} is in the range called fever (${say.temperatureLimit(f.value('limitCelsius'))} or more): act by your local protocol. ${CONFIRM}`,
  'hypothermia-severe': (f, say) =>
    `${hotter(f, say)} is under ${say.temperatureLimit(f.value('limitCelsius'))}, in the range called severe hypothermia: get help at once, move the person gently and measure again at a core site. ${CONFIRM}`,
  'hypothermia-moderate': (f, say) =>
    `${hotter(f, say)} is under ${say.temperatureLimit(f.value('limitCelsius'))}, in the range called moderate hypothermia: get help at once and measure again at a core site. ${CONFIRM}`,
  'hypothermia-mild': (f, say) =>
    `${hotter(f, say)} is under ${say.temperatureLimit(f.value('limitCelsius'))}, in the range called mild hypothermia: measure again and tell the clinician in charge. ${CONFIRM}`,
  'below-oximeter-range': (f, say) =>
    `${say.beside(f.value('percent'), f.value('lowestPercent'))} % is under ${say.limit(f.value('lowestPercent'))} %, below what an oximeter is held to: look at the person first and act on what you see, then check probe and finger. ${CONFIRM}`,
  'low-oxygen-child': (f, say) =>
    `${say.beside(f.value('percent'), f.value('limitPercent'))} % in a child is under ${say.limit(f.value('limitPercent'))} %: look at the child, check the probe, and call by your local protocol without waiting for another reading.`,
  'below-oxygen-target': (f, say) =>
    `${say.beside(f.value('percent'), f.value('lowPercent'))} % is below the target of ${say.limit(f.value('lowPercent'))} to ${say.limit(f.value('highPercent'))} % on the scale in use: look at the person, check the probe, then act by your local protocol.`,
  'above-oxygen-target': (f, say) =>
    `${say.beside(f.value('percent'), f.value('highPercent'))} % on oxygen is above the target of ${say.limit(f.value('lowPercent'))} to ${say.limit(f.value('highPercent'))} % on the scale in use: ask whoever prescribed the oxygen whether less is enough.`,
  'oximeter-pulse-disagrees': (f, say) =>
    `The oximeter shows a pulse of ${say.number(f.value('pulsePerMinute'))} and ${say.number(f.value('feltPulsePerMinute'))} was felt, ${say.beside(f.value('differencePerMinute'), f.value('limitPerMinute'))} apart and so more than ${say.limit(f.value('limitPerMinute'))}: do not rely on this saturation, warm the hand, move the probe and read again.`,
  'pain-severe': (f, say) =>
    f.has('score')
      ? `${say.beside(f.value('score'), f.value('severeFrom'))} of 10 is severe pain: tell the clinician in charge and say when you will ask again. ${CONFIRM}`
      : 'Severe pain: tell the clinician in charge and say when you will ask again.',
  'not-alert': () =>
    'Not alert, or newly confused: stay with the person and call for help by your local protocol and emergency procedure before you measure on.',
  'glasgow-not-testable': () =>
    'A part of the Glasgow scale could not be tested, so there is no total: chart the parts and why.',
  'implausible-weight': (f, say) =>
    `${say.mass(f.value('kg'))} is unusual: check the number, the point and the unit, then weigh again.`,
  'weight-not-measured': () =>
    'This weight was not measured: do not work out a dose from it, weigh when you can.',
  'implausible-height': (f, say) =>
    `${say.length(f.value('cm'))} is unusual: check the number, the point and the unit, then measure again.`,
  'height-not-measured': () => 'This height was not measured: measure when you can.',
  'length-lying': (f, say) =>
    `Measured lying from two years on: a length comes out about ${say.length(f.value('longerCm'))} longer than the standing height, so do not compare the two. ${CONFIRM}`,
  'height-standing-young': (f, say) =>
    `Under ${say.limit(f.value('underMonths'))} months (here ${say.beside(f.value('ageMonths'), f.value('underMonths'))}) the length is measured lying: measure again lying. ${CONFIRM}`,
} as const satisfies Record<string, Detail>;

/** A temperature on its own side of the limit that it is told beside. */
function hotter(f: Parameters<Detail>[0], say: Parameters<Detail>[1]): string {
  return say.temperature(f.value('celsius'), f.value('limitCelsius'));
}
