import { DEFLATION_COMPARISONS as SIDE } from '../deflation/comparisons.js';
import { DEFLATION_FIGURES as F } from '../deflation/figures.js';
import { type DeflationRules, DEFAULT_DEFLATION_RULES as RULES } from '../deflation/rules.js';
import { type Bounds, choiceField, numberField } from './fieldShapes.js';
import type { Disagreement, FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** Letting the cuff down and reading it. The bounds of a local value are this project's. */
export const DEFLATION_SECTION: Section<DeflationRules> = {
  fields: {
    slowestMmHgPerSecond: limit('slowestMmHgPerSecond', [0.5, 5]),
    fastestMmHgPerSecond: limit('fastestMmHgPerSecond', [1, 10]),
    perBeatWhen: choiceField(
      ['always', 'slow-or-irregular', 'never'],
      RULES.perBeatWhen,
      {
        meaning: 'for which pulses the drop in one beat is judged',
        source: 'bedside handbook 3.6 (Korean guideline 2013: for all)',
        sure: 'memory',
      },
      SINCE,
    ),
    fastestPerBeatMmHg: limit('fastestPerBeatMmHg', [1, 10]),
    slowPulsePerMinute: limit('slowPulsePerMinute', [30, 100]),
    gaugeStepMmHg: numberField(F.gaugeStepMmHg, [0.1, F.coarsestStepMmHg.value], null, SINCE),
    gaugeReading: choiceField(
      ['nearest', 'mark-above'],
      RULES.gaugeReading,
      {
        meaning: 'which mark is read where the needle stands between two',
        source:
          'Flynn 2017, Pediatrics 140:e20171904; survey protocols: the mark above (bedside handbook 3.9)',
        sure: 'found',
      },
      SINCE,
    ),
    toZeroMmHg: limit('toZeroMmHg', [1, 40]),
    threeNumbersMmHg: limit('threeNumbersMmHg', [0, 40]),
    lowestSystolic: limit('lowestSystolic', [0, 90]),
    highestSystolic: limit('highestSystolic', [180, F.gaugeTopMmHg.value]),
    lowestDiastolic: limit('lowestDiastolic', [0, 60]),
    highestDiastolic: limit('highestDiastolic', [100, F.gaugeTopMmHg.value]),
    smallestPulsePressureMmHg: limit('smallestPulsePressureMmHg', [0, 30]),
    largestPulsePressureMmHg: limit('largestPulsePressureMmHg', [60, 200]),
  },
  agree,
};

type Limited = Exclude<keyof DeflationRules, 'perBeatWhen' | 'gaugeReading' | 'gaugeStepMmHg'>;

function limit(id: Limited, bounds: Bounds): FieldShape<number> {
  return numberField(F[id], bounds, SIDE[id], SINCE);
}

/** Some rate of letting down must be neither too slow nor too fast. */
function agree({ slowestMmHgPerSecond, fastestMmHgPerSecond }: DeflationRules): Disagreement[] {
  if (slowestMmHgPerSecond <= fastestMmHgPerSecond) return [];
  return [{ key: 'slowestMmHgPerSecond', expected: 'not-above-fastest', figures: { fastestMmHgPerSecond } }];
}
