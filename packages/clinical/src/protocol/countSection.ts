import type { Figure } from '../contract/figure.js';
import { type Comparison, passes } from '../contract/threshold.js';
import { COUNT_COMPARISONS as SIDE } from '../count/comparisons.js';
import { COUNT_FIGURES as F } from '../count/figures.js';
import { type CountRules, DEFAULT_COUNT_RULES as RULES } from '../count/rules.js';
import type { Disagreement, FieldShape, Section } from './shape.js';

const CONVENTIONS = 'docs/conventions.md section 5';
const WINDOW = { low: 5, high: 300 } as const;

/** Counting against a watch. Source of each rule beside it; the bounds of a local value are this project's. */
export const COUNT_SECTION: Section<CountRules> = {
  fields: {
    pulseWindowsSeconds: {
      kind: 'numbers',
      ...WINDOW,
      value: RULES.pulseWindowsSeconds,
      unit: 's',
      meaning: 'windows offered for a pulse',
      source: 'bedside handbook 1.3',
      sure: 'practice',
      since: 1,
    },
    breathsWindowsSeconds: {
      kind: 'numbers',
      ...WINDOW,
      value: RULES.breathsWindowsSeconds,
      unit: 's',
      meaning: 'windows offered for breaths',
      source: F.breathsWindowSeconds.source,
      sure: F.breathsWindowSeconds.sure,
      since: 1,
    },
    pulseWindowSeconds: fromFigure(F.pulseWindowSeconds, WINDOW, null),
    breathsWindowSeconds: fromFigure(F.breathsWindowSeconds, WINDOW, null),
    clock: {
      kind: 'choice',
      choices: ['beat', 'any'],
      value: RULES.clock,
      unit: null,
      meaning: 'how the clock is started: on a felt beat, or at any moment',
      source: CONVENTIONS,
      sure: 'decision',
      since: 1,
    },
    first: {
      kind: 'choice',
      choices: [0, 1],
      value: RULES.first,
      unit: null,
      meaning: 'what the first beat is called',
      source: CONVENTIONS,
      sure: 'decision',
      since: 1,
    },
    longestWindowSeconds: limit('longestWindowSeconds', 60, 300),
    ceilingPerMinute: limit('ceilingPerMinute', 200, 400),
    fullWindowSeconds: fromFigure(F.fullWindowSeconds, { low: 60, high: 120 }, null),
    slowPerMinute: limit('slowPerMinute', 20, 100),
    fastPerMinute: limit('fastPerMinute', 60, 250),
    barredAbovePerMinute: {
      ...limit('barredAbovePerMinute', 60, 250),
      since: 2,
    },
    barredWhenFastSeconds: limit('barredWhenFastSeconds', 0, 59),
    youngUnderMonths: limit('youngUnderMonths', 1, 216),
    disagreementPerMinute: limit('disagreementPerMinute', 1, 60),
    lookFirstWhenFarOut: {
      kind: 'yes-no',
      value: RULES.lookFirstWhenFarOut,
      unit: null,
      meaning: 'an adult rate at or beyond the limits below is flagged: look at the person first',
      source: F.verySlowPulsePerMinute.source,
      sure: F.verySlowPulsePerMinute.sure,
      since: 2,
    },
    verySlowPulsePerMinute: limit('verySlowPulsePerMinute', 20, 60),
    veryFastPulsePerMinute: limit('veryFastPulsePerMinute', 100, 250),
    verySlowBreathsPerMinute: limit('verySlowBreathsPerMinute', 1, 12),
    veryFastBreathsPerMinute: limit('veryFastBreathsPerMinute', 20, 60),
    adultFromMonths: limit('adultFromMonths', 144, 216),
    fullMinuteWhenSlowOrFast: fullMinute(
      RULES.fullMinuteWhenSlowOrFast,
      'a short pulse count under the slow or over the fast limit',
      'practice',
    ),
    fullMinuteWhenIrregular: fullMinute(
      RULES.fullMinuteWhenIrregular,
      'a pulse felt to be irregular in any way',
      'memory',
    ),
    fullMinuteWhenWeak: fullMinute(RULES.fullMinuteWhenWeak, 'a weak or hard-to-feel pulse', 'practice'),
    fullMinuteWhenFirstOnPerson: fullMinute(
      RULES.fullMinuteWhenFirstOnPerson,
      'the first set of signs on a person',
      'practice',
    ),
    fullMinuteWhenYoung: fullMinute(RULES.fullMinuteWhenYoung, 'an infant or young child', 'memory'),
    fullMinuteWhenApical: fullMinute(RULES.fullMinuteWhenApical, 'an apical pulse', 'memory'),
    fullMinuteWhenHeartRateDrug: fullMinute(
      RULES.fullMinuteWhenHeartRateDrug,
      'before or after a drug that acts on heart rate',
      'memory',
    ),
    fullMinuteWhenDisagreeing: fullMinute(
      RULES.fullMinuteWhenDisagreeing,
      'a short pulse count that disagrees with the previous rate or a display',
      'practice',
    ),
    breathsShortAllowed: {
      kind: 'yes-no',
      value: RULES.breathsShortAllowed,
      unit: null,
      meaning: 'regular breaths may be counted in the short window',
      source: 'bedside handbook 2.1',
      sure: 'practice',
      since: 1,
    },
    breathsShortWindowSeconds: limit('breathsShortWindowSeconds', 15, 60),
  },
  agree,
};

/** A number that a rule is compared with, on the side that the rule has whoever sets it. */
function limit(id: keyof typeof F & keyof typeof SIDE, low: number, high: number): FieldShape<number> {
  return fromFigure(F[id], { low, high }, SIDE[id]);
}

function fromFigure(
  { value, unit, meaning, source, sure }: Figure,
  bounds: { readonly low: number; readonly high: number },
  comparison: Comparison | null,
): FieldShape<number> {
  return { kind: 'number', ...bounds, comparison, value, unit, meaning, source, sure, since: 1 };
}

function fullMinute(value: boolean, when: string, sure: FieldShape['sure']): FieldShape<boolean> {
  const meaning = `a full minute is asked for after: ${when}`;
  return { kind: 'yes-no', value, unit: null, meaning, source: 'bedside handbook 1.5', sure, since: 1 };
}

/** The schema from which the rules about one window are held against the windows offered. */
const OFFERED_SINCE = 2;

/** Rules that could never be kept with the windows offered: short breaths, and a longer window for a fast pulse. */
function notOffered(rules: CountRules): Disagreement[] {
  const { pulseWindowsSeconds, barredWhenFastSeconds, breathsWindowsSeconds, breathsShortWindowSeconds } =
    rules;
  const faults: Disagreement[] = [];
  if (
    pulseWindowsSeconds.every((seconds) => passes(seconds, SIDE.barredWhenFastSeconds, barredWhenFastSeconds))
  )
    faults.push({ key: 'barredWhenFastSeconds', expected: 'shorter-than-a-window-offered', figures: {} });
  if (rules.breathsShortAllowed && !breathsWindowsSeconds.includes(breathsShortWindowSeconds))
    faults.push({ key: 'breathsShortWindowSeconds', expected: 'window-offered', figures: {} });
  return faults;
}

/** What must hold between the rules of counting, whoever set them. */
function agree(rules: CountRules, schema: number): Disagreement[] {
  const faults: Disagreement[] = schema < OFFERED_SINCE ? [] : notOffered(rules);
  for (const [key, offered] of [
    ['pulseWindowSeconds', rules.pulseWindowsSeconds],
    ['breathsWindowSeconds', rules.breathsWindowsSeconds],
  ] as const) {
    if (!offered.includes(rules[key])) faults.push({ key, expected: 'window-offered', figures: {} });
  }
  for (const key of ['pulseWindowsSeconds', 'breathsWindowsSeconds'] as const) {
    const { longestWindowSeconds } = rules;
    if (rules[key].every((seconds) => seconds <= longestWindowSeconds)) continue;
    faults.push({ key, expected: 'window-over-zero-at-most', figures: { longestWindowSeconds } });
  }
  if (rules.fullWindowSeconds > rules.longestWindowSeconds) {
    const { longestWindowSeconds } = rules;
    faults.push({
      key: 'fullWindowSeconds',
      expected: 'window-over-zero-at-most',
      figures: { longestWindowSeconds },
    });
  }
  if (rules.slowPerMinute >= rules.fastPerMinute) {
    const { fastPerMinute } = rules;
    faults.push({ key: 'slowPerMinute', expected: 'below-fast', figures: { fastPerMinute } });
  }
  return faults;
}
