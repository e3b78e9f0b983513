import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { COUNT_COMPARISONS } from './comparisons.js';
import { COUNT_FIGURES } from './figures.js';

/** What a reader of a deficit must know, or why there is none. */
type DeficitCode = 'not-simultaneous' | 'negative-deficit' | 'deficit-to-report' | 'deficit';

/**
 * Apical rate minus radial rate, per minute; null when it is negative, which cannot be (why `negative-deficit`:
 * a counting error, count both again).
 */
export type PulseDeficit = {
  readonly deficitPerMinute: number | null;
  readonly flags: readonly Flag<DeficitCode>[];
  readonly why: readonly Flag<DeficitCode>[];
};

/**
 * The pulse deficit: beats heard at the apex that do not reach the wrist.
 *
 * Units: per minute. `simultaneous` is whether two observers counted the same minute on one watch; if not, the
 * two counts may differ for that reason alone (flag `not-simultaneous`). Flags `deficit` (any over 0: worth
 * reporting if it repeats) and `deficit-to-report` (over the often quoted limit).
 * Source: bedside handbook 1.10.
 */
export function pulseDeficit(
  apicalPerMinute: number,
  radialPerMinute: number,
  simultaneous: boolean,
): PulseDeficit {
  const deficitPerMinute = apicalPerMinute - radialPerMinute;
  const figures = { apicalPerMinute, radialPerMinute, deficitPerMinute };
  const flags: Flag<DeficitCode>[] = simultaneous ? [] : [{ code: 'not-simultaneous', figures: {} }];
  if (deficitPerMinute < 0)
    return { deficitPerMinute: null, flags, why: [{ code: 'negative-deficit', figures }] };
  const reportAbovePerMinute = COUNT_FIGURES.deficitReportPerMinute.value;
  if (passes(deficitPerMinute, COUNT_COMPARISONS.deficitReportPerMinute, reportAbovePerMinute)) {
    flags.push({ code: 'deficit-to-report', figures: { ...figures, reportAbovePerMinute } });
  } else if (deficitPerMinute > 0) {
    flags.push({ code: 'deficit', figures });
  }
  return { deficitPerMinute, flags, why: [] };
}
