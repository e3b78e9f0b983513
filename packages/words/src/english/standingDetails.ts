import type { Detail } from './detail.js';
import { at, fallen, REST } from './standingAtOnce.js';

/**
 * A sentence for each code that a standing test returns. No code names an illness.
 * Source of the advice: bedside handbook 3.14 and 7.5, worded anew.
 */
export const standingDetails = {
  'fall-delayed': (f, say) =>
    `The pressure fell${fallen(f, say)} only ${at(f, say)}, later than three minutes: a delayed fall. ${REST}`,
  'fall-recovered': (f, say) =>
    `The fall was gone again ${at(f, say)}: chart both readings, and measure once more if the person felt it.`,
  'pulse-change': (f, say) =>
    f.value('pulseRise') > 0
      ? `The pulse rose by ${say.rate(f.value('pulseRise'))} a minute on the feet, at most.`
      : f.value('pulseRise') < 0
        ? `The pulse did not rise on the feet: at its highest it was ${say.rate(-f.value('pulseRise'))} a minute less than before.`
        : 'The pulse did not rise on the feet.',
  'heart-rate-ratio-low': (f, say) =>
    `The pulse rose by ${say.beside(f.value('ratio'), f.value('limit'), 2)} a minute for each mmHg of fall, under ${say.limit(f.value('limit'))}: a pattern consistent with nerves that do not answer the fall; it is a pointer and no more, so tell the clinician in charge.`,
  'rise-without-fall': (f, say) =>
    `The pulse rose by ${say.beside(f.value('pulseRise'), f.value('limitPerMinute'))} a minute, ${say.limit(f.value('limitPerMinute'))} or more, without a fall in the readings taken: chart it with what the person felt, and report it. Confirm this limit with your local protocol.`,
  'hypertensive-fall-limit': (f, say) =>
    `Judged by a fall of ${say.limit(f.value('limitMmHg'))} of the systolic, because the pressure is known to be high when lying; a smaller fall that is felt is to be reported too.`,
  'initial-fall-not-seen': () =>
    'A fall in the first quarter of a minute, soon over, cannot be seen with a cuff: ask what was felt on standing up.',
  'first-minute-not-measured': (f, say) =>
    `Nothing was measured at ${say.limit(f.value('minutes'))} minute, so an early fall that passed may have been missed: that takes a reading then too.`,
  'fall-not-comparable': () =>
    'A number is missing at rest or on the feet, so a fall is not excluded: measure both pressures each time.',
  'no-systolic-fall': () =>
    'The systolic did not fall to its limit within three minutes of standing, so the rise of the pulse for each mmHg of fall has no meaning.',
  'ratio-needs-lying': () =>
    'The rise of the pulse for each mmHg of fall is known from lying down only: begin the test lying down for it.',
  'no-pulse-with-fall': () => 'No pulse with the fall, or none at rest: count it each time.',
  'rhythm-not-known': () =>
    'The rise of the pulse for each mmHg of fall holds in the heart’s own regular rhythm as a tracing shows it, without a pacemaker and without a drug that slows the heart: find out first.',
  'rhythm-not-sinus': () =>
    'The heart is not in its own regular rhythm: the rise of the pulse for each mmHg of fall has no meaning here.',
  'has-pacemaker': () => 'With a pacemaker the rise of the pulse for each mmHg of fall has no meaning.',
  'takes-rate-slowing-drug': () =>
    'With a drug that slows the heart the rise of the pulse for each mmHg of fall has no meaning.',
} as const satisfies Record<string, Detail>;
