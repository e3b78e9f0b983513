import type { Sureness } from '../contract/figure.js';
import {
  type ActNowLimit,
  type ActNowLimitFigure,
  type ActNowNumber,
  ACT_NOW_LIMITS as LIMITS,
} from './actNowLimits.js';
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
  'unwell-upright',
  'early-warning-total-high',
  'early-warning-total-medium',
  'early-warning-single-part',
  'consciousness-changed',
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

/** A severe pressure that somebody measured away from the clinic, of whom nothing more is known. */
export const SEVERE_AWAY = 'severe-away';

/** Every condition that a place can switch off: those of a round and that of a series. */
export const SWITCHABLE_IDS = [...ACT_NOW_IDS, SEVERE_AWAY] as const;
export type SwitchableId = (typeof SWITCHABLE_IDS)[number];

/**
 * When somebody must act at once: the values of a protocol's `actNow` section. Pressures mmHg, rates per minute,
 * saturation percent, totals points. A condition is on unless the place switched it off by name.
 */
export type ActNowRules = {
  readonly switchedOff: readonly SwitchableId[];
  readonly severeSystolic: PressureLimit;
  readonly severeDiastolic: PressureLimit;
} & { readonly [Id in ActNowNumber]: number };

/** Where a limit comes from, and whether the place set it itself. */
export type LimitOrigin = { readonly source: string; readonly sure: Sureness; readonly isLocal: boolean };
export type ActNowOrigins = { readonly [Id in ActNowLimit]: LimitOrigin };

export const ACT_NOW_LIMIT_IDS = Object.keys(LIMITS) as readonly ActNowLimit[];

const { severeSystolic, severeDiastolic, ...NUMBERS } = LIMITS;

export const DEFAULT_ACT_NOW_RULES: ActNowRules = {
  switchedOff: [],
  severeSystolic: limitOf(severeSystolic),
  severeDiastolic: limitOf(severeDiastolic),
  ...(Object.fromEntries(Object.entries(NUMBERS).map(([id, { figure }]) => [id, figure.value])) as Readonly<
    Record<ActNowNumber, number>
  >),
};

/** Where the limits come from as long as nobody chose others. */
export const DEFAULT_ACT_NOW_ORIGINS = Object.fromEntries(
  Object.entries(LIMITS).map(([id, { figure }]) => {
    const { source, sure } = figure;
    return [id, { source, sure, isLocal: false }];
  }),
) as ActNowOrigins;

/** The limits of a severe pressure under these rules. */
export function severeLimits(rules: ActNowRules): SevereLimits {
  return { systolic: rules.severeSystolic, diastolic: rules.severeDiastolic };
}

/** The limits of a severe pressure in pregnancy and the weeks after it. */
export function pregnancyLimits(rules: ActNowRules): SevereLimits {
  return {
    systolic: { comparison: LIMITS.pregnancySystolic.comparison, limit: rules.pregnancySystolic },
    diastolic: { comparison: LIMITS.pregnancyDiastolic.comparison, limit: rules.pregnancyDiastolic },
  };
}

function limitOf({ figure, comparison }: ActNowLimitFigure): PressureLimit {
  return { comparison, limit: figure.value };
}
