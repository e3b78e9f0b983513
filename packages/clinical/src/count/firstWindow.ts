import type { Flag } from '../contract/flag.js';
import type { Circumstances } from './circumstances.js';
import type { CountReasonCode } from './codes.js';
import type { CountOf } from './count.js';
import { fullMinuteReasons } from './nextWindow.js';
import type { CountRules } from './rules.js';

/** Which window to offer first (seconds), and every reason why it is not the usual one. */
export type FirstWindow = {
  readonly windowSeconds: number;
  readonly why: readonly Flag<CountReasonCode>[];
};

/**
 * The window to offer before anything is counted: the usual one of the rules, or the full minute where what is known of
 * the person asks for it already, so that nobody counts twice. Breaths are offered what their rules say.
 *
 * Codes of `why`: `irregular-known`, `irregular`, `weak`, `apical`, `heart-rate-drug`, `first-set`, `young`.
 * Source: bedside handbook 1.5 and 2.1.
 *
 * @param hasIrregularRhythm whether an irregular rhythm is a dated fact of the person
 */
export function firstWindow(
  of: CountOf,
  circumstances: Circumstances,
  hasIrregularRhythm: boolean,
  rules: CountRules,
): FirstWindow {
  const usual = of === 'pulse' ? rules.pulseWindowSeconds : rules.breathsWindowSeconds;
  const isKnown = of === 'pulse' && rules.fullMinuteWhenIrregular && hasIrregularRhythm;
  const { fullWindowSeconds } = rules;
  const why: Flag<CountReasonCode>[] = [
    ...(isKnown ? [{ code: 'irregular-known' as const, figures: { fullWindowSeconds } }] : []),
    ...fullMinuteReasons(of, circumstances, rules),
  ];
  if (why.length === 0 || usual >= fullWindowSeconds) return { windowSeconds: usual, why: [] };
  return { windowSeconds: fullWindowSeconds, why };
}
