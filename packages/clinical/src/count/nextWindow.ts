import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import type { Circumstances } from './circumstances.js';
import type { CountReasonCode } from './codes.js';
import { COUNT_COMPARISONS as SIDE } from './comparisons.js';
import type { Count, CountOf } from './count.js';
import type { CountRules } from './rules.js';

/** Which window to count next (seconds), or null if the count stands, and every reason for it. */
export type NextWindow = {
  readonly nextWindowSeconds: number | null;
  readonly why: readonly Flag<CountReasonCode>[];
};

type Reason = { readonly seconds: number; readonly flag: Flag<CountReasonCode> };

/**
 * Whether the count needs a longer one after it. A count of a full minute stands. Where nothing at all was
 * counted no window is asked for (why `none-counted`): the person comes first, the watch later.
 *
 * Codes of `why`: `none-counted`, `shorter-than-offered` (than any window of the protocol), `fast-for-window`, `slow-on-short-count`, `fast-on-short-count`,
 * `breaths-full-minute`, `irregular`, `weak`, `first-set`, `young`, `apical`, `heart-rate-drug`, `disagrees`.
 * Source: bedside handbook 1.5 and 2.1; each number and its sureness in the protocol's `count` section.
 */
export function nextWindow(count: Count, circumstances: Circumstances, rules: CountRules): NextWindow {
  const { n, windowSeconds } = count;
  if (n === 0)
    return { nextWindowSeconds: null, why: [{ code: 'none-counted', figures: { windowSeconds } }] };
  const reasons = [
    ...(count.of === 'pulse'
      ? pulseReasons(count, circumstances, rules)
      : breathsReasons(count, circumstances, rules)),
    ...sharedReasons(circumstances, rules),
    ...(count.of === 'pulse' ? disagreement(count, circumstances, rules) : []),
  ].filter(({ seconds }) => windowSeconds < seconds);
  if (reasons.length === 0) return { nextWindowSeconds: null, why: [] };
  return {
    nextWindowSeconds: Math.max(...reasons.map(({ seconds }) => seconds)),
    why: reasons.map(({ flag }) => flag),
  };
}

function pulseReasons(count: Count, circumstances: Circumstances, rules: CountRules): Reason[] {
  const { windowSeconds } = count;
  const perMinute = settled((60 * count.n) / windowSeconds);
  const { barredAbovePerMinute, fastPerMinute, slowPerMinute } = rules;
  const reasons: Reason[] = [];
  const shortestWindowSeconds = Math.min(...rules.pulseWindowsSeconds);
  if (windowSeconds < shortestWindowSeconds) {
    const figures = { windowSeconds, shortestWindowSeconds };
    reasons.push({ seconds: shortestWindowSeconds, flag: { code: 'shorter-than-offered', figures } });
  }
  const isFast = passes(perMinute, SIDE.fastPerMinute, fastPerMinute);
  const isSlow = passes(perMinute, SIDE.slowPerMinute, slowPerMinute);
  const isBarred =
    passes(perMinute, SIDE.barredAbovePerMinute, barredAbovePerMinute) &&
    passes(windowSeconds, SIDE.barredWhenFastSeconds, rules.barredWhenFastSeconds);
  if (isBarred) {
    const figures = { perMinute, fastPerMinute: barredAbovePerMinute, windowSeconds };
    reasons.push({ seconds: longerThanBarred(rules), flag: { code: 'fast-for-window', figures } });
  }
  if (rules.fullMinuteWhenSlowOrFast && isFast) {
    reasons.push(fullMinute(rules, 'fast-on-short-count', { perMinute, fastPerMinute, windowSeconds }));
  }
  if (rules.fullMinuteWhenSlowOrFast && isSlow) {
    reasons.push(fullMinute(rules, 'slow-on-short-count', { perMinute, slowPerMinute, windowSeconds }));
  }
  return [...reasons, ...feltReasons(circumstances, rules)];
}

/** What of a pulse asks for a full minute whatever its rate. */
function feltReasons(circumstances: Circumstances, rules: CountRules): Reason[] {
  const reasons: Reason[] = [];
  if (rules.fullMinuteWhenIrregular && circumstances.rhythmFelt === 'irregular') {
    reasons.push(fullMinute(rules, 'irregular'));
  }
  if (rules.fullMinuteWhenWeak && circumstances.strength === 'weak') reasons.push(fullMinute(rules, 'weak'));
  if (rules.fullMinuteWhenApical && circumstances.site === 'apical')
    reasons.push(fullMinute(rules, 'apical'));
  if (rules.fullMinuteWhenHeartRateDrug && circumstances.heartRateDrug === true) {
    reasons.push(fullMinute(rules, 'heart-rate-drug'));
  }
  return reasons;
}

/** Every reason for a full minute that is known before anything is counted. */
export function fullMinuteReasons(
  of: CountOf,
  circumstances: Circumstances,
  rules: CountRules,
): Flag<CountReasonCode>[] {
  const reasons = [
    ...(of === 'pulse' ? feltReasons(circumstances, rules) : []),
    ...sharedReasons(circumstances, rules),
  ];
  return reasons.map(({ flag }) => flag);
}

/** Breaths: a full minute, unless they are regular and the local protocol allows a shorter window. */
function breathsReasons(count: Count, { rhythmFelt }: Circumstances, rules: CountRules): Reason[] {
  const longEnough = passes(
    count.windowSeconds,
    SIDE.breathsShortWindowSeconds,
    rules.breathsShortWindowSeconds,
  );
  if (rules.breathsShortAllowed && longEnough && rhythmFelt === 'regular') return [];
  return [fullMinute(rules, 'breaths-full-minute', { windowSeconds: count.windowSeconds })];
}

function sharedReasons(circumstances: Circumstances, rules: CountRules): Reason[] {
  const { ageMonths } = circumstances;
  const { youngUnderMonths } = rules;
  const reasons: Reason[] = [];
  if (rules.fullMinuteWhenFirstOnPerson && circumstances.firstOnPerson === true) {
    reasons.push(fullMinute(rules, 'first-set'));
  }
  const isYoung = ageMonths !== null && passes(ageMonths, SIDE.youngUnderMonths, youngUnderMonths);
  if (rules.fullMinuteWhenYoung && isYoung) {
    reasons.push(fullMinute(rules, 'young', { ageMonths, youngUnderMonths }));
  }
  return reasons;
}

/**
 * A pulse unlike the rate before it or the one on a display, each told by its own figure; the limit is one of pulses and
 * says nothing of breaths.
 */
function disagreement(
  { n, windowSeconds }: Count,
  { previousPerMinute, devicePerMinute = null }: Circumstances,
  rules: CountRules,
): Reason[] {
  if (!rules.fullMinuteWhenDisagreeing) return [];
  const { disagreementPerMinute } = rules;
  const perMinute = settled((60 * n) / windowSeconds);
  return Object.entries({ previousPerMinute, devicePerMinute }).flatMap(([key, other]) => {
    if (other === null) return [];
    const differencePerMinute = settled(Math.abs(perMinute - other));
    if (!passes(differencePerMinute, SIDE.disagreementPerMinute, disagreementPerMinute)) return [];
    const figures = { perMinute, [key]: other, differencePerMinute, disagreementPerMinute };
    return [fullMinute(rules, 'disagrees', figures)];
  });
}

function fullMinute(
  { fullWindowSeconds }: CountRules,
  code: CountReasonCode,
  figures: Flag['figures'] = {},
): Reason {
  return { seconds: fullWindowSeconds, flag: { code, figures: { ...figures, fullWindowSeconds } } };
}

/** The shortest window offered that is longer than the barred one, and never more than a full minute. */
function longerThanBarred({
  pulseWindowsSeconds,
  barredWhenFastSeconds,
  fullWindowSeconds,
}: CountRules): number {
  const longer = pulseWindowsSeconds.filter(
    (seconds) => !passes(seconds, SIDE.barredWhenFastSeconds, barredWhenFastSeconds),
  );
  return Math.min(fullWindowSeconds, ...longer);
}
