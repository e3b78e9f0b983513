import type { Figures } from '../figures.js';
import type { Say } from '../say.js';
import type { Detail } from './detail.js';

/**
 * A sentence for each code that counting returns: what it means and what to do.
 * Source of the advice: bedside handbook 1.2 to 1.5, 1.10, 2.1, 7.5, worded anew.
 */
export const countDetails = {
  'very-slow': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('limitPerMinute'))} a minute is very slow for an adult: look at the person first, act by your local protocol and emergency procedure, then count again.`,
  'very-fast': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('limitPerMinute'))} a minute is very fast for an adult: look at the person first, act by your local protocol and emergency procedure, then count again.`,
  'convention-shifts-rate': (f, say) => {
    const shift = f.value('averageShiftPerMinute');
    const by = say.short(Math.abs(shift));
    return `Counted this way the rate comes out about ${by} a minute too ${shift > 0 ? 'high' : 'low'} on average: the way that is off by nothing on average is to start the clock at any moment and call the first beat one.`;
  },
  'range-assumes-regular': (f, say) =>
    `The range of ${say.short(f.value('lowPerMinute'))} to ${say.short(f.value('highPerMinute'))} holds for a regular rhythm; this one was felt irregular, so do not rely on it.`,
  'count-apex': () => 'Felt irregular: also listen at the apex for a full minute and report what you find.',
  'none-counted': (f, say) =>
    `Nothing was counted in ${say.short(f.value('windowSeconds'))} s: look at the person before the watch, act by your local protocol, and do not take this as a rate until you have checked.`,
  'shorter-than-offered': (f, say) =>
    `${say.beside(f.value('windowSeconds'), f.value('shortestWindowSeconds'), 1)} s is shorter than any window of the rules in force: count ${say.limit(f.value('shortestWindowSeconds'))} s.`,
  'fast-for-window': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} a minute is over ${say.limit(f.value('fastPerMinute'))}, and a fast rate counted for only ${say.short(f.value('windowSeconds'))} s is not accurate enough: count ${f.has('fullWindowSeconds') ? `${say.short(f.value('fullWindowSeconds'))} s before you rely on it` : 'for longer'}.`,
  'slow-on-short-count': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('slowPerMinute'))} a minute is under ${say.limit(f.value('slowPerMinute'))}, and was counted for only ${say.short(f.value('windowSeconds'))} s: count ${say.short(f.value('fullWindowSeconds'))} s before you rely on it.`,
  'fast-on-short-count': (f, say) =>
    `${say.beside(f.value('perMinute'), f.value('fastPerMinute'))} a minute is over ${say.limit(f.value('fastPerMinute'))}, and was counted for only ${say.short(f.value('windowSeconds'))} s: count ${say.short(f.value('fullWindowSeconds'))} s before you rely on it.`,
  'breaths-full-minute': (f, say) =>
    `Breaths counted for ${say.short(f.value('windowSeconds'))} s tend to come out too low: count ${say.short(f.value('fullWindowSeconds'))} s.`,
  irregular: (f, say) =>
    `Felt irregular: a short count can miss a good deal either way, so count ${say.short(f.value('fullWindowSeconds'))} s and report it.`,
  'irregular-known': (f, say) =>
    `The pulse is known to be irregular: count ${say.short(f.value('fullWindowSeconds'))} s from the start.`,
  weak: (f, say) =>
    `Felt weak: beats are easily missed, so count ${say.short(f.value('fullWindowSeconds'))} s or try another site.`,
  'first-set': (f, say) =>
    `This is the first set on this person and others will be compared with it: count ${say.short(f.value('fullWindowSeconds'))} s.`,
  young: (f, say) =>
    `Under ${say.limit(f.value('youngUnderMonths'))} months (here ${say.beside(f.value('ageMonths'), f.value('youngUnderMonths'), 1)}) rates change from moment to moment: count ${say.short(f.value('fullWindowSeconds'))} s.`,
  apical: (f, say) =>
    `Heard at the apex: count ${say.short(f.value('fullWindowSeconds'))} s, each lub-dub as one.`,
  'heart-rate-drug': (f, say) =>
    `A drug acts on the heart rate: count ${say.short(f.value('fullWindowSeconds'))} s and chart whether it was before or after.`,
  disagrees: (f, say) =>
    `${say.rate(f.value('perMinute'))} a minute differs by ${say.beside(f.value('differencePerMinute'), f.value('disagreementPerMinute'))} from the ${otherRate(f, say)}, more than ${say.limit(f.value('disagreementPerMinute'))}: count ${say.short(f.value('fullWindowSeconds'))} s.`,
  interrupted: (f, say) =>
    f.has('atSeconds')
      ? `The count was broken off after ${say.short(f.value('atSeconds'))} s and has no value: wait a moment and start again.`
      : 'The count was broken off and has no value: wait a moment and start again.',
  'not-simultaneous': () =>
    'Apex and wrist were not counted in the same minute, so they may differ for that reason alone: have two observers count on one watch.',
  'negative-deficit': (f, say) => {
    const [wrist, apex] = say.apart(f.value('radialPerMinute'), f.value('apicalPerMinute'));
    return `The wrist (${wrist}) cannot beat more often than the apex (${apex}): one of them was miscounted, so count both again.`;
  },
  'deficit-to-report': (f, say) =>
    `${say.beside(f.value('deficitPerMinute'), f.value('reportAbovePerMinute'))} a minute of the beats heard at the apex were not felt at the wrist, more than ${say.limit(f.value('reportAbovePerMinute'))}: report it.`,
  deficit: (f, say) =>
    `${say.beside(f.value('deficitPerMinute'), 0)} a minute of the beats heard at the apex were not felt at the wrist: count both again and report it if it repeats.`,
} as const satisfies Record<string, Detail>;

/** The rate that a count is unlike: on a display, or taken before. */
export function otherRate(f: Figures, say: Say): string {
  return f.has('devicePerMinute')
    ? `${say.rate(f.value('devicePerMinute'))} shown by a device`
    : `${say.rate(f.value('previousPerMinute'))} taken before`;
}
