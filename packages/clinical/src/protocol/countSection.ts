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
    longestWindowSeconds: fromFigure(
      F.longestWindowSeconds,
      { low: 60, high: 300 },
      SIDE.longestWindowSeconds,
    ),
    ceilingPerMinute: fromFigure(F.ceilingPerMinute, { low: 200, high: 400 }, SIDE.ceilingPerMinute),
    fullWindowSeconds: fromFigure(F.fullWindowSeconds, { low: 60, high: 120 }, null),
    slowPerMinute: fromFigure(F.slowPerMinute, { low: 20, high: 100 }, SIDE.slowPerMinute),
    fastPerMinute: fromFigure(F.fastPerMinute, { low: 60, high: 250 }, SIDE.fastPerMinute),
    barredAbovePerMinute: {
      ...fromFigure(F.barredAbovePerMinute, { low: 60, high: 250 }, SIDE.barredAbovePerMinute),
      since: 2,
    },
    barredWhenFastSeconds: fromFigure(
      F.barredWhenFastSeconds,
      { low: 0, high: 59 },
      SIDE.barredWhenFastSeconds,
    ),
    youngUnderMonths: fromFigure(F.youngUnderMonths, { low: 1, high: 216 }, SIDE.youngUnderMonths),
    disagreementPerMinute: fromFigure(
      F.disagreementPerMinute,
      { low: 1, high: 60 },
      SIDE.disagreementPerMinute,
    ),
    lookFirstWhenFarOut: {
      kind: 'yes-no',
      value: RULES.lookFirstWhenFarOut,
      unit: null,
      meaning: 'an adult rate at or beyond the limits below is flagged: look at the person first',
      source: F.verySlowPulsePerMinute.source,
      sure: F.verySlowPulsePerMinute.sure,
      since: 2,
    },
    verySlowPulsePerMinute: fromFigure(
      F.verySlowPulsePerMinute,
      { low: 20, high: 60 },
      SIDE.verySlowPulsePerMinute,
    ),
    veryFastPulsePerMinute: fromFigure(
      F.veryFastPulsePerMinute,
      { low: 100, high: 250 },
      SIDE.veryFastPulsePerMinute,
    ),
    verySlowBreathsPerMinute: fromFigure(
      F.verySlowBreathsPerMinute,
      { low: 1, high: 12 },
      SIDE.verySlowBreathsPerMinute,
    ),
    veryFastBreathsPerMinute: fromFigure(
      F.veryFastBreathsPerMinute,
      { low: 20, high: 60 },
      SIDE.veryFastBreathsPerMinute,
    ),
    adultFromMonths: fromFigure(F.adultFromMonths, { low: 144, high: 216 }, SIDE.adultFromMonths),
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
      'a short count that disagrees with the previous rate or a display',
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
    breathsShortWindowSeconds: fromFigure(
      F.breathsShortWindowSeconds,
      { low: 15, high: 60 },
      SIDE.breathsShortWindowSeconds,
    ),
  },
  agree,
};

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
