import { CHILD_COMPARISONS } from '../child/comparisons.js';
import { lowSystolicLimit } from '../child/lowSystolic.js';
import type { Sureness } from '../contract/figure.js';
import { roundTo } from '../contract/rounding.js';
import { passes } from '../contract/threshold.js';
import { SCORE_FIGURES } from '../score/figures.js';
import { type ActNowLimit, type ActNowNumber, ACT_NOW_LIMITS as LIMITS } from './actNowLimits.js';
import { type ActNowId, type ActNowRules, pregnancyLimits, severeLimits } from './actNowRules.js';
import { EMERGENCY_FEATURES, type EmergencyFeature, type KnownSigns } from './knownSigns.js';
import { isPressureSevere } from './severe.js';
import { isChild, isScoredAsAdult, isSlowPulseChild, isSoonAfterBirth } from './whoseLimits.js';

type Figures = Readonly<Record<string, number>>;

/**
 * One condition that somebody must act on at once: what it is judged by, the limits it goes by, where the rest of it
 * comes from (null where its limits are all of it), and when it holds: then the figures of its sentence, else null.
 */
export type ActNowCondition = {
  readonly id: ActNowId;
  readonly needs: readonly (keyof KnownSigns)[];
  readonly limits: readonly ActNowLimit[];
  readonly own: { readonly source: string; readonly sure: Sureness } | null;
  readonly holds: (known: KnownSigns, rules: ActNowRules) => Figures | null;
};

const SEVERE = 'bedside handbook 3.16';
const SCORE = { source: SCORE_FIGURES.ewMostPoints.source, sure: SCORE_FIGURES.ewMostPoints.sure } as const;
const PRESSURE = ['systolic', 'diastolic'] as const;

/** Every condition, in the order in which it is told. Source: bedside handbook 1.7, 3.14, 3.16, 3.17, 4.2, 4.3 and 5.2. */
export const ACT_NOW_CONDITIONS: readonly ActNowCondition[] = [
  {
    id: 'unresponsive',
    needs: ['consciousness'],
    limits: [],
    own: SCORE,
    holds: ({ consciousness }) => (consciousness === 'unresponsive' ? {} : null),
  },
  ...EMERGENCY_FEATURES.map(severeWith),
  {
    id: 'severe-in-pregnancy',
    needs: [...PRESSURE, 'pregnant'],
    limits: ['pregnancySystolic', 'pregnancyDiastolic'],
    own: null,
    holds: (known, rules) =>
      known.pregnant === true && isPressureSevere(known, pregnancyLimits(rules)) ? pressureOf(known) : null,
  },
  {
    id: 'severe-after-birth',
    needs: [...PRESSURE, 'weeksAfterBirth'],
    limits: ['pregnancySystolic', 'pregnancyDiastolic', 'weeksAfterBirth'],
    own: null,
    holds: (known, rules) =>
      isSoonAfterBirth(known, rules) && isPressureSevere(known, pregnancyLimits(rules))
        ? pressureOf(known)
        : null,
  },
  {
    id: 'child-crisis',
    needs: [...PRESSURE, 'ageMonths', 'p95'],
    limits: ['childAboveP95MmHg', 'adolescentSystolic', 'adolescentDiastolic'],
    own: null,
    holds: (known, rules) =>
      isChild(known) && (isFarAboveP95(known, rules) || isOverAdolescent(known, rules))
        ? pressureOf(known)
        : null,
  },
  {
    id: 'child-high-with-feature',
    needs: [...PRESSURE, 'ageMonths', 'p95', 'features', 'consciousness'],
    limits: [],
    own: { source: SEVERE, sure: 'memory' },
    holds: (known) =>
      isChild(known) && isFromP95(known) && EMERGENCY_FEATURES.some((one) => hasFeature(known, one))
        ? pressureOf(known)
        : null,
  },
  {
    id: 'child-hypotension',
    needs: ['systolic', 'ageMonths'],
    limits: ['newbornLowSystolic', 'infantLowSystolic', 'childLowBaseSystolic', 'olderChildLowSystolic'],
    own: null,
    holds({ systolic, ageMonths }, rules) {
      if (systolic === null || ageMonths === null || isScoredAsAdult({ ageMonths })) return null;
      const lowSystolic = lowSystolicLimit(ageMonths, rules).limitMmHg;
      return isAt(systolic, 'childLowBaseSystolic', lowSystolic) ? { systolic, lowSystolic } : null;
    },
  },
  oneNumber('very-low-pressure', 'systolic', 'veryLowSystolic', isScoredAsAdult),
  {
    id: 'unwell-upright',
    needs: [...PRESSURE, 'isUnwellUpright'],
    limits: [],
    own: { source: 'bedside handbook 3.14', sure: 'practice' },
    holds: (known) => (known.isUnwellUpright === true ? pressureOf(known) : null),
  },
  {
    id: 'early-warning-total-high',
    needs: ['earlyWarning'],
    limits: ['highTotal'],
    own: null,
    holds: ({ earlyWarning }, { highTotal }) =>
      earlyWarning !== null && isAt(pointsOf(earlyWarning), 'highTotal', highTotal)
        ? totalFigures(earlyWarning)
        : null,
  },
  {
    id: 'early-warning-total-medium',
    needs: ['earlyWarning'],
    limits: ['mediumTotal', 'highTotal'],
    own: null,
    holds: ({ earlyWarning }, { highTotal, mediumTotal }) =>
      earlyWarning !== null &&
      isAt(pointsOf(earlyWarning), 'mediumTotal', mediumTotal) &&
      !isAt(pointsOf(earlyWarning), 'highTotal', highTotal)
        ? totalFigures(earlyWarning)
        : null,
  },
  {
    id: 'early-warning-single-part',
    needs: ['earlyWarning'],
    limits: ['singlePoints'],
    own: null,
    holds({ earlyWarning }, { singlePoints }) {
      const alarming = Object.entries(earlyWarning?.parts ?? {}).flatMap(([part, points]) =>
        points !== null && isAt(points, 'singlePoints', singlePoints) ? [[part, points] as const] : [],
      );
      return alarming.length === 0 ? null : Object.fromEntries(alarming);
    },
  },
  {
    id: 'consciousness-changed',
    needs: ['consciousness'],
    limits: [],
    own: SCORE,
    holds: ({ consciousness }) =>
      consciousness === 'confusion' || consciousness === 'voice' || consciousness === 'pain' ? {} : null,
  },
  oneNumber(
    'very-slow-pulse',
    'pulsePerMinute',
    'verySlowPulsePerMinute',
    (known) => !isSlowPulseChild(known),
  ),
  oneNumber('child-slow-pulse', 'pulsePerMinute', 'childSlowPulsePerMinute', isSlowPulseChild),
  oneNumber('very-fast-pulse', 'pulsePerMinute', 'veryFastPulsePerMinute', isScoredAsAdult),
  // At any age: a child at rest breathes faster than an adult (bedside handbook 2.4).
  oneNumber('very-slow-breathing', 'breathsPerMinute', 'verySlowBreathsPerMinute', () => true, []),
  oneNumber('very-fast-breathing', 'breathsPerMinute', 'veryFastBreathsPerMinute', isScoredAsAdult),
  oneNumber(
    'low-oxygen',
    'percentOxygen',
    'lowOxygenPercent',
    (known) => isScoredAsAdult(known) && known.scale !== 2,
    ['ageMonths', 'scale'],
  ),
  oneNumber(
    'low-oxygen-scale-2',
    'percentOxygen',
    'lowOxygenScale2Percent',
    (known) => isScoredAsAdult(known) && known.scale === 2,
    ['ageMonths', 'scale'],
  ),
  oneNumber('child-low-oxygen', 'percentOxygen', 'childLowOxygenPercent', (known) => !isScoredAsAdult(known)),
];

/** Whether a value is on the side of a limit on which somebody acts. */
function isAt(value: number, limit: ActNowNumber, at: number): boolean {
  return passes(value, LIMITS[limit].comparison, at);
}

type OneNumber = 'systolic' | 'pulsePerMinute' | 'breathsPerMinute' | 'percentOxygen';

/**
 * A condition of one number against one limit, for those whom it concerns `by` what else is known of them. It holds for
 * the number itself or as it is shown: a rate of 8.4 that stands there as 8 is not kept from a limit of 8.
 */
function oneNumber(
  id: ActNowId,
  key: OneNumber,
  limit: ActNowNumber,
  concerns: (known: KnownSigns) => boolean,
  by: readonly (keyof KnownSigns)[] = ['ageMonths'],
): ActNowCondition {
  return {
    id,
    needs: [key, ...by],
    limits: [limit],
    own: null,
    holds(known, rules) {
      const value = known[key];
      if (value === null || !concerns(known)) return null;
      const reached = [value, roundTo(value, 0)].find((one) => isAt(one, limit, rules[limit]));
      return reached === undefined ? null : { [key]: reached, [limit]: rules[limit] };
    },
  };
}

function severeWith(feature: EmergencyFeature): ActNowCondition {
  return {
    id: `severe-with-${feature}`,
    needs: [...PRESSURE, 'features', ...(feature === 'confusion' ? (['consciousness'] as const) : [])],
    limits: ['severeSystolic', 'severeDiastolic'],
    own: { source: SEVERE, sure: 'memory' },
    holds: (known, rules) =>
      hasFeature(known, feature) && isPressureSevere(known, severeLimits(rules)) ? pressureOf(known) : null,
  };
}

/** New confusion counts whether it was asked for or found as the level of consciousness. */
function hasFeature({ features, consciousness }: KnownSigns, feature: EmergencyFeature): boolean {
  const isFound = feature === 'confusion' && consciousness === 'confusion';
  return isFound || (features ?? []).includes(feature);
}

/** The parts of the pressure that are known. */
function pressureOf({ systolic, diastolic }: KnownSigns): Figures {
  return {
    ...(systolic === null ? {} : { systolic }),
    ...(diastolic === null ? {} : { diastolic }),
  };
}

function isFarAboveP95(
  { systolic, diastolic, p95 }: KnownSigns,
  { childAboveP95MmHg }: ActNowRules,
): boolean {
  const isFar = (value: number | null, limit: number) =>
    value !== null && isAt(value - limit, 'childAboveP95MmHg', childAboveP95MmHg);
  return p95 !== null && (isFar(systolic, p95.systolic) || isFar(diastolic, p95.diastolic));
}

/** The limits of an adolescent hold for a younger child too, whose crisis begins below them. */
function isOverAdolescent(known: KnownSigns, rules: ActNowRules): boolean {
  return isPressureSevere(known, {
    systolic: { comparison: LIMITS.adolescentSystolic.comparison, limit: rules.adolescentSystolic },
    diastolic: { comparison: LIMITS.adolescentDiastolic.comparison, limit: rules.adolescentDiastolic },
  });
}

/** Whether either part is at or above the 95th centile of the child. */
export function isFromP95({ systolic, diastolic, p95 }: KnownSigns): boolean {
  const isHigh = (value: number | null, limit: number) =>
    value !== null && passes(value, CHILD_COMPARISONS.p95Z, limit);
  return p95 !== null && (isHigh(systolic, p95.systolic) || isHigh(diastolic, p95.diastolic));
}

/** The points there are at least: the total, or the sum of the parts that are known. */
function pointsOf({ total, atLeast }: { readonly total: number | null; readonly atLeast: number }): number {
  return total ?? atLeast;
}

function totalFigures({
  total,
  atLeast,
}: {
  readonly total: number | null;
  readonly atLeast: number;
}): Figures {
  return total === null ? { atLeast } : { total };
}
