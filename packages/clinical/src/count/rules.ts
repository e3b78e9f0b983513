import type { CountClock, CountFirst } from './count.js';
import { COUNT_FIGURES as F } from './figures.js';

/**
 * The local rules of counting: the values of a protocol's `count` section. Seconds, per minute and months as the
 * names say; a `fullMinuteWhen...` switch asks for `fullWindowSeconds` after a shorter count.
 */
export type CountRules = {
  /** Windows offered, rising. */
  readonly pulseWindowsSeconds: readonly number[];
  readonly breathsWindowsSeconds: readonly number[];
  /** The one proposed first. */
  readonly pulseWindowSeconds: number;
  readonly breathsWindowSeconds: number;
  readonly clock: CountClock;
  readonly first: CountFirst;
  readonly longestWindowSeconds: number;
  readonly ceilingPerMinute: number;
  readonly fullWindowSeconds: number;
  readonly slowPerMinute: number;
  readonly fastPerMinute: number;
  readonly barredAbovePerMinute: number;
  readonly barredWhenFastSeconds: number;
  readonly youngUnderMonths: number;
  readonly disagreementPerMinute: number;
  /** Whether a very slow or very fast adult rate is flagged: look at the person first. */
  readonly lookFirstWhenFarOut: boolean;
  readonly verySlowPulsePerMinute: number;
  readonly veryFastPulsePerMinute: number;
  readonly verySlowBreathsPerMinute: number;
  readonly veryFastBreathsPerMinute: number;
  readonly adultFromMonths: number;
  readonly fullMinuteWhenSlowOrFast: boolean;
  readonly fullMinuteWhenIrregular: boolean;
  readonly fullMinuteWhenWeak: boolean;
  readonly fullMinuteWhenFirstOnPerson: boolean;
  readonly fullMinuteWhenYoung: boolean;
  readonly fullMinuteWhenApical: boolean;
  readonly fullMinuteWhenHeartRateDrug: boolean;
  readonly fullMinuteWhenDisagreeing: boolean;
  /** Whether regular breaths may be counted for `breathsShortWindowSeconds`. */
  readonly breathsShortAllowed: boolean;
  readonly breathsShortWindowSeconds: number;
};

/** What applies where no protocol was chosen: the handbook's rules, all of them on, and the project's conventions. */
export const DEFAULT_COUNT_RULES: CountRules = {
  pulseWindowsSeconds: [F.barredWhenFastSeconds.value, F.pulseWindowSeconds.value, F.fullWindowSeconds.value],
  breathsWindowsSeconds: [F.breathsWindowSeconds.value],
  pulseWindowSeconds: F.pulseWindowSeconds.value,
  breathsWindowSeconds: F.breathsWindowSeconds.value,
  clock: 'any',
  first: 1,
  longestWindowSeconds: F.longestWindowSeconds.value,
  ceilingPerMinute: F.ceilingPerMinute.value,
  fullWindowSeconds: F.fullWindowSeconds.value,
  slowPerMinute: F.slowPerMinute.value,
  fastPerMinute: F.fastPerMinute.value,
  barredAbovePerMinute: F.barredAbovePerMinute.value,
  barredWhenFastSeconds: F.barredWhenFastSeconds.value,
  youngUnderMonths: F.youngUnderMonths.value,
  disagreementPerMinute: F.disagreementPerMinute.value,
  lookFirstWhenFarOut: true,
  verySlowPulsePerMinute: F.verySlowPulsePerMinute.value,
  veryFastPulsePerMinute: F.veryFastPulsePerMinute.value,
  verySlowBreathsPerMinute: F.verySlowBreathsPerMinute.value,
  veryFastBreathsPerMinute: F.veryFastBreathsPerMinute.value,
  adultFromMonths: F.adultFromMonths.value,
  fullMinuteWhenSlowOrFast: true,
  fullMinuteWhenIrregular: true,
  fullMinuteWhenWeak: true,
  fullMinuteWhenFirstOnPerson: true,
  fullMinuteWhenYoung: true,
  fullMinuteWhenApical: true,
  fullMinuteWhenHeartRateDrug: true,
  fullMinuteWhenDisagreeing: true,
  breathsShortAllowed: false,
  breathsShortWindowSeconds: F.breathsShortWindowSeconds.value,
};
