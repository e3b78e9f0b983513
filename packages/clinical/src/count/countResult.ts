import type { Flag } from '../contract/flag.js';
import type { Circumstances } from './circumstances.js';
import type { CountFlagCode, CountReasonCode } from './codes.js';
import type { Count } from './count.js';
import { farOutFlags } from './farOut.js';
import { type LikelyRange, likelyRange } from './likelyRange.js';
import { nextWindow } from './nextWindow.js';
import type { CountRules } from './rules.js';

/**
 * What a count says. All rates per minute, none rounded.
 *
 * `perMinute` is what was counted, never corrected; `stepPerMinute` is what one miscounted beat changes.
 * Codes of `flags`: `very-slow`, `very-fast` (adults: look at the person first), `convention-shifts-rate` (the rate lies on an excluded end of its own range),
 * `range-assumes-regular` (the rhythm was felt irregular, so the range promises nothing), `count-apex`.
 */
export type CountResult = LikelyRange & {
  readonly perMinute: number;
  readonly stepPerMinute: number;
  readonly flags: readonly Flag<CountFlagCode>[];
  readonly nextWindowSeconds: number | null;
  readonly why: readonly Flag<CountReasonCode>[];
};

/**
 * The rate of a count, the range in which a regular true rate lies, and which window to count next.
 *
 * Errors: none; a {@link Count} has been parsed.
 * Source: docs/conventions.md section 5; bedside handbook 1.3 to 1.5 and 2.2.
 *
 * @example countResult(count, UNKNOWN_CIRCUMSTANCES, DEFAULT_COUNT_RULES) // 19 in 15 s: 76, step 4, over 72 and under 80
 */
export function countResult(count: Count, circumstances: Circumstances, rules: CountRules): CountResult {
  const range = likelyRange(count);
  const perMinute = (60 * count.n) / count.windowSeconds;
  const { nextWindowSeconds, why } = nextWindow(count, circumstances, rules);
  return {
    perMinute,
    stepPerMinute: 60 / count.windowSeconds,
    ...range,
    flags: [...farOutFlags(count, circumstances, rules), ...flagsOf(count, circumstances, range, perMinute)],
    nextWindowSeconds,
    why,
  };
}

function flagsOf(
  count: Count,
  circumstances: Circumstances,
  range: LikelyRange,
  perMinute: number,
): Flag<CountFlagCode>[] {
  const { lowPerMinute, highPerMinute } = range;
  const flags: Flag<CountFlagCode>[] = [];
  const onLow = !range.lowIncluded && perMinute <= lowPerMinute;
  const onHigh = !range.highIncluded && perMinute >= highPerMinute;
  if (onLow || onHigh) {
    const averageShiftPerMinute = perMinute - (lowPerMinute + highPerMinute) / 2;
    const figures = { perMinute, lowPerMinute, highPerMinute, averageShiftPerMinute };
    flags.push({ code: 'convention-shifts-rate', figures });
  }
  if (circumstances.rhythmFelt === 'irregular') {
    flags.push({ code: 'range-assumes-regular', figures: { lowPerMinute, highPerMinute } });
    if (count.of === 'pulse' && circumstances.site !== 'apical')
      flags.push({ code: 'count-apex', figures: {} });
  }
  return flags;
}
