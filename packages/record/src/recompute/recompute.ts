import { COUNT_RULE, parseCountOrVoid, parseTaps, type Refusal, TAPS_RULE } from '@evenfall/clinical';
import { chartCount } from '../content/chartCount.js';
import { chartTaps } from '../content/chartTaps.js';
import type { InForce } from '../content/inForce.js';
import type { Entry } from '../entry/entry.js';
import { firstDifference } from './nearly.js';

/**
 * What comes of computing a kept value again from its evidence with the rule it names.
 *
 * `no-value`: the entry holds none. `impossible-evidence`: today's parsing refuses it. `unknown-rule`,
 * `unknown-protocol`: made by a program or a protocol that is not here. `differs` is also said of a preset that is not
 * the one of the protocol version named beside it.
 */
export type Recomputed =
  | { readonly state: 'no-value' | 'same' | 'unknown-rule' | 'unknown-protocol' }
  | { readonly state: 'impossible-evidence'; readonly refusals: readonly Refusal[] }
  | { readonly state: 'differs'; readonly at: string; readonly kept: unknown; readonly computed: unknown };

/**
 * Recomputes an entry's value. `inForce` gives the rules of the protocol version the value names (null for a
 * version that is not kept here); a value made without a protocol asks for version null.
 */
export function recompute(
  entry: Entry,
  inForce: (presetVersion: string | null) => InForce | null,
): Recomputed {
  if (entry.kind !== 'count' && entry.kind !== 'taps') return { state: 'no-value' };
  const { rule, program, preset, presetVersion } = entry.content.computedBy;
  const rules = inForce(presetVersion);
  if (rules === null) return { state: 'unknown-protocol' };
  if (preset !== rules.preset) {
    const at = '/content/computedBy/preset';
    return { state: 'differs', at, kept: preset, computed: rules.preset };
  }
  if (entry.kind === 'count') {
    if (rule !== COUNT_RULE) return { state: 'unknown-rule' };
    const { evidence } = entry.content;
    const read = parseCountOrVoid(evidence.count, rules.countRules);
    if (!read.ok) return impossible(read.refusals, '/content/evidence/count');
    const again = chartCount({ ...entry.content, ...evidence, count: read.value }, rules, program);
    return compared(entry.content.value, again.value);
  }
  if (rule !== TAPS_RULE) return { state: 'unknown-rule' };
  const { evidence } = entry.content;
  const read = parseTaps(evidence.taps);
  if (!read.ok) return impossible(read.refusals, '/content/evidence/taps');
  const again = chartTaps({ ...entry.content, ...evidence, taps: read.value }, rules, program);
  return compared(entry.content.value, again.value);
}

function compared(kept: unknown, computed: unknown): Recomputed {
  const at = firstDifference(kept, computed);
  return at === null ? { state: 'same' } : { state: 'differs', at: `/content/value${at}`, kept, computed };
}

function impossible(refusals: readonly Refusal[], within: string): Recomputed {
  return {
    state: 'impossible-evidence',
    refusals: refusals.map((refused) => ({ ...refused, field: within + refused.field })),
  };
}
