import type { Figure, Sureness } from '../contract/figure.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { ROUND_FIGURES as F } from './figures.js';
import { EMERGENCY_FEATURES, type EmergencyFeature } from './knownSigns.js';
import type { PressureLimit, SevereLimits } from './severe.js';

/** A severe pressure with one emergency feature. */
export type SevereWith = `severe-with-${EmergencyFeature}`;

const SEVERE_WITH = EMERGENCY_FEATURES.map((feature): SevereWith => `severe-with-${feature}`);

/** What somebody must act on at once, in the order in which it is told. */
export const ACT_NOW_IDS = [
  'unresponsive',
  ...SEVERE_WITH,
  'severe-in-pregnancy',
  'severe-after-birth',
  'child-crisis',
  'child-high-with-feature',
  'child-hypotension',
  'very-low-pressure',
  'early-warning-high',
  'early-warning-medium',
  'early-warning-single',
  'not-alert',
  'very-slow-pulse',
  'child-slow-pulse',
  'very-fast-pulse',
  'very-slow-breathing',
  'very-fast-breathing',
  'low-oxygen',
  'low-oxygen-scale-2',
  'child-low-oxygen',
] as const;
export type ActNowId = (typeof ACT_NOW_IDS)[number];

/**
 * When somebody must act at once: the values of a protocol's `actNow` section. Pressures mmHg, rates per minute,
 * saturation percent, totals points. A condition is on unless the place switched it off by name.
 */
export type ActNowRules = {
  readonly switchedOff: readonly ActNowId[];
  readonly severeSystolic: PressureLimit;
  readonly severeDiastolic: PressureLimit;
  readonly pregnancySystolic: number;
  readonly pregnancyDiastolic: number;
  readonly weeksAfterBirth: number;
  readonly childAboveP95MmHg: number;
  readonly adolescentSystolic: number;
  readonly adolescentDiastolic: number;
  readonly newbornLowSystolic: number;
  readonly infantLowSystolic: number;
  readonly childLowBaseSystolic: number;
  readonly olderChildLowSystolic: number;
  readonly veryLowSystolic: number;
  readonly highTotal: number;
  readonly mediumTotal: number;
  readonly singlePoints: number;
  readonly verySlowPulsePerMinute: number;
  readonly childSlowPulsePerMinute: number;
  readonly veryFastPulsePerMinute: number;
  readonly verySlowBreathsPerMinute: number;
  readonly veryFastBreathsPerMinute: number;
  readonly lowOxygenPercent: number;
  readonly lowOxygenScale2Percent: number;
  readonly childLowOxygenPercent: number;
};

export type ActNowLimit = Exclude<keyof ActNowRules, 'switchedOff'>;

/** Where a limit comes from, and whether the place set it itself. */
export type LimitOrigin = { readonly source: string; readonly sure: Sureness; readonly isLocal: boolean };
export type ActNowOrigins = { readonly [Id in ActNowLimit]: LimitOrigin };

export const DEFAULT_ACT_NOW_RULES: ActNowRules = {
  switchedOff: [],
  severeSystolic: { comparison: SIDE.severeSystolic, limit: F.severeSystolic.value },
  severeDiastolic: { comparison: SIDE.severeDiastolic, limit: F.severeDiastolic.value },
  pregnancySystolic: F.pregnancySystolic.value,
  pregnancyDiastolic: F.pregnancyDiastolic.value,
  weeksAfterBirth: F.weeksAfterBirth.value,
  childAboveP95MmHg: F.childAboveP95MmHg.value,
  adolescentSystolic: F.adolescentSystolic.value,
  adolescentDiastolic: F.adolescentDiastolic.value,
  newbornLowSystolic: F.newbornLowSystolic.value,
  infantLowSystolic: F.infantLowSystolic.value,
  childLowBaseSystolic: F.childLowBaseSystolic.value,
  olderChildLowSystolic: F.olderChildLowSystolic.value,
  veryLowSystolic: F.veryLowSystolic.value,
  highTotal: F.highTotal.value,
  mediumTotal: F.mediumTotal.value,
  singlePoints: F.singlePoints.value,
  verySlowPulsePerMinute: F.verySlowPulsePerMinute.value,
  childSlowPulsePerMinute: F.childSlowPulsePerMinute.value,
  veryFastPulsePerMinute: F.veryFastPulsePerMinute.value,
  verySlowBreathsPerMinute: F.verySlowBreathsPerMinute.value,
  veryFastBreathsPerMinute: F.veryFastBreathsPerMinute.value,
  lowOxygenPercent: F.lowOxygenPercent.value,
  lowOxygenScale2Percent: F.lowOxygenScale2Percent.value,
  childLowOxygenPercent: F.childLowOxygenPercent.value,
};

export const ACT_NOW_LIMITS = (Object.keys(DEFAULT_ACT_NOW_RULES) as (keyof ActNowRules)[]).filter(
  (key): key is ActNowLimit => key !== 'switchedOff',
);

/** Where the limits come from as long as nobody chose others. */
export const DEFAULT_ACT_NOW_ORIGINS = Object.fromEntries(
  ACT_NOW_LIMITS.map((id) => {
    const { source, sure }: Figure = F[id];
    return [id, { source, sure, isLocal: false }];
  }),
) as ActNowOrigins;

/** The limits of a severe pressure under these rules. */
export function severeLimits({ severeSystolic, severeDiastolic }: ActNowRules): SevereLimits {
  return { systolic: severeSystolic, diastolic: severeDiastolic };
}

/** The limits of a severe pressure in pregnancy and the weeks after it. */
export function pregnancyLimits({ pregnancySystolic, pregnancyDiastolic }: ActNowRules): SevereLimits {
  return {
    systolic: { comparison: SIDE.pregnancySystolic, limit: pregnancySystolic },
    diastolic: { comparison: SIDE.pregnancyDiastolic, limit: pregnancyDiastolic },
  };
}
