import { ROUND_RULES } from '@evenfall/clinical';
import { valueOfRound } from '../content/chartRound.js';
import type { InForce } from '../content/inForce.js';
import type { Entry } from '../entry/entry.js';
import { firstDifference } from './nearly.js';
import type { Recomputed } from './recompute.js';

/**
 * Makes again what was made of a round, from the entries that its signing names, and says what differs.
 *
 * @param entries among them those that the signing names
 * @param inForce the rules of a protocol version; null for one that is not kept here
 */
export function recomputeRound(
  entry: Entry,
  entries: readonly Entry[],
  inForce: (presetVersion: string | null) => InForce | null,
): Recomputed {
  if (entry.kind !== 'round') return { state: 'no-value' };
  const { computedBy, evidence, value, signs, protocolVersion } = entry.content;
  if (computedBy === null || evidence === null || value === null) return { state: 'no-value' };
  const { rule, preset, presetVersion } = computedBy;
  const rules = inForce(presetVersion);
  if (rules === null) return { state: 'unknown-protocol' };
  if (presetVersion !== protocolVersion) {
    return {
      state: 'differs',
      at: '/content/protocolVersion',
      kept: protocolVersion,
      computed: presetVersion,
    };
  }
  const wanted = rules.presets.readings ?? null;
  if (preset !== wanted) {
    return { state: 'differs', at: '/content/computedBy/preset', kept: preset, computed: wanted };
  }
  const madeUnder = ROUND_RULES.find((one) => one === rule);
  if (madeUnder === undefined) return { state: 'unknown-rule' };
  const computed = valueOfRound(signs, evidence, entries, rules, madeUnder);
  const at = firstDifference(value, computed);
  return at === null
    ? { state: 'same' }
    : { state: 'differs', at: `/content/value${at}`, kept: value, computed };
}
