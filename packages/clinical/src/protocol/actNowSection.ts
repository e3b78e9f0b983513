import { type ActNowNumber, ACT_NOW_LIMITS as LIMITS } from '../round/actNowLimits.js';
import { type ActNowRules, DEFAULT_ACT_NOW_RULES as RULES, SWITCHABLE_IDS } from '../round/actNowRules.js';
import { type Bounds, choicesField, numberField } from './fieldShapes.js';
import type { Disagreement, FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/**
 * When somebody must act at once. Everything is on unless it is switched off by name, so that a condition that comes
 * with a later program is on in a protocol that does not know it. The bounds of a local value are this project's.
 */
export const ACT_NOW_SECTION: Section<ActNowRules> = {
  fields: {
    switchedOff: choicesField(
      SWITCHABLE_IDS,
      RULES.switchedOff,
      {
        meaning: 'conditions that do not alert here; none unless the place says so',
        source: 'a dangerous part always alerts; the local protocol wins (bedside handbook 7.5)',
        sure: 'decision',
      },
      SINCE,
    ),
    severeSystolic: severe('severeSystolic', [150, 200]),
    severeDiastolic: severe('severeDiastolic', [100, 130]),
    pregnancySystolic: limit('pregnancySystolic', [140, 180]),
    pregnancyDiastolic: limit('pregnancyDiastolic', [90, 120]),
    weeksAfterBirth: limit('weeksAfterBirth', [1, 26]),
    childAboveP95MmHg: limit('childAboveP95MmHg', [5, 40]),
    adolescentSystolic: limit('adolescentSystolic', [140, 190]),
    adolescentDiastolic: limit('adolescentDiastolic', [90, 130]),
    newbornLowSystolic: limit('newbornLowSystolic', [40, 80]),
    infantLowSystolic: limit('infantLowSystolic', [50, 90]),
    childLowBaseSystolic: limit('childLowBaseSystolic', [60, 90]),
    olderChildLowSystolic: limit('olderChildLowSystolic', [80, 110]),
    veryLowSystolic: limit('veryLowSystolic', [70, 110]),
    highTotal: limit('highTotal', [4, 12]),
    mediumTotal: limit('mediumTotal', [3, 10]),
    singlePoints: limit('singlePoints', [2, 3]),
    verySlowPulsePerMinute: limit('verySlowPulsePerMinute', [25, 60]),
    childSlowPulsePerMinute: limit('childSlowPulsePerMinute', [40, 100]),
    veryFastPulsePerMinute: limit('veryFastPulsePerMinute', [100, 180]),
    verySlowBreathsPerMinute: limit('verySlowBreathsPerMinute', [4, 12]),
    veryFastBreathsPerMinute: limit('veryFastBreathsPerMinute', [20, 40]),
    lowOxygenPercent: limit('lowOxygenPercent', [80, 96]),
    lowOxygenScale2Percent: limit('lowOxygenScale2Percent', [75, 92]),
    childLowOxygenPercent: limit('childLowOxygenPercent', [85, 96]),
  },
  agree,
};

function limit(id: ActNowNumber, bounds: Bounds): FieldShape<number> {
  const { figure, comparison } = LIMITS[id];
  return numberField(figure, bounds, comparison, SINCE);
}

/** A limit of which guidelines disagree whether the number itself is severe. */
function severe(
  id: 'severeSystolic' | 'severeDiastolic',
  [low, high]: Bounds,
): FieldShape<ActNowRules[typeof id]> {
  const { unit, meaning, source, sure } = LIMITS[id].figure;
  const comparisons = ['>=', '>'] as const;
  const value = RULES[id];
  return {
    kind: 'limit',
    low,
    high,
    comparisons,
    orNone: false,
    value,
    unit,
    meaning,
    source,
    sure,
    since: SINCE,
  };
}

/** A medium total lies below a high one. */
function agree({ mediumTotal, highTotal }: ActNowRules): Disagreement[] {
  if (mediumTotal < highTotal) return [];
  return [{ key: 'mediumTotal', expected: 'below-high-total', figures: { highTotal } }];
}
