import type { InForce } from '../content/inForce.js';
import { isSeriesRule, NOT_BY_HAND, presetOfSeries, valueOfSeries } from '../content/seriesMade.js';
import type { Entry } from '../entry/entry.js';
import { firstDifference } from './nearly.js';
import type { Recomputed } from './recompute.js';

/** Makes the value of a series again from its readings, and says what differs. */
export function recomputeSeries(
  { content }: Extract<Entry, { readonly kind: 'series' }>,
  inForce: (presetVersion: string | null) => InForce | null,
): Recomputed {
  const { computedBy, value, ...evidence } = content;
  const { rule, preset, presetVersion } = computedBy;
  const rules = inForce(presetVersion);
  if (rules === null) return { state: 'unknown-protocol' };
  const wanted = presetOfSeries(evidence.of, rules);
  if (preset !== wanted) {
    return { state: 'differs', at: '/content/computedBy/preset', kept: preset, computed: wanted };
  }
  if (!isSeriesRule(evidence.of, rule)) return { state: 'unknown-rule' };
  const computed = valueOfSeries(evidence, rules, NOT_BY_HAND, rule);
  const at = firstDifference(value, computed);
  return at === null
    ? { state: 'same' }
    : { state: 'differs', at: `/content/value${at}`, kept: value, computed };
}
